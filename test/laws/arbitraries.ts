import fc from 'fast-check';
import type { Damper } from '../../lib/damper/damper.js';
import type { Hole } from '../../lib/flow/geometry/hole.js';
import type { Piston } from '../../lib/flow/geometry/piston.js';
import type { FluidState } from '../../lib/fluid/oil/fluid-state.js';
import { sealedGas } from '../../lib/gas/gas.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Sizes of real parts and rather beyond. */
export const anyFluid: fc.Arbitrary<FluidState> = fc.record({
  kinematicViscosity: within(5e-6, 2e-2),
  density: within(800, 1100),
});

export const anyHole: fc.Arbitrary<Hole> = fc
  .record({ diameter: within(0.3e-3, 3e-3), lengthRatio: within(0.5, 5) })
  .map(({ diameter, lengthRatio }) => ({ diameter, length: diameter * lengthRatio }));

export const anyBore = within(8e-3, 20e-3);

export function anyPiston(bore: number): fc.Arbitrary<Piston> {
  return fc.record({
    diameter: within(bore - 3e-4, bore - 1e-5),
    thickness: within(1e-3, 5e-3),
    holes: fc.array(fc.record({ count: fc.integer({ min: 1, max: 8 }), diameter: within(0.5e-3, 2.2e-3) }), {
      minLength: 1,
      maxLength: 4,
    }),
    eccentricity: within(0, 0.99),
  });
}

/** A sealed pocket of gas that takes the shaft of any damper below. */
export const anyPocket = fc.record({
  volume: within(1e-6, 5e-6),
  pressure: within(0.5e5, 5e5),
  polytropicExponent: within(1, 1.4),
  ambientPressure: within(0.8e5, 1.1e5),
});

/** The gas of a damper under another pressure [Pa], its room as it is. */
export const atPressure = (damper: Damper, pressure: number): Damper => ({
  ...damper,
  gas: { ...damper.gas, closing: { ...damper.gas.closing, pressure } },
});

/** A damper without seal friction and with the gas at ambient pressure unless the test says otherwise. */
export const anyDamper: fc.Arbitrary<Damper> = anyBore.chain((bore) =>
  fc.record({
    bore: fc.constant(bore),
    shaftDiameter: within(2e-3, 5e-3),
    stroke: within(10e-3, 40e-3),
    piston: anyPiston(bore),
    gas: anyPocket.map(sealedGas),
    seal: within(0, 2).map((kineticForce) => ({ kineticForce, breakawayForce: 1.5 * kineticForce })),
  }),
);

export const anySpeed = within(1e-4, 3);
