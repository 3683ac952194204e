import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { holeArea } from '../geometry/hole.js';
import type { HoleGroup } from '../geometry/piston.js';
import type { HoleLaw } from './hole-law.js';
import type { HolePath } from './hole-path.js';
import { jetMomentumFlow, straightJet } from './jet-momentum.js';

/** Binds a group of straight sharp holes to a fluid that does not thin; `holePath` takes every shape and oil. */
export function sharpHolePath(
  group: HoleGroup,
  thickness: number,
  fluid: FluidState,
  law: HoleLaw,
  areaRatio: number,
): HolePath {
  const { count, diameter } = group;
  const hole = { diameter, length: thickness, areaRatio };
  const { kinematicViscosity } = fluid;
  return {
    diameter,
    lengthRatio: thickness / diameter,
    area: count * holeArea(hole),
    group,
    resistance: law.resistance(hole, fluid),
    momentumFlow: (speed) => jetMomentumFlow(straightJet, Math.abs(speed), diameter, kinematicViscosity),
  };
}
