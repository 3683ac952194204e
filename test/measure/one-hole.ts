import type { MeasuredShockProblem } from '../../lib/measure/fit/fit-problem.js';
import type { Unknown } from '../../lib/measure/fit/unknown.js';
import type { Reading } from '../../lib/measure/reading/reading.js';
import { checkRow, inventedLaw, type RowValues, stateOfRow } from './invented-shock.js';

const truth = stateOfRow(checkRow<{ true: RowValues }, unknown>('shock-force').inputs.true);
const diameter: Unknown = { quantity: 'holeDiameter', scale: 'plain' };
const viscosity: Unknown = { quantity: 'kinematicViscosity', scale: 'logarithm' };
const pin = (value: number, uncertainty = 5e-6): Reading => ({ kind: 'hole', diameter: value, uncertainty });
const ball: Reading = {
  kind: 'viscosity',
  kinematicViscosity: truth.kinematicViscosity,
  temperature: 298.15,
  relativeUncertainty: 0.03,
};
const problem = (changes: Partial<MeasuredShockProblem> = {}): MeasuredShockProblem => ({
  law: inventedLaw,
  known: truth,
  unknowns: [diameter],
  readings: [pin(1.3e-3)],
  ...changes,
});

/** The invented shock of which one hole is unknown, and readings of it. */
export const oneHole = { truth, diameter, viscosity, pin, ball, problem } as const;
