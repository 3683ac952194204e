import { refuse, requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { listOf, madeWith, optional, record, type Shape } from '../../base/shape.js';
import { type Damper, requireDamper } from '../../damper/damper.js';
import type { Oil } from '../../fluid/oil/oil.js';
import type { Gas } from '../../gas/gas.js';
import { type Deviation, deviationShape, requireDeviation } from './uncertain.js';

/**
 * The sizes that may be off, in the order of the inputs.
 *
 * @public
 */
export const toleranceNames = [
  'holeDiameter',
  'holeTaper',
  'thickness',
  'bore',
  'gap',
  'viscosity',
  'temperature',
  'gasVolume',
] as const;

/**
 * A size that may be off.
 *
 * @public
 */
export type ToleranceName = (typeof toleranceNames)[number];

/**
 * How far each size of a build may be off.
 *
 * @public
 */
export type Tolerances = {
  /**
   * - `holeDiameter` [m]: all holes, as one drill makes them
   * - `holeTaper` [m]: diameter at the shaft side less that at the blind side, of straight holes
   * - `thickness` [m]: of the piston
   * - `bore` [m]: with the piston following, so that the gap stays
   * - `gap` [m]: between piston and bore, on the radius
   * - `viscosity`: relative, 0.05 stands for 5 %
   * - `temperature` [K]: of the oil
   * - `gasVolume` [m³]: what the fill leaves for the gas
   */
  readonly [Name in ToleranceName]?: Deviation;
};

/** Form of {@link Tolerances}. */
export const tolerancesShape: Shape = {
  temperature: optional(deviationShape),
  holeDiameter: optional(deviationShape),
  gap: optional(deviationShape),
  viscosity: optional(deviationShape),
  holeTaper: optional(deviationShape),
  thickness: optional(deviationShape),
  bore: optional(deviationShape),
  gasVolume: optional(deviationShape),
};

/**
 * A build whose sizes may be off; plain data, so that it can go to a worker.
 *
 * @public
 */
export interface TolerancedBuild {
  readonly damper: Damper;
  readonly oil: Oil;
  /** Oil temperature [K]. */
  readonly temperature: number;
  /** How far the shaft is pushed in where the force of the gas is taken [m], 0 to the stroke. */
  readonly position: number;
  /** Shaft speeds [m/s], not 0, 1 or more. */
  readonly speeds: readonly number[];
  readonly tolerances: Tolerances;
}

/** Form of {@link TolerancedBuild}. */
export const tolerancedBuildShape: Shape = {
  damper: record,
  oil: madeWith('typical'),
  temperature: 'K',
  position: 'm',
  speeds: listOf('m/s'),
  tolerances: tolerancesShape,
};

const units: Readonly<Record<ToleranceName, string>> = {
  holeDiameter: 'm',
  holeTaper: 'm',
  thickness: 'm',
  bore: 'm',
  gap: 'm',
  viscosity: '',
  temperature: 'K',
  gasVolume: 'm³',
};

/** Throws unless the build can be computed and each deviation is in its range. */
export function requireTolerancedBuild({ damper, position, speeds, tolerances }: TolerancedBuild): void {
  requireDamper(damper);
  requireWithin(position, 0, damper.stroke, 'position', 'm');
  if (speeds.length === 0) throw new InputError({ field: 'speeds', value: 0, accepted: '1 or more' });
  speeds.forEach((speed, index) => {
    requirePositive(Math.abs(speed), `size of speeds[${index}]`, 'm/s');
  });
  for (const name of toleranceNames) {
    const deviation = tolerances[name];
    if (deviation !== undefined) requireDeviation(deviation, `tolerances.${name}`, units[name]);
  }
}

/** The tolerances that are given and not exact, in the order of {@link toleranceNames}. */
export function toleranceInputs(tolerances: Tolerances): readonly ToleranceName[] {
  return toleranceNames.filter((name) => {
    const deviation = tolerances[name];
    return deviation !== undefined && deviation.kind !== 'exact';
  });
}

/** The gas of a damper whose fill left more or less of it [m³]: what the first room has at closing. */
export function deviatedGas(gas: Gas, volume: number): Gas {
  const [first, ...others] = gas.rooms;
  if (volume === 0 || first === undefined) return gas;
  if (!(first.volume + volume > 0)) {
    refuse(
      -volume,
      'tolerances.gasVolume',
      'm³',
      `below the gas of ${first.volume} m³, so that some is left`,
      {
        below: first.volume,
      },
    );
  }
  return { ...gas, rooms: [{ ...first, volume: first.volume + volume }, ...others] };
}
