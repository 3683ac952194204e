import { outsideFits } from '../test/measure/outside-programs.js';
import { asShipped } from './as-shipped.js';

// Fits of the invented shock against SciPy in turns, the same law in both; then what a page and a worker wait for with the library's own damper.
const { bestOf, fitShock, libraryProblem, ownProblems, pageAnswer, posteriorOf } =
  await asShipped<typeof import('./measure/fits.js')>('measure/fits.ts');

for (let warm = 0; warm < 20; warm++) fitShock(ownProblems.B);
const rounds = 3;
const best = { A: { own: 1e9, scipy: 1e9 }, B: { own: 1e9, scipy: 1e9 } };
for (let round = 0; round < rounds; round++) {
  const outside = outsideFits(0);
  for (const name of ['A', 'B'] as const) {
    best[name].scipy = Math.min(best[name].scipy, outside[name].seconds);
    best[name].own = Math.min(
      best[name].own,
      bestOf(10, () => fitShock(ownProblems[name])),
    );
  }
}
const milliseconds = (seconds: number): string => `${(1000 * seconds).toPrecision(3)} ms`;
for (const name of ['A', 'B'] as const) {
  const { own, scipy } = best[name];
  console.log(
    `fit ${name}: ${milliseconds(own)}, SciPy ${milliseconds(scipy)}, ratio ${(scipy / own).toFixed(0)} times faster`,
  );
}
const fit = fitShock(libraryProblem);
console.log(
  `page answer, eight unknowns and a band of 60 speeds: ${milliseconds(bestOf(5, () => pageAnswer(libraryProblem)))}`,
);
for (const count of [8192, 32_768]) {
  console.log(`${count} draws: ${milliseconds(bestOf(3, () => posteriorOf(fit, count)))}`);
}
