import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { ratioOfViscosity, type ShearThinning, writeThinned } from '../../fluid/shear/thinning-viscosity.js';
import { powerRoot } from '../../numeric/power-root.js';
import { type AnnularGap, annularGapConductance, gapHeight } from './annular-gap.js';

/** Writes the flow at a pressure drop [m³/s] and the power of the drop with which it goes there, `d ln Q/d ln Δp`, into the first two places. */
export type GapFlow = (pressureDrop: number, out: Float64Array) => void;

/** Filled and read at once by who asks a gap, and never handed out. */
export const atGap = new Float64Array(2);

/** Logarithm of the largest shear rate that is looked for, and a rate beyond it that is still a number with all that is made of it. */
const largestLogarithm = 600;
const farRate = 1e300;

/** Filled and read within one call and never handed out. */
const thinned = new Float64Array(3);

/**
 * Flow of an oil that thins through the rim gap [m³/s] by pressure, and its power of the pressure: the Newtonian law with the apparent viscosity of a plane
 * slit, `γ̇ = (6V/h) (2n + 1)/(3n)` at the wall. Exact for a power-law oil in a centred gap.
 *
 * @see Rabinowitsch correction of a slit: Macosko, Rheology (1994), sec. 6.3 (from memory)
 */
export function thinningGapFlow(gap: AnnularGap, fluid: FluidState, thinning: ShearThinning): GapFlow {
  const { kinematicViscosity, density } = fluid;
  const atRest = annularGapConductance(gap, { density, kinematicViscosity });
  const viscosity = density * kinematicViscosity;
  const stressPerDrop = gapHeight(gap) / (2 * gap.length);
  // An oil that thins nearly without end passes with a high power of the pressure, soon more than any number; then a search that has gone so far is told that it is too far.
  const least = thinning.kind === 'cross' ? 1 - thinning.exponent : thinning.exponent;
  const beyond = Math.max(
    largestLogarithm * least - (1 - least) * Math.log(thinning.time),
    largestLogarithm + Math.log(thinning.floor),
  );
  return (drop, out) => {
    if (drop === 0) {
      out[0] = 0;
      out[1] = 1;
      return;
    }
    const stress = stressPerDrop * Math.abs(drop);
    const low = stress / viscosity;
    const wanted = Math.log(low);
    if (wanted > beyond) {
      out[0] = drop * Number.POSITIVE_INFINITY;
      out[1] = 1 / least;
      return;
    }
    const excess = (rate: number, at: Float64Array): void => {
      const tried = Math.min(rate, farRate);
      writeThinned(thinning, tried, thinned);
      at[0] = Math.log(thinned[0]! * tried) - wanted;
      at[1] = thinned[1]!;
    };
    const rate = powerRoot(excess, low, 'wall shear rate in the gap').root;
    writeThinned(thinning, rate, thinned);
    const [, n = 1, slope = 0] = thinned;
    out[0] = (atRest * drop * (rate / low) * 3 * n) / (2 * n + 1);
    out[1] = (1 + slope / (n * (2 * n + 1))) / n;
  };
}

/** Viscosity of the oil sheared in the gap by the moving bore alone, over that at rest. */
export function gapDragViscosityRatio(gap: AnnularGap, thinning: ShearThinning, speed: number): number {
  return ratioOfViscosity(thinning, Math.abs(speed) / gapHeight(gap));
}
