import { describe, expect, test } from 'vitest';
import {
  creepingDampingCoefficient,
  type Damper,
  damperForce,
  damperModel,
  forceSlope,
  sealedGas,
  speedsAtForce,
  strokeDamping,
  valveOpenings,
} from '../../lib/index.js';
import { benchStroke, movingShock, strokeFigures } from '../../lib/motion/index.js';

/** An invented shock. */
const plain: Damper = {
  bore: 0.012,
  shaftDiameter: 0.003,
  stroke: 0.024,
  piston: { diameter: 0.01195, thickness: 0.0025, holes: [{ count: 4, diameter: 0.0013 }], eccentricity: 0 },
  gas: sealedGas({ volume: 2e-6 }),
  seal: { kineticForce: 0, breakawayForce: 0 },
};
const fluid = { kinematicViscosity: 350e-6, density: 970 };
const slippery = damperModel(plain, fluid);
const sticky = damperModel({ ...plain, seal: { kineticForce: 0.4, breakawayForce: 0.6 } }, fluid);

/** A thin preloaded disc over large holes: once it lifts the pressure spreads under it, so that it snaps open and the force falls. */
const fallsOpen = damperModel(
  {
    ...plain,
    piston: {
      ...plain.piston,
      holes: [
        { count: 1, diameter: 0.0008 },
        { count: 4, diameter: 0.0015, pitchDiameter: 0.0078 },
      ],
      valves: [
        {
          face: 'shaft-side',
          covers: [1],
          outerDiameter: 0.0105,
          clampDiameter: 0.005,
          thickness: 3e-5,
          count: 1,
          elasticModulus: 2e11,
          poissonRatio: 0.3,
          preload: 3e-5,
        },
      ],
    },
    gas: sealedGas({ volume: 2e-6, pressure: 2e6 }),
  },
  fluid,
);
const position = 0.01;
const forceAt = (model: typeof sticky, speed: number) => damperForce(model, { speed, position });

/** Crossings of the force by a plain walk along the speeds, in steps of a thousandth of a millimetre a second and more [m/s]. */
function walked(model: typeof sticky, force: number, fastest: number): readonly number[] {
  const found: number[] = [];
  const steps = 20_000;
  let [last, before] = [-fastest, forceAt(model, -fastest).force - force];
  for (let step = 1; step <= steps; step++) {
    const speed = fastest * ((2 * step) / steps - 1);
    const excess = forceAt(model, speed).force - force;
    if (before < 0 !== excess < 0) found.push((last * excess - speed * before) / (excess - before));
    [last, before] = [speed, excess];
  }
  return found;
}

describe('speeds at a force', () => {
  test('are one where the curve rises, with the force of that speed', () => {
    for (const speed of [-1.3, -0.2, -0.004, 0.03, 0.5]) {
      const { force } = forceAt(slippery, speed);
      const found = speedsAtForce(slippery, { force, position, fastest: 2 });
      expect(found.map((one) => one.speed / speed)).toEqual([expect.closeTo(1, 9)]);
      expect(found[0]?.force).toBeCloseTo(force, 9);
    }
  });

  test('are none beyond the fastest speed', () => {
    const { force } = forceAt(slippery, 1);
    expect(speedsAtForce(slippery, { force, position, fastest: 0.99 })).toEqual([]);
  });

  test('are three where a seal has broken away, as a walk along the curve finds them', () => {
    const gas = forceAt(sticky, 0).gasForce;
    const force = gas + 0.55;
    const found = speedsAtForce(sticky, { force, position, fastest: 0.02 }).map(({ speed }) => speed);
    const plainWalk = walked(sticky, force, 0.02);
    expect(found).toHaveLength(plainWalk.length);
    found.forEach((speed, index) => {
      expect(speed / (plainWalk[index] ?? 0)).toBeCloseTo(1, 3);
    });
  });

  test('are several where a disc falls open, each of them on the curve', () => {
    const [opening] = valveOpenings(fallsOpen);
    const lifts = opening?.speed ?? 0;
    expect(lifts).toBeGreaterThan(0);
    const top = forceAt(fallsOpen, lifts * (1 - 1e-9)).force;
    const beyond = forceAt(fallsOpen, lifts * (1 + 1e-6)).force;
    const gas = forceAt(fallsOpen, 0).gasForce;
    expect(beyond - gas).toBeLessThan(0.95 * (top - gas));
    // A force inside the jump belongs to a speed before it and to one after it, not to that of the jump.
    const force = (top + beyond) / 2;
    const found = speedsAtForce(fallsOpen, { force, position, fastest: 5 * lifts });
    expect(found).toHaveLength(2);
    expect(found[0]?.speed).toBeLessThan(0.99 * lifts);
    expect(found[1]?.speed).toBeGreaterThan(1.01 * lifts);
    for (const one of found) expect(forceAt(fallsOpen, one.speed).force).toBeCloseTo(force, 9);
    const low = gas + 0.9 * (beyond - gas);
    expect(speedsAtForce(fallsOpen, { force: low, position, fastest: 5 * lifts })).toHaveLength(1);
  });

  test('beyond the onset of cavitation says so', () => {
    const { force } = forceAt(sticky, 3);
    const [found] = speedsAtForce(sticky, { force, position, fastest: 5 });
    expect(found?.cavitating).toBe(true);
  });

  test.each([
    [{ force: Number.NaN }, 'force must be a finite number N'],
    [{ position: 0.03 }, 'position must be 0 to 0.024 m'],
    [{ fastest: 0 }, 'fastest must be greater than 0 m/s'],
    [{ fastest: 11 }, 'fastest must be 0 to 10 m/s'],
  ])('%o is refused', (change, message) => {
    expect(() => speedsAtForce(sticky, { force: 1, position, fastest: 1, ...change })).toThrow(message);
  });
});

