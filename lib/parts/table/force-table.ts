import { requireCount, requirePositive, requireWithin } from '../../base/checks.js';
import { listOf, madeWith, record, requireShape } from '../../base/shape.js';
import { type Damper, requireDamper } from '../../damper/damper.js';
import { damperModel } from '../../damper/damper-model.js';
import { forceVelocityCurve, symmetricSpeeds } from '../../damper/force-velocity.js';
import { fluidAt } from '../../fluid/oil/fluid-at.js';
import type { Oil } from '../../fluid/oil/oil.js';

/**
 * Where a table of forces is asked for.
 *
 * @public
 */
export interface ForceGrid {
  /** Temperatures of oil and gas [K], 200 to 600. */
  readonly temperatures: readonly number[];
  /** Fastest speed either way [m/s], above 0. */
  readonly fastest: number;
  /** Speeds on each side of zero, 1 or more. */
  readonly speedsEachWay: number;
  /** Positions from full extension to the whole stroke, 2 or more. */
  readonly positions: number;
}

/**
 * Force against speed and position at some temperatures, all in SI; compression is positive, and a positive force pushes the shaft out.
 *
 * @public
 */
export interface ForceTable {
  /** Shaft speeds [m/s], rising. */
  readonly speeds: readonly number[];
  /** Positions from full extension [m], rising. */
  readonly positions: readonly number[];
  readonly atTemperatures: readonly {
    /** Temperature of oil and gas [K]. */
    readonly temperature: number;
    /** Force on the shaft [N]: damping, gas and seals; a row for each speed, a column for each position. */
    readonly forces: readonly (readonly number[])[];
    /** Part of it that the oil makes [N], likewise. */
    readonly dampingForces: readonly (readonly number[])[];
    /** Where the oil would cavitate, likewise: beyond the onset no stroke begins with this force. */
    readonly cavitating: readonly (readonly boolean[])[];
  }[];
}

/**
 * Table of the force of a damper, its oil whole: what a multibody program interpolates in.
 *
 * @param damper - from {@link assembleShock}, or made by hand
 * @param oil - from `createOil`
 * @param grid - temperatures, speeds and positions
 * @throws InputError for a value outside its range
 * @public
 */
export function forceTable(damper: Damper, oil: Oil, grid: ForceGrid): ForceTable {
  requireShape(
    { damper, oil, grid },
    {
      damper: record,
      oil: madeWith('typical'),
      grid: { temperatures: listOf('K'), fastest: 'm/s', speedsEachWay: '', positions: '' },
    },
  );
  requireDamper(damper);
  requireCount(grid.positions, 'positions');
  requireWithin(grid.positions, 2, 1000, 'positions', '');
  requireCount(grid.speedsEachWay, 'speedsEachWay');
  requireWithin(grid.speedsEachWay, 1, 1000, 'speedsEachWay', '');
  requirePositive(grid.fastest, 'fastest', 'm/s');
  const speeds = symmetricSpeeds(grid.fastest, grid.speedsEachWay);
  const last = grid.positions - 1;
  const positions = Array.from({ length: grid.positions }, (_, index) => (index * damper.stroke) / last);
  return {
    speeds,
    positions,
    atTemperatures: grid.temperatures.map((temperature) => {
      const model = damperModel(damper, fluidAt(oil, temperature));
      const curves = positions.map((position) => forceVelocityCurve(model, speeds, position));
      const rows = <Cell>(cellOf: (force: (typeof curves)[number][number]) => Cell): readonly Cell[][] =>
        speeds.map((_, row) => curves.flatMap((curve) => curve.slice(row, row + 1).map(cellOf)));
      return {
        temperature,
        forces: rows(({ force }) => force),
        dampingForces: rows(({ dampingForce }) => dampingForce),
        cavitating: rows(({ cavitating }) => cavitating),
      };
    }),
  };
}
