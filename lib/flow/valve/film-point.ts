import type { FluidState } from '../../fluid/oil/fluid-state.js';
import type { CurvePoint } from '../disc/disc-curve.js';
import type { BoundDisc } from './disc-film.js';

/** Kinetic energy of a parabolic sheet over `½ ρ V²`: what oil that spreads from the hole does not get back. */
const sheetEnergy = 54 / 35;

/** Pressure under a disc and flow at a lift, with slopes over the logarithm of the lift; filled by {@link filmPoint}. */
export type FilmPoint = CurvePoint;

/**
 * Writes pressure under the disc [Pa] and flow [m³/s] at a lift [m], viscous film and inertia. Inertia begins with the square of the Reynolds
 * number, as in the holes: `½ ρ V² K x/(1 + x³)^⅓` with `x = Re/16K`, `V` the speed at the edge of the holes, `Re` on twice the gap (our own
 * transfer of the law of the holes; the film's reference has none, since its Reynolds number stays near 1).
 */
export function filmPoint(disc: BoundDisc, fluid: FluidState): (lift: number, out: FilmPoint) => void {
  const { curve, pressureUnit, viscousFlowUnit, liftUnit, edge } = disc;
  const { density, kinematicViscosity } = fluid;
  const flowUnit = viscousFlowUnit / (density * kinematicViscosity);
  const largest = curve.largestLift * liftUnit;
  return (lift, out) => {
    curve.write(lift / liftUnit, out);
    const flow = flowUnit * out.flow;
    const flowPower = out.flow > 0 ? out.flowSlope / out.flow : 4;
    const speed = flow / (edge * Math.min(lift, largest));
    const x = flow / (8 * sheetEnergy * edge * kinematicViscosity);
    const cube = 1 + x * x * x;
    const inertia = (0.5 * density * speed * speed * sheetEnergy * x) / Math.cbrt(cube);
    out.pressure = pressureUnit * out.pressure + inertia;
    out.pressureSlope =
      pressureUnit * out.pressureSlope +
      inertia * (2 * (flowPower - (lift < largest ? 1 : 0)) + flowPower / cube);
    out.flow = flow;
    out.flowSlope = flowUnit * out.flowSlope;
  };
}
