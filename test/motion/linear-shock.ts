import type { MovingShock } from '../../lib/motion/shock/moving-shock.js';

/** A shock whose oil and gas do nothing, with the forces given: closed forms hold for it. */
export function linearShock(change: Partial<MovingShock> = {}): MovingShock {
  return {
    pistonArea: 1.1e-4,
    shaftArea: 1e-9,
    stroke: 0.024,
    // So wide that the oil takes no work: 1e-12 N·s/m.
    passage: (pressureDrop, passage) => {
      passage.flow = 1e4 * pressureDrop;
      passage.recoil = 0;
    },
    rimDrag: () => 0,
    sealForce: () => 0,
    oil: {
      volume: 1e-5,
      referencePressure: 101_325,
      bulkModulus: 9e8,
      airFraction: 0,
      airExponent: 1,
    },
    layout: 'blind-side',
    gas: { pressure: () => 101_325, capacity: 1e-5 },
    farVolume: 3e-6,
    ambientPressure: 101_325,
    releasePressure: 0,
    inertance: 0,
    unsteadyFlow: () => ({ frequencyNumber: 0, steadyLaw: 0, withApparentMass: 0 }),
    holeReynoldsNumber: () => 0,
    ...change,
  };
}
