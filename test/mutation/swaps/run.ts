import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { askedFor } from './asked.js';
import { type Asker, startAsker } from './asker.js';
import { type Fault, faultsOf } from './faults.js';
import type { Verdict } from './warm.js';
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

// How long tests take [ms], as far as an earlier run knows.
const known = 'out/swaps-durations.json';
const durations: Record<string, number> = existsSync(known) ? JSON.parse(readFileSync(known, 'utf8')) : {};
const durationOf = (test: string): number => durations[test] ?? (test.includes('.long.') ? 20_000 : 1000);

function remember({ passed }: Verdict): void {
  for (const [test, { duration }] of Object.entries(passed)) durations[test] = Math.round(duration);
  mkdirSync('out', { recursive: true });
  writeFileSync(known, JSON.stringify(durations, undefined, 1));
}

/** Pages that take longer [ms] are asked only for what is a fault of the pages themselves. */
const longPage = 1500;

/** What is asked for a fault: the test of that name first, then the shortest, since one that fails ends the run and most faults fail many. */
function testsFor({ file }: Fault): readonly string[] {
  const { files, pages } = askedFor(file);
  const asked = pages
    .map((page) => `page ${page}`)
    .filter((page) => file.startsWith('notebooks/') || durationOf(page) < longPage);
  const { name } = path.parse(file);
  const wait = (test: string): number => (test.endsWith(`/${name}.test.ts`) ? 0 : durationOf(test));
  return [...files, ...asked].toSorted((a, b) => wait(a) - wait(b));
}

const patienceFor = (tests: readonly string[]): number =>
  300_000 + tests.reduce((sum, test) => sum + 20 * durationOf(test), 0);

/** Whether each test passes without a fault, as far as it was tried. */
const sound = new Map<string, boolean>();

async function passesUnharmed(asker: Asker, test: string): Promise<boolean> {
  const tried = sound.get(test);
  if (tried !== undefined) return tried;
  const verdict = await asker.ask({ tests: [test] }, patienceFor([test]));
  remember(verdict);
  const passes = (verdict.passed[test]?.tests ?? 0) > 0;
  sound.set(test, passes);
  if (!passes) console.log(`${test} is not asked, since it does not pass by itself: ${verdict.failed?.said}`);
  return passes;
}

/** The first verdict that is not that all is well; none where a fault survives. */
async function seen(asker: Asker, fault: Fault): Promise<Verdict | undefined> {
  let tests = testsFor(fault).filter((test) => sound.get(test) !== false);
  while (tests.length > 0) {
    const verdict = await asker.ask({ fault, tests }, patienceFor(tests));
    remember(verdict);
    const { failed } = verdict;
    if (failed === undefined) return verdict.endless ? verdict : undefined;
    // A test that fails with a fault must pass without.
    if (await passesUnharmed(asker, failed.test)) return verdict;
    tests = tests.slice(tests.indexOf(failed.test) + 1);
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
    if (failed !== undefined)
      console.log(`    by ${`${failed.test}: ${failed.said}`.replaceAll(/\s+/gu, ' ').slice(0, 240)}`);
  }
  const found = tried - survivors;
  const [low, high] = wilson(found, tried).map((part) => (100 * part).toFixed(0));
  console.log(
    `${place}: ${found} of ${tried} faults seen (95 % interval ${low} to ${high} %), drawn with seed ${seed} from ${faults.length} in ${files.length} files, in ${((performance.now() - start) / 60_000).toFixed(0)} min.`,
  );
}
asker.end();
