import type { FluidState } from '../../fluid/oil/fluid-state.js';
import {
  exponentAt,
  ratioOfViscosity,
  type ShearThinning,
  writeThinned,
} from '../../fluid/shear/thinning-viscosity.js';
import { powerRoot } from '../../numeric/power-root.js';
import { type AnnularGap, annularGapConductance, gapHeight } from './annular-gap.js';

/** Filled and read within one call and never handed out. */
const thinned = new Float64Array(3);

/**
 * Flow of an oil that thins through the rim gap [m³/s] by pressure: the Newtonian law with the apparent viscosity of a plane
 * slit, `γ̇ = (6V/h) (2n + 1)/(3n)` at the wall. Exact for a power-law oil in a centred gap.
 *
 * @see Rabinowitsch correction of a slit: Macosko, Rheology (1994), sec. 6.3 (from memory)
 */
export function thinningGapFlow(
  gap: AnnularGap,
  fluid: FluidState,
  thinning: ShearThinning,
): (pressureDrop: number) => number {
  const { kinematicViscosity, density } = fluid;
  const atRest = annularGapConductance(gap, { density, kinematicViscosity });
  const viscosity = density * kinematicViscosity;
  const stressPerDrop = gapHeight(gap) / (2 * gap.length);
  return (drop) => {
    if (drop === 0) return 0;
    const stress = stressPerDrop * Math.abs(drop);
    const low = stress / viscosity;
    const wanted = Math.log(low);
    const excess = (rate: number, out: Float64Array): void => {
      writeThinned(thinning, rate, thinned);
      out[0] = Math.log(thinned[0]! * rate) - wanted;
      out[1] = thinned[1]!;
    };
    const rate = powerRoot(excess, low, 'wall shear rate in the gap').root;
    const n = exponentAt(thinning, rate);
    return (atRest * drop * (rate / low) * 3 * n) / (2 * n + 1);
  };
}

/** Viscosity of the oil sheared in the gap by the moving bore alone, over that at rest. */
export function gapDragViscosityRatio(gap: AnnularGap, thinning: ShearThinning, speed: number): number {
  return ratioOfViscosity(thinning, Math.abs(speed) / gapHeight(gap));
}
