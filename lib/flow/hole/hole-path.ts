import type { FluidState } from '../../fluid/oil/fluid-state.js';
import type { HoleGroup } from '../geometry/piston.js';
import type { HoleLaw, HoleResistance } from './hole-law.js';
import { throatArea, throatDiameter } from './hole-shape.js';
import { shapedHoleResistance } from './shaped-hole.js';
import { thinningResistance } from './thinning-hole.js';

/**
 * The holes of one group, bound to a fluid.
 *
 * @public
 */
export interface HolePath {
  /** Narrowest diameter [m]; of a slot its hydraulic diameter. */
  readonly diameter: number;
  /** Length over narrowest diameter. */
  readonly lengthRatio: number;
  /** Area of all holes of the group at their narrowest [m²]. */
  readonly area: number;
  readonly resistance: HoleResistance;
}

function newtonianResistance(
  group: HoleGroup,
  thickness: number,
  fluid: FluidState,
  law: HoleLaw,
): HoleResistance {
  return group.shape === undefined
    ? law.resistance({ diameter: group.diameter, length: thickness }, fluid)
    : shapedHoleResistance(group.diameter, group.shape, thickness, fluid);
}

/** Binds a group of holes to a fluid; `law` is for straight sharp holes, other shapes have their own. */
export function holePath(group: HoleGroup, thickness: number, fluid: FluidState, law: HoleLaw): HolePath {
  const diameter = throatDiameter(group);
  const bind = (state: FluidState) => newtonianResistance(group, thickness, state, law);
  return {
    diameter,
    lengthRatio: thickness / diameter,
    area: group.count * throatArea(group),
    resistance:
      fluid.shearThinning === undefined
        ? bind(fluid)
        : thinningResistance(bind, diameter, fluid, fluid.shearThinning),
  };
}