describe('slope of the force', () => {
  test('at rest is the creeping damping of the oil, and breakaway over 1 mm/s of the seals', () => {
    const { dampingForce, sealForce, atKink } = forceSlope(sticky, { speed: 0, position });
    expect(dampingForce / creepingDampingCoefficient(sticky)).toBeCloseTo(1, 5);
    // d/dv of F_s tanh(v/v_0) at 0 is F_s/v_0.
    expect(sealForce / (0.6 / 0.001)).toBeCloseTo(1, 5);
    expect(atKink).toBe(false);
  });

  test('of seals that have broken away is below 0: at v_s/√2 it is −√(2/e) (F_s − F_c)/v_s', () => {
    // From F_c + (F_s − F_c) exp(−(v/v_s)²), worked by hand; tanh is 1 there to 1e-6.
    const { sealForce } = forceSlope(sticky, { speed: 0.01 / Math.SQRT2, position });
    expect(sealForce).toBeCloseTo(-Math.sqrt(2 / Math.E) * (0.2 / 0.01), 2);
  });

  test.each([-0.8, -0.05, 0.2, 1.5])('at %f m/s is that of two forces close by', (speed) => {
    const by = 1e-5 * Math.abs(speed);
    const { force, atKink } = forceSlope(slippery, { speed, position });
    const chord = (forceAt(slippery, speed + by).force - forceAt(slippery, speed - by).force) / (2 * by);
    expect(force / chord).toBeCloseTo(1, 6);
    expect(atKink).toBe(false);
  });

  test('is told to have a kink where a disc lifts, and nowhere near', () => {
    const lifts = valveOpenings(fallsOpen)[0]?.speed ?? 0;
    expect(forceSlope(fallsOpen, { speed: lifts * (1 + 1e-6), position })).toMatchObject({ atKink: true });
    expect(forceSlope(fallsOpen, { speed: 1.1 * lifts, position })).toMatchObject({ atKink: false });
    expect(forceSlope(fallsOpen, { speed: 0.5 * lifts, position })).toMatchObject({ atKink: false });
  });
});

describe('equivalent damping of a stroke', () => {
  const stroke = { middle: 0.012, amplitude: 0.008, frequency: 2 };

  test('of dry friction F is 4 F/(π ω X), its work 4 F X (Rao, Mechanical Vibrations, SI ed. 2017, sec. 2.9 and 3.9; from memory)', () => {
    const dry = damperModel({ ...plain, seal: { kineticForce: 0.5, breakawayForce: 0.5 } }, fluid);
    const { workOfSeals, workOfOil } = strokeDamping(dry, stroke);
    expect(workOfSeals / (4 * 0.5 * stroke.amplitude)).toBeCloseTo(1, 3);
    const { equivalentDamping, highestSpeed } = strokeDamping(dry, stroke);
    const omega = 2 * Math.PI * stroke.frequency;
    expect(highestSpeed).toBeCloseTo(omega * stroke.amplitude, 12);
    const friction = (4 * 0.5) / (Math.PI * omega * stroke.amplitude);
    const ofOil = workOfOil / (Math.PI * omega * stroke.amplitude ** 2);
    expect(equivalentDamping / (friction + ofOil)).toBeCloseTo(1, 3);
  });

  test('of slow oil is its creeping damping', () => {
    const slow = strokeDamping(slippery, { ...stroke, frequency: 1e-4 });
    expect(slow.equivalentDamping / creepingDampingCoefficient(slippery)).toBeCloseTo(1, 4);
    expect(slow.workOfSeals).toBe(0);
  });

  test('is less than that of the highest speed, and more than that of the lowest, where damping grows', () => {
    const { equivalentDamping, highestSpeed } = strokeDamping(slippery, { ...stroke, frequency: 20 });
    expect(equivalentDamping).toBeLessThan(forceAt(slippery, highestSpeed).dampingCoefficient);
    expect(equivalentDamping).toBeGreaterThan(1.02 * creepingDampingCoefficient(slippery));
  });

  test('is that of the stroke followed in time where oil and gas keep up', () => {
    const model = damperModel(
      {
        ...plain,
        gas: sealedGas({ volume: 2e-6, pressure: 1e6 }),
        seal: { kineticForce: 0.4, breakawayForce: 0.6 },
      },
      fluid,
    );
    const followed = { kind: 'sine', cycles: 2, ...stroke } as const;
    const shock = movingShock(model, { volume: 3e-6, farVolume: 4e-7, bulkModulus: 1e9 });
    const { equivalentDamping } = strokeFigures(benchStroke(shock, followed), followed);
    expect(strokeDamping(model, stroke).equivalentDamping / equivalentDamping).toBeCloseTo(1, 2);
  });

  test('warns where the oil would tear', () => {
    const fast = strokeDamping(sticky, { ...stroke, frequency: 60 });
    expect(fast.warnings.map(({ code }) => code)).toContain('cavitation');
    expect(strokeDamping(sticky, stroke).warnings).toEqual([]);
  });

  test.each([
    [{ middle: 0.02 }, 'middle must be 0.008 to 0.016 m'],
    [{ frequency: 0 }, 'frequency must be greater than 0 Hz'],
    [{ frequency: 199.9 }, 'highest speed of the stroke must be 0 to 10 m/s'],
  ])('%o is refused', (change, message) => {
    expect(() => strokeDamping(sticky, { ...stroke, ...change })).toThrow(message);
  });
});
