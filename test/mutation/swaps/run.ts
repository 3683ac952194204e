import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { type Fault, faultsOf } from './faults.js';

// Puts small faults into files one at a time, in memory, and runs the quick tests that lead to the file, of the physics those of the physics: `npm run swaps -- NUMBER SEED PLACE...`, a place being how the path
// of a file begins. The same seed draws the same faults.
const [count = '60', seed = '1', ...wanted] = process.argv.slice(2);
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

// A fault of the physics must be seen by a test of the physics: that a page changed would not say which of the two is right.
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
const pages = ['--exclude', 'test/{edges,live,mutation,notebooks,page,parts,plot,project,runner}/**'];

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

/** Most faults are seen by the tests that stand next to them, so these come before all that lead to the file. */
function survives(fault: Fault): boolean {
  const [layer = '', room = ''] = fault.file.replace(/\.ts$/u, '').split('/');
  const nearest = layer === 'lib' ? [`test/${room}/`] : [readPages, ...(room === 'base' ? [] : ['-t', room])];
  const leading = physics.includes(room) ? [fault.file, ...pages] : [fault.file, readPages];
  return (
    passed(fault, ['run', '--passWithNoTests', ...nearest]) && passed(fault, ['related', '--run', ...leading])
  );
}

const start = performance.now();
const survivors: Fault[] = [];
const sample = drawn(faults, Number(count));
for (const fault of sample) {
  if (!survives(fault)) continue;
  survivors.push(fault);
  console.log(told(fault));
}
const found = sample.length - survivors.length;
const [low, high] = wilson(found, sample.length).map((part) => (100 * part).toFixed(0));
console.log(
  `${found} of ${sample.length} faults found (95 % interval ${low} to ${high} %), drawn with seed ${seed} from ${faults.length} in ${files.length} files, in ${((performance.now() - start) / 60_000).toFixed(0)} min.`,
);

/** Interval of 95 % of a part that was counted: Wilson, J. Am. Stat. Assoc. 22 (1927) 209. */
function wilson(hits: number, number: number): readonly [number, number] {
  const squared = 1.959964 ** 2;
  const middle = (hits + squared / 2) / (number + squared);
  const half = Math.sqrt(squared * ((hits * (number - hits)) / number + squared / 4)) / (number + squared);
  return [middle - half, middle + half];
}
