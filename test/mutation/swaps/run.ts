import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
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

// How long tests take [ms], as far as an earlier run knows: each file, and each page of the test of what pages say.
const known = 'out/swaps-durations.json';
const durations: Record<string, number> = existsSync(known) ? JSON.parse(readFileSync(known, 'utf8')) : {};
const durationOf = (name: string): number => durations[name] ?? 1000;

function remember(verdict: Verdict): void {
  const files = new Map<string, number>();
  for (const [file, name, duration] of verdict.durations) {
    const page = file === readPages ? name.match(/[\w-]+/u)?.[0] : undefined;
    files.set(page ?? file, (files.get(page ?? file) ?? 0) + duration);
  }
  for (const [name, duration] of files) durations[name] = Math.round(duration);
  mkdirSync('out', { recursive: true });
  writeFileSync(known, JSON.stringify(durations, undefined, 1));
}

const sorted = (names: readonly string[]): readonly string[] =>
  names.toSorted((a, b) => durationOf(a) - durationOf(b));

/** The tests of what pages say: with the demo parts, and with other files too where the pages themselves have the fault. */
function saysOf(pages: readonly string[], others: boolean): Question['tests'] {
  const names = new RegExp(`'(?:${pages.join('|')})(?:-recorded)?' ${others ? '' : 'says'}`, 'u');
  return pages.length === 0 ? [] : [{ file: readPages, names }];
}

/** What is asked for a fault, run by run: the shortest tests first, since one that fails ends the run and most faults fail many; long pages by themselves, last. */
function questionsOf({ file, text }: Fault): readonly Question['tests'][] {
  const { files, pages } = askedFor(file);
  const inPages = file.startsWith('notebooks/');
  const tests = sorted(files).map((test) => ({ file: test }));
  const long = pages.filter((page) => durationOf(page) > 1500);
  const short = saysOf(
    pages.filter((page) => !long.includes(page)),
    inPages,
  );
  if (!inPages) return [[...tests, ...short]];
  // A word of a page is read there; a formula is worked out apart from it.
  const rest = sorted(long).map((page) => saysOf([page], true));
  const questions = /^\p{L}+$/u.test(text) ? [short, ...rest, tests] : [[...tests, ...short], ...rest];
  return questions.filter((question) => question.length > 0);
}

const patienceFor = (tests: Question['tests']): number =>
  300_000 + 20 * tests.reduce((sum, { file }) => sum + durationOf(file), 0);

/** What is known to pass without a fault. */
const sound = new Set<string>();

/** A test that fails with a fault must pass without. */
async function confirm(asker: Asker, tests: Question['tests'], file: string | undefined): Promise<void> {
  const failing = tests.filter((test) => file === undefined || test.file === file);
  const name = failing.map((test) => `${test.file} ${test.names}`).join();
  if (sound.has(name)) return;
  const verdict = await asker.ask({ tests: failing, bail: true }, patienceFor(failing));
  if (verdict.endless || verdict.failed !== undefined)
    throw new Error(`a test fails without a fault: ${verdict.failed?.said}`);
  remember(verdict);
  sound.add(name);
}

/** The first verdict that is not that all is well; none where a fault survives. */
async function seen(asker: Asker, fault: Fault): Promise<Verdict | undefined> {
  for (const tests of questionsOf(fault)) {
    const verdict = await asker.ask({ fault, tests, bail: true }, patienceFor(tests));
    remember(verdict);
    if (verdict.failed !== undefined) await confirm(asker, tests, verdict.failed.file);
    if (verdict.failed !== undefined || verdict.endless) return verdict;
    if (
      tests.some(({ file }) => file === readPages) &&
      !verdict.durations.some(([file]) => file === readPages)
    )
      throw new Error('no page was asked');
  }
  return undefined;
}

const asker = startAsker();
const draws = places.map((place) => {
  const files = sources.filter((file) => file.startsWith(place));
  const faults = files.flatMap((file) => faultsOf(file, readFileSync(file, 'utf8')));
  return { place, files, faults, chosen: drawn(faults, most) };
});

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
    if (failed !== undefined) console.log(`    by ${failed.said.replaceAll(/\s+/gu, ' ').slice(0, 200)}`);
  }
  const found = tried - survivors;
  const [low, high] = wilson(found, tried).map((part) => (100 * part).toFixed(0));
  console.log(
    `${place}: ${found} of ${tried} faults seen (95 % interval ${low} to ${high} %), drawn with seed ${seed} from ${faults.length} in ${files.length} files, in ${((performance.now() - start) / 60_000).toFixed(0)} min.`,
  );
}
asker.end();
