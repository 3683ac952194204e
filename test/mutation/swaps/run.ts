import { readdirSync, readFileSync } from 'node:fs';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { askedFor, readPages } from './asked.js';
import { type Asker, startAsker } from './asker.js';
import { type Fault, faultsOf } from './faults.js';
import type { Question, Verdict } from './warm.js';
import { wilson } from './wilson.js';

// Puts small faults into files one at a time, in memory, and runs the quick tests that should see each: `npm run swaps -- NUMBER SEED PLACE...`, a place being how the
// path of a file begins. Each place is drawn and counted by itself, and the same seed draws the same faults. A number such as `8min` draws for so long at each place.
const [count = '60', seed = '1', ...wanted] = process.argv.slice(2);
const minutes = /^(\d+)min$/u.exec(count)?.[1];
const [most, longest] =
  minutes === undefined
    ? [Number(count), Number.POSITIVE_INFINITY]
    : [Number.POSITIVE_INFINITY, 60_000 * Number(minutes)];
const places = wanted.length > 0 ? wanted : ['notebooks/'];
const sources = ['lib', 'notebooks']
  .flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => `${folder}/${name}`),
  )
  .filter((file) => file.endsWith('.ts'))
  .sort();

/** As many as asked for, the same for a seed. */
function drawn(all: readonly Fault[], number: number): readonly Fault[] {
  const random = xoroshiro128plus(Number(seed));
  const left = [...all];
  return Array.from({ length: Math.min(number, all.length) }, () =>
    left.splice((random.next() >>> 0) % left.length, 1),
  ).flat();
}

function told({ file, start, end, text }: Fault): string {
  const source = readFileSync(file, 'utf8');
  const line = source.slice(0, start).split('\n').length;
  const around = `${source.slice(Math.max(0, start - 40), start)}[${source.slice(start, end)} → ${text}]${source.slice(end, end + 40)}`;
  return `${file}:${line}: ${around.replaceAll(/\s+/gu, ' ')}`;
}

// How long tests took without a fault [ms]: each file, and each page of the test of what pages say.
const ofFiles = new Map<string, number>();
const ofPages = new Map<string, number>();

function remember({ durations }: Verdict): void {
  for (const [file, name, duration] of durations) {
    if (file === readPages) ofPages.set(name.trim().split(' ')[0] ?? '', duration);
    else ofFiles.set(file, (ofFiles.get(file) ?? 0) + duration);
  }
}

const saysOf = (pages: readonly string[]): Question['tests'] =>
  pages.length === 0
    ? []
    : [{ file: readPages, names: new RegExp(`(?<![\\w-])(?:${pages.join('|')}) says`, 'u') }];
const sorted = (names: readonly string[], durations: ReadonlyMap<string, number>): readonly string[] =>
  names.toSorted((a, b) => (durations.get(a) ?? 0) - (durations.get(b) ?? 0));

/** What is asked for a fault, run by run: the shortest tests first, since one that fails ends the run and most faults fail many; long pages by themselves, last. */
function questionsOf({ file, text }: Fault): readonly Question['tests'][] {
  const { files, pages } = askedFor(file);
  const tests = sorted(files, ofFiles).map((test) => ({ file: test }));
  const long = pages.filter((page) => (ofPages.get(page) ?? 0) > 1500);
  const short = saysOf(pages.filter((page) => !long.includes(page)));
  // A word of a page is read there; a formula is worked out apart from it.
  const wordFirst = /^\p{L}+$/u.test(text) && file.startsWith('notebooks/');
  const rest = sorted(long, ofPages).map((page) => saysOf([page]));
  return (wordFirst ? [short, ...rest, tests] : [[...tests, ...short], ...rest]).filter(
    (question) => question.length > 0,
  );
}

const patienceFor = (tests: Question['tests']): number =>
  120_000 +
  20 * tests.reduce((sum, { file }) => sum + (ofFiles.get(file) ?? Math.max(0, ...ofPages.values())), 0);

/** The first verdict that is not that all is well; none where a fault survives. */
async function seen(asker: Asker, fault: Fault): Promise<Verdict | undefined> {
  for (const tests of questionsOf(fault)) {
    const verdict = await asker.ask({ fault, tests, bail: true }, patienceFor(tests));
    if (verdict.failed !== undefined || verdict.endless) return verdict;
  }
  return undefined;
}

const asker = startAsker();
const draws = places.map((place) => {
  const files = sources.filter((file) => file.startsWith(place));
  const faults = files.flatMap((file) => faultsOf(file, readFileSync(file, 'utf8')));
  return { place, files, faults, chosen: drawn(faults, most) };
});
// Without a fault every test must pass.
const touched = new Set(
  draws.flatMap(({ files, chosen }) =>
    most === Number.POSITIVE_INFINITY ? files : chosen.map(({ file }) => file),
  ),
);
const asked = [...touched].map(askedFor);
const unharmed = await asker.ask(
  {
    tests: [
      ...[...new Set(asked.flatMap(({ files }) => files))].map((file) => ({ file })),
      ...saysOf([...new Set(asked.flatMap(({ pages }) => pages))]),
    ],
    bail: false,
  },
  3_600_000,
);
if (unharmed.endless || unharmed.failed !== undefined)
  throw new Error(`a test fails without a fault: ${unharmed.failed}`);
remember(unharmed);
console.log(
  `Without a fault ${unharmed.durations.length} tests pass, in ${([...ofFiles.values(), ...ofPages.values()].reduce((a, b) => a + b, 0) / 1000).toFixed(0)} s.`,
);

for (const { place, files, faults, chosen } of draws) {
  const start = performance.now();
  let tried = 0;
  let survivors = 0;
  for (const fault of chosen) {
    if (performance.now() - start > longest) break;
    const began = performance.now();
    const { failed, endless } = (await seen(asker, fault)) ?? {};
    tried++;
    if (failed === undefined) survivors++;
    const seconds = ((performance.now() - began) / 1000).toFixed(0);
    console.log(
      `${failed !== undefined ? 'seen' : endless ? 'NO END' : 'NOT SEEN'} ${told(fault)} (${seconds} s)`,
    );
    if (failed !== undefined) console.log(`    by ${failed.replaceAll(/\s+/gu, ' ').slice(0, 200)}`);
  }
  const found = tried - survivors;
  const [low, high] = wilson(found, tried).map((part) => (100 * part).toFixed(0));
  console.log(
    `${place}: ${found} of ${tried} faults seen (95 % interval ${low} to ${high} %), drawn with seed ${seed} from ${faults.length} in ${files.length} files, in ${((performance.now() - start) / 60_000).toFixed(0)} min.`,
  );
}
asker.end();
