import fc from 'fast-check';
import type { Damper } from '../../lib/damper/damper.js';
import type { FluidState } from '../../lib/fluid/oil/fluid-state.js';
import { sealedGas } from '../../lib/gas/gas.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Sizes of shocks as they are built, so that cavities open at speeds that happen and gas is squeezed as it is. */
const sizes = fc.record({
  bore: within(10e-3, 16e-3),
  shaftDiameter: within(3e-3, 4e-3),
  stroke: within(12e-3, 36e-3),
  gap: within(0.02e-3, 0.12e-3),
  thickness: within(1.5e-3, 3.5e-3),
  holes: fc.array(fc.record({ count: fc.integer({ min: 1, max: 4 }), diameter: within(0.9e-3, 1.8e-3) }), {
    minLength: 1,
    maxLength: 2,
  }),
  eccentricity: within(0, 0.9),
  /** Gas over the volume of the whole shaft: what a bladder or an air space leaves. */
  gasShare: within(1.2, 4),
  pressure: within(0.95e5, 1.6e5),
  polytropicExponent: within(1, 1.4),
  airReleasePressure: within(0, 20_000),
  layout: fc.constantFrom('blind-side' as const, 'shaft-side' as const, 'emulsion' as const),
  friction: within(0, 1.5),
});

/** A damper as it is built, with its gas. */
export const anyShockInUse: fc.Arbitrary<Damper> = sizes.map((of) => ({
  bore: of.bore,
  shaftDiameter: of.shaftDiameter,
  stroke: of.stroke,
  piston: {
    diameter: of.bore - 2 * of.gap,
    thickness: of.thickness,
    holes: of.holes,
    eccentricity: of.eccentricity,
  },
  gas: sealedGas({
    volume: of.gasShare * (Math.PI / 4) * of.shaftDiameter ** 2 * of.stroke,
    pressure: of.pressure,
    polytropicExponent: of.polytropicExponent,
    ambientPressure: 1e5,
    airReleasePressure: of.airReleasePressure,
    layout: of.layout,
  }),
  seal: { kineticForce: of.friction, breakawayForce: 1.5 * of.friction },
}));

export const anyOilInUse: fc.Arbitrary<FluidState> = fc.record({
  kinematicViscosity: within(1e-4, 1.5e-3),
  density: within(850, 980),
});

/** Part of the stroke at which the shaft stands; both ends come often. */
export const anyPlaceInStroke = fc.oneof(fc.constantFrom(0, 1), within(0, 1));

/** Shaft speed [m/s], either way, slow and fast alike often. */
export const anySpeedInUse = fc
  .record({ decades: within(-3, 0.5), sign: fc.constantFrom(1, -1) })
  .map(({ decades, sign }) => sign * 10 ** decades);
