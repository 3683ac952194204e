import { InputError } from '../../base/input-error.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { annularGapConductance, rimGap } from '../gap/annular-gap.js';
import { holeArea } from '../geometry/hole.js';
import type { Piston } from '../geometry/piston.js';
import type { HoleLaw } from '../hole/hole-law.js';
import { sharpHoleLaw } from '../hole/sharp-hole.js';
import { newtonianRim, type PistonFlow, parallelFlow } from './parallel-flow.js';
import { requirePistonSizes } from './piston.js';
import { pressureDropOfFewPaths } from './piston-pressure-drop.js';

/** Throws where a piston or an oil has what only the entry `dashpot/piston` computes. */
function requirePlain({ holes, valves = [] }: Piston, { shearThinning }: FluidState): void {
  const shape = holes.find((group) => group.shape)?.shape;
  if (shape === undefined && valves.length === 0 && shearThinning === undefined) return;
  throw new InputError({
    field: 'hole shapes, valves and shear thinning',
    value: shape?.kind ?? shearThinning?.kind ?? 'a valve',
    accepted: 'left out, or computed with dashpot/piston',
  });
}

/**
 * Binds a piston with straight sharp holes to its bore and a fluid: the holes and the rim gap in parallel share one pressure drop. The
 * entry `dashpot/piston` has a function of the same name for shaped holes, disc valves and oils that thin.
 *
 * @param piston - sizes above 0 m, holes smaller than the piston, eccentricity 0 to 0.99; no hole shapes, no valves
 * @param bore - diameter of the bore [m], above the piston diameter
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s; no shear thinning
 * @param law - law of the holes; {@link sharpHoleLaw} by default
 * @throws InputError for a size or fluid property outside its range, or a feature of the other entry
 * @public
 */
export function plainPistonFlow(
  piston: Piston,
  bore: number,
  fluid: FluidState,
  law: HoleLaw = sharpHoleLaw,
): PistonFlow {
  requirePistonSizes(piston);
  requirePlain(piston, fluid);
  const gap = rimGap(piston, bore);
  const gapConductance = annularGapConductance(gap, fluid);
  const paths = piston.holes.map(({ count, diameter }) => {
    const hole = { diameter, length: piston.thickness };
    return {
      diameter,
      lengthRatio: hole.length / diameter,
      area: count * holeArea(hole),
      resistance: law.resistance(hole, fluid),
    };
  });
  const ways = { paths, valves: [], law, gap, gapConductance, ...newtonianRim(gapConductance) };
  return parallelFlow(ways, (parallel, flow) => pressureDropOfFewPaths(parallel, flow, () => undefined));
}
