import { asShipped } from './as-shipped.js';
import { build } from './monte-carlo/builds.js';

const { forceSpread, finish } =
  await asShipped<typeof import('./monte-carlo/builds.js')>('monte-carlo/builds.ts');

// Root mean square error of the mean and of the standard deviation at the middle speed, over seeds, against a run of 2¹⁷ points.
const seeds = 16;
const truth = finish(forceSpread(build, { count: 2 ** 17, seed: 12_345, sampling: 'low-discrepancy' }))[1];
const sizes = [8, 9, 10, 11, 12, 13].map((power) => 2 ** power);

function error(count: number, sampling: 'random' | 'low-discrepancy'): readonly [number, number] {
  let [mean, deviation] = [0, 0];
  for (let seed = 1; seed <= seeds; seed++) {
    const spread = finish(forceSpread(build, { count, seed, sampling }))[1];
    if (spread === undefined || truth === undefined) continue;
    mean += (spread.mean / truth.mean - 1) ** 2;
    deviation += (spread.standardDeviation / truth.standardDeviation - 1) ** 2;
  }
  return [Math.sqrt(mean / seeds), Math.sqrt(deviation / seeds)];
}

console.log(`Error of the mean and of the standard deviation of the force, ${seeds} seeds, 7 tolerances`);
console.log('  builds   mean: by chance   evenly   ratio    deviation: by chance   evenly   ratio');
for (const count of sizes) {
  const [meanByChance, deviationByChance] = error(count, 'random');
  const [meanEvenly, deviationEvenly] = error(count, 'low-discrepancy');
  const percent = (value: number): string => `${(100 * value).toFixed(4)} %`.padStart(10);
  console.log(
    `  ${String(count).padStart(6)}   ${percent(meanByChance)} ${percent(meanEvenly)} ${(meanByChance / meanEvenly).toFixed(1).padStart(6)} ×   ${percent(deviationByChance)} ${percent(deviationEvenly)} ${(deviationByChance / deviationEvenly).toFixed(1).padStart(6)} ×`,
  );
}
