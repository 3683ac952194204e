import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { fluidAt } from '../lib/fluid/oil/fluid-at.js';
import { asShipped } from './as-shipped.js';
import { build } from './monte-carlo/builds.js';

const count = 100_000;
const rows = 3000;
const rounds = 5;

const { timedSpread, startDecisionWorkers, forceSpread, finish } =
  await asShipped<typeof import('./monte-carlo/builds.js')>('monte-carlo/builds.ts');

interface NumpyTimes {
  readonly vectorised: number;
  readonly perRow: number;
  readonly means: readonly number[];
}

const script = fileURLToPath(new URL('monte-carlo/builds.py', import.meta.url));
const density = fluidAt(build.oil, build.temperature).density;
const numpy = (): NumpyTimes =>
  JSON.parse(
    execFileSync('/usr/bin/python3', [script, String(count), String(rows), String(density)], {
      encoding: 'utf8',
    }),
  );

// One after the other, several times, and the best of each: other work on the machine only ever slows.
let best = {
  ours: Number.POSITIVE_INFINITY,
  vectorised: Number.POSITIVE_INFINITY,
  perRow: Number.POSITIVE_INFINITY,
};
let means: readonly (readonly number[])[] = [];
for (let round = 0; round < rounds; round++) {
  const ours = timedSpread({ count, seed: round, sampling: 'random' });
  const theirs = numpy();
  means = [ours.means, theirs.means];
  best = {
    ours: Math.min(best.ours, ours.seconds),
    vectorised: Math.min(best.vectorised, theirs.vectorised),
    perRow: Math.min(best.perRow, theirs.perRow),
  };
}
const seconds = (value: number): string => `${value.toFixed(3)} s`;
console.log(`${count} builds × ${build.speeds.length} speeds, best of ${rounds}`);
console.log(`  dashpot, one thread   ${seconds(best.ours)}`);
console.log(
  `  NumPy, vectorised     ${seconds(best.vectorised)}   ${(best.vectorised / best.ours).toFixed(2)} × dashpot`,
);
console.log(
  `  NumPy, row by row     ${seconds(best.perRow * count)}   ${((best.perRow * count) / best.ours).toFixed(0)} × dashpot (from ${rows} rows)`,
);
console.log(
  `  mean forces: ${means.map((row) => row.map((force) => force.toFixed(3)).join(', ')).join(' against ')} N`,
);

const drawing = { count: 4 * count, seed: 1, sampling: 'random' } as const;
const workers = startDecisionWorkers();
await workers.forceSpread(build, { ...drawing, count: 10_000 });
let start = performance.now();
const one = finish(forceSpread(build, drawing));
const alone = performance.now() - start;
start = performance.now();
const many = await workers.forceSpread(build, drawing);
const shared = performance.now() - start;
await workers.close();
console.log(
  `  ${drawing.count} builds: one thread ${seconds(alone / 1000)}, worker threads ${seconds(shared / 1000)}, ${(alone / shared).toFixed(2)} × faster, results ${JSON.stringify(one) === JSON.stringify(many) ? 'equal' : 'UNLIKE'}`,
);
