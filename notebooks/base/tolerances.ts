import { quantity } from '../../lib/page/parameters/declare-parameters.js';
import type { Parts, PartTolerances } from '../../lib/parts/parts.js';

/** Sizes of pistons and bores that may be off [m]. */
export type LengthTolerances = Pick<
  PartTolerances,
  'holeDiameter' | 'holeTaper' | 'thickness' | 'bore' | 'gap'
>;

/** Plus or minus, where the parts file names no size [m]; a small drill by hand and a caliper (common practice, no source). */
const usual: LengthTolerances = {
  holeDiameter: 3e-5,
  holeTaper: 3e-5,
  thickness: 5e-5,
  bore: 2e-5,
  gap: 1e-5,
};

/** How far sizes may be off, and whether the parts file says so. */
export function lengthTolerances({ tolerances = {} }: Parts): {
  readonly lengths: LengthTolerances;
  readonly fromFile: boolean;
} {
  const { holeDiameter, holeTaper, thickness, bore, gap } = tolerances;
  const named = Object.entries({ holeDiameter, holeTaper, thickness, bore, gap }).filter(
    ([, value]) => value !== undefined,
  );
  return named.length === 0
    ? { lengths: usual, fromFile: false }
    : { lengths: Object.fromEntries(named), fromFile: true };
}

/** How far the drill may cut wide or narrow. */
export const drillOff = quantity({
  dimension: 'length',
  unit: 'mm',
  label: 'Drill off by',
  help: 'How far all holes may be off together, plus or minus.',
  default: 0.03,
  min: 0,
  max: 1,
  step: 0.01,
  inFile: ({ tolerances }) => tolerances?.holeDiameter,
});

/** How far the viscosity may be off its label. */
export const labelOff = quantity({
  dimension: 'ratio',
  unit: '%',
  label: 'Oil label',
  help: 'How far the viscosity may be off its label, plus or minus.',
  default: 5,
  min: 0,
  max: 30,
  step: 1,
  inFile: ({ tolerances }) => tolerances?.viscosity,
});

/** How far the oil temperature may be off. */
export const temperatureOff = quantity({
  dimension: 'temperatureDifference',
  unit: 'K',
  label: 'Temperature off',
  help: 'How far the oil temperature may be off, plus or minus.',
  default: 3,
  min: 0,
  max: 20,
  step: 0.5,
  inFile: ({ tolerances }) => tolerances?.temperature,
  bareNumber: true,
});
