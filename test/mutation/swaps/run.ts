import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { type Fault, faultsOf } from './faults.js';

// Puts small faults into files one at a time, in memory, and runs the quick tests that should see each: `npm run swaps -- NUMBER SEED PLACE...`, a place being how the
// path of a file begins. The same seed draws the same faults. A number such as `8min` draws for so long.
const [count = '60', seed = '1', ...wanted] = process.argv.slice(2);
const minutes = /^(\d+)min$/u.exec(count)?.[1];
const [most, longest] =
  minutes === undefined
    ? [Number(count), Number.POSITIVE_INFINITY]
    : [Number.POSITIVE_INFINITY, 60_000 * Number(minutes)];
const places = wanted.length > 0 ? wanted : ['notebooks/'];
const files = ['lib', 'notebooks']
  .flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => `${folder}/${name}`),
  )
  .filter((file) => file.endsWith('.ts') && places.some((place) => file.startsWith(place)))
  .sort();
const faults = files.flatMap((file) => faultsOf(file, readFileSync(file, 'utf8')));

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

// The test of what pages say finds them by their folder, so that none of them leads to it.
const readPages = 'test/notebooks/words.test.ts';

// A fault of the physics must be seen by the tests of its layer, a law or a published number: that something above it changed would not say which of the two is right. What
// only the fits use is tested with them.
const physics = [
  'base',
  'numeric',
  'fluid',
  'flow',
  'gas',
  'damper',
  'fill',
  'motion',
  'measure',
  'decisions',
];
const foundations = ['laws', 'published', 'reference', 'accuracy'];
const besides: Readonly<Record<string, readonly string[]>> = { numeric: ['measure'] };
const folders = readdirSync('test', { withFileTypes: true }).flatMap((entry) =>
  entry.isDirectory() ? [entry.name] : [],
);

/** Options that leave out the tests of folders. */
const without = (left: readonly string[]): readonly string[] => ['--exclude', `test/{${left.join(',')}}/**`];

/** Whether all tests passed, those of vitest's own words. */
function passed(fault: Fault, words: readonly string[]): boolean {
  const options = ['--config', 'test/mutation/swaps/vitest.config.ts', '--project', 'quick'];
  const { status } = spawnSync(
    'node_modules/.bin/vitest',
    [...words, ...options, '--bail', '1', '--maxWorkers', '1', '--reporter', 'dot'],
    { env: { ...process.env, DASHPOT_FAULT: JSON.stringify(fault) }, stdio: 'ignore' },
  );
  return status === 0;
}

/** Whether none of the tests that are asked sees a fault: of the physics those above, of pages those that stand next to it and what the pages say. */
function survives(fault: Fault): boolean {
  const [layer = '', room = ''] = fault.file.replace(/\.ts$/u, '').split('/');
  const related = (...words: readonly string[]): boolean => passed(fault, ['related', '--run', ...words]);
  const run = (...words: readonly string[]): boolean => passed(fault, ['run', '--passWithNoTests', ...words]);
  if (physics.includes(room)) {
    const asked = [room, ...foundations, ...(besides[room] ?? [])];
    return related(fault.file, ...without(folders.filter((folder) => !asked.includes(folder))));
  }
  if (layer === 'lib') return run(`test/${room}/`) && run(readPages);
  if (room === 'base') return run(readPages) && related(fault.file, ...without(['edges', 'mutation']));
  return run(readPages, '-t', room) && run(`test/notebooks/${room}`);
}

const start = performance.now();
const survivors: Fault[] = [];
let tried = 0;
for (const fault of drawn(faults, most)) {
  if (performance.now() - start > longest) break;
  tried++;
  if (!survives(fault)) continue;
  survivors.push(fault);
  console.log(told(fault));
}
const found = tried - survivors.length;
const [low, high] = wilson(found, tried).map((part) => (100 * part).toFixed(0));
console.log(
  `${found} of ${tried} faults found (95 % interval ${low} to ${high} %), drawn with seed ${seed} from ${faults.length} in ${files.length} files, in ${((performance.now() - start) / 60_000).toFixed(0)} min.`,
);

/** Interval of 95 % of a part that was counted: Wilson, J. Am. Stat. Assoc. 22 (1927) 209. */
function wilson(hits: number, number: number): readonly [number, number] {
  const squared = 1.959964 ** 2;
  const middle = (hits + squared / 2) / (number + squared);
  const half = Math.sqrt(squared * ((hits * (number - hits)) / number + squared / 4)) / (number + squared);
  return [middle - half, middle + half];
}
