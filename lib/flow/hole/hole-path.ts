import type { FluidState } from '../../fluid/oil/fluid-state.js';
import type { HoleGroup } from '../geometry/piston.js';
import type { HoleLaw, HoleResistance } from './hole-law.js';
import { throatArea, throatDiameter } from './hole-shape.js';
import { creepingMomentum, type Jet, momentumOfJet, straightJet } from './jet-momentum.js';
import { bindShapedHole, shapedHole } from './shaped-hole.js';
import { thinningResistance, viscosityInHole } from './thinning-hole.js';

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
  /** The holes, as they were given. */
  readonly group: HoleGroup;
  /**
   * Flow of momentum that the jets carry off, over density and area [m²/s²], at a mean speed at the narrowest [m/s], positive
   * towards the shaft side; with the apparent viscosity of an oil that thins. `jetRecoil` makes a force of it.
   */
  readonly momentumFlow: (meanSpeed: number) => number;
  /** The same over the speed, as that tends to zero [m/s]. */
  readonly creepingMomentum: number;
}

/** What the law of a hole says of it before any fluid. */
function holeBefore(
  group: HoleGroup,
  thickness: number,
  law: HoleLaw,
  areaRatio: number,
): { bind: (fluid: FluidState) => HoleResistance; jetTowardsShaft: Jet; jetTowardsBlind: Jet } {
  const { diameter, shape } = group;
  if (shape === undefined) {
    const hole = { diameter, length: thickness, areaRatio };
    return {
      bind: (fluid) => law.resistance(hole, fluid),
      jetTowardsShaft: straightJet,
      jetTowardsBlind: straightJet,
    };
  }
  const shaped = shapedHole(diameter, shape, thickness, areaRatio);
  return {
    bind: (fluid) => bindShapedHole(shaped, fluid),
    jetTowardsShaft: shaped.towardsShaft.jet,
    jetTowardsBlind: shaped.towardsBlind.jet,
  };
}

/**
 * Binds a group of holes to a fluid; `law` is for straight sharp holes, other shapes have their own.
 *
 * @param areaRatio - area of all holes of the piston at their narrowest over that of the bore, 0 to below 1
 */
export function holePath(
  group: HoleGroup,
  thickness: number,
  fluid: FluidState,
  law: HoleLaw,
  areaRatio: number,
): HolePath {
  const diameter = throatDiameter(group);
  const { bind, jetTowardsShaft, jetTowardsBlind } = holeBefore(group, thickness, law, areaRatio);
  const { shearThinning, kinematicViscosity } = fluid;
  const reynoldsPerSpeed = diameter / kinematicViscosity;
  const viscousSpeed = kinematicViscosity / diameter;
  const momentumIn = (jet: Jet, size: number): number => {
    if (shearThinning === undefined) return momentumOfJet(jet, size, reynoldsPerSpeed, viscousSpeed);
    const viscosity = viscosityInHole(diameter, kinematicViscosity, shearThinning, size);
    return momentumOfJet(jet, size, diameter / viscosity, viscosity / diameter);
  };
  return {
    diameter,
    lengthRatio: thickness / diameter,
    area: group.count * throatArea(group),
    group,
    resistance:
      shearThinning === undefined ? bind(fluid) : thinningResistance(bind, diameter, fluid, shearThinning),
    momentumFlow: (speed) => momentumIn(speed < 0 ? jetTowardsBlind : jetTowardsShaft, Math.abs(speed)),
    creepingMomentum: creepingMomentum(jetTowardsShaft, diameter, kinematicViscosity),
  };
}
