import { describe, expect, test } from 'vitest';
import { apparentMassAtShaft, inertiaForce } from '../../lib/damper/inertia-force.js';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import { moveCorner } from '../../lib/motion/corner/move-corner.js';
import { leftOutInertia } from '../../lib/motion/shock/oil-inertia.js';
import { sampleCorner } from './sample-corner.js';
import { sampleModel, sampleShock } from './sample-shock.js';

// Two holes of 1.7 mm, 2.5 mm long: 970 kg/m³ · (4/3 · 2.5 + 1.03 · 1.7) mm · (105.465 mm²)² / (2 · 2.2698 mm²), by hand.
const mass = 12.084e-3;
const shock = sampleShock();

const sine = (frequency: number, amplitude = 0.002) =>
  ({ kind: 'sine', middle: 0.012, amplitude, frequency, cycles: 1 }) as const;

const ofInertia = ({
  warnings,
}: {
  readonly warnings: readonly { readonly code: string; readonly message: string }[];
}) => warnings.filter(({ code }) => code === 'hole-inertia-left-out').map(({ message }) => message);

/** `ω d²/ν` 1 in the sample shock: 380 mm²/s over 1.7² mm², over 2π. */
const frequencyOfOne = 20.927;

describe('force that speeds up the oil in the holes', () => {
  test('is that of 12 g at the shaft of the sample shock, with the sign of the acceleration', () => {
    const model = sampleModel();
    expect(apparentMassAtShaft(model) / mass).toBeCloseTo(1, 3);
    expect(inertiaForce(model, 100)).toBeCloseTo(1.2084, 3);
    expect(inertiaForce(model, -100)).toBeCloseTo(-1.2084, 3);
  });

  test('moves more oil with the whole piston where the gas is on the shaft side', () => {
    const whole = apparentMassAtShaft(sampleModel({ layout: 'shaft-side' }));
    // (112.53/105.465)², by hand.
    expect(whole / mass).toBeCloseTo(1.1385, 3);
  });

  test('goes with the density and with the square of piston area over hole area, not with the viscosity', () => {
    const thick = apparentMassAtShaft(sampleModel({ kinematicViscosity: 1e-3 }));
    expect(thick).toBe(apparentMassAtShaft(sampleModel()));
  });
});

describe('what a run leaves out', () => {
  test('a sine: mass times ω² amplitude, at the frequency of the stroke', () => {
    const { inertia } = benchStroke(shock, sine(10, 0.01));
    expect(inertia.frequency).toBe(10);
    expect(inertia.apparentMass / mass).toBeCloseTo(1, 3);
    // 12.084 g · (2π 10 Hz)² · 10 mm.
    expect(inertia.largestForce).toBeCloseTo(0.47706, 3);
    expect(inertia.frequencyNumber).toBeCloseTo(10 / frequencyOfOne, 4);
  });

  test('a triangle counts as a sine of its speed: its own turns are corners', () => {
    const { inertia } = benchStroke(shock, { ...sine(10, 0.005), kind: 'triangle' });
    // 4 · 5 mm · 10 Hz · 2π · 10 Hz · 12.084 g.
    expect(inertia.largestForce).toBeCloseTo(0.15185, 3);
  });

  test('a table: largest acceleration over largest speed. A speed of 1 m/s as sin² within 20 ms swings as at 25 Hz', () => {
    const [speed, time] = [1, 0.02];
    const times = Array.from({ length: 201 }, (_, i) => (i * time) / 200);
    const travels = times.map(
      (t) => (speed / 2) * (t - (time / (2 * Math.PI)) * Math.sin((2 * Math.PI * t) / time)),
    );
    const { inertia } = benchStroke(shock, { kind: 'table', times, travels });
    // Largest acceleration π v/T = 157 m/s², so 1.898 N; the table is a spline, good to a few percent in it at its ends.
    expect(Math.abs(inertia.largestForce / 1.898 - 1)).toBeLessThan(0.05);
    expect(Math.abs(inertia.frequency / 25 - 1)).toBeLessThan(0.05);
  });

  test('a shaft that stands swings at no frequency', () => {
    expect(leftOutInertia(shock, 1e-4, 0, 0)).toMatchObject({
      frequency: 0,
      largestForce: 0,
      steadyLaw: 0,
      withApparentMass: 0,
    });
  });
});

describe('the warning', () => {
  test('comes above ω d²/ν 1, not below', () => {
    expect(ofInertia(benchStroke(shock, sine(0.99 * frequencyOfOne)))).toEqual([]);
    expect(ofInertia(benchStroke(shock, sine(1.01 * frequencyOfOne)))).toHaveLength(1);
  });

  test('says at which frequency, by how much steady flow is off, what is left out, and that the rest is less', () => {
    // ω d²/ν 3 at L/d 1.47: W ℓ/√(y² + (W ℓ)²) with y 18.68 + 47.06, ℓ 2.991 is 13.5 %, the rest 0.35 % as solved at L/d 0.5; ω² · 2 mm · 12.084 g is 3.76 N.
    const [message] = ofInertia(benchStroke(shock, sine(3 * frequencyOfOne)));
    expect(message).toBe(
      'the shaft swings as fast as at 63 Hz, where the oil in the holes lags (ω d²/ν 3): the laws of steady flow are off by up to 14 % of the swing of the pressure; ' +
        'the 3.8 N at most that speed up this oil are left out, and would leave 0.35 %',
    );
  });

  test('comes with a landing too, by acceleration over speed', () => {
    const thin = sampleShock({ kinematicViscosity: 1e-4 });
    const landing = moveCorner(thin, sampleCorner, { kind: 'landing', dropHeight: 0.05 }, { duration: 0.1 });
    expect(ofInertia(landing)).toHaveLength(1);
    const { frequency, frequencyNumber, largestForce } = landing.inertia;
    expect(frequencyNumber).toBeCloseTo((2 * Math.PI * frequency * 1.7e-3 ** 2) / 1e-4, 9);
    expect(landing.warnings.find(({ code }) => code === 'hole-inertia-left-out')?.value).toBe(
      frequencyNumber,
    );
    const fastest = Math.max(landing.fastestCompression.value, -landing.fastestRebound.value);
    expect(largestForce / (landing.inertia.apparentMass * fastest)).toBeCloseTo(2 * Math.PI * frequency, 6);
  });
});
