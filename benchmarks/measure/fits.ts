import type { Damper } from '../../lib/damper/damper.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { sealedGas } from '../../lib/gas/gas.js';
import { dampingAnswers } from '../../lib/measure/answer/damping-answer.js';
import { posteriorOf } from '../../lib/measure/answer/posterior.js';
import type { MeasuredShockProblem } from '../../lib/measure/fit/fit-problem.js';
import { fitShock } from '../../lib/measure/fit/fit-shock.js';
import { statedUnknowns } from '../../lib/measure/fit/prior.js';
import { damperLaw, statedState } from '../../lib/measure/model/damper-law.js';
import {
  checkRow,
  problemA,
  problemB,
  type RowObservation,
  type RowValues,
} from '../../test/measure/invented-shock.js';

const rowA = checkRow<{ times: number[]; known: RowValues }, unknown>('shock-A-fit').inputs;
const rowB = checkRow<{ observations: RowObservation[]; values: number[] }, unknown>('shock-B-fit').inputs;

/** Fit A and fit B of the invented shock, by its own law. */
export const ownProblems = {
  A: problemA(rowA.times, rowA.known),
  B: problemB(rowB.observations, rowB.values),
};

const oil = createOil({
  base: 'silicone',
  viscosity: { kind: 'silicone', point: { kinematicViscosity: 400e-6, temperature: 298.15 } },
});
const damper: Damper = {
  bore: 0.012,
  shaftDiameter: 0.003,
  stroke: 0.028,
  piston: { diameter: 0.01195, thickness: 0.0025, eccentricity: 0, holes: [{ count: 4, diameter: 0.0013 }] },
  gas: sealedGas({ volume: 1e-6, pressure: 122_000 }),
  seal: { kineticForce: 0.2, breakawayForce: 0.3 },
};

/** The readings of fit B with the library's damper as the law, as a page would fit them. */
export const libraryProblem: MeasuredShockProblem = {
  law: damperLaw(damper, oil),
  known: statedState(damper, oil),
  unknowns: statedUnknowns({
    kinematicViscosity: [320e-6, 480e-6],
    holeDiameter: 0.0013,
    gap: 25e-6,
    gasPressure: 122_000,
  }),
  readings: ownProblems.B.readings,
};

const speeds = Array.from({ length: 60 }, (_, index) => 0.01 * 1.09 ** index);

/** A fit with a band of 60 speeds, as a page needs it. */
export function pageAnswer(problem: MeasuredShockProblem): number {
  const fit = fitShock(problem);
  return dampingAnswers(fit, speeds, { position: 0.014, temperature: 295.15 }).length;
}

/** Best of some runs [s]. */
export function bestOf(rounds: number, run: () => unknown): number {
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    run();
    best = Math.min(best, (performance.now() - start) / 1000);
  }
  return best;
}

export { fitShock, posteriorOf };
