import { describe, expect, test } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { creepingDampingCoefficient } from '../../lib/damper/force-point.js';
import { airPassageTravel, deadBand } from '../../lib/fill/air/dead-band.js';
import { closeShock } from '../../lib/fill/chamber/closed-shock.js';
import { creepSpeed, pullOutTime } from '../../lib/fill/friction/creep-speed.js';
import {
  frictionFromScale,
  frictionRulesBelow,
  rideHeightBand,
  slowHandSpeed,
} from '../../lib/fill/friction/seal-measurement.js';
import { frictionFromTwoWeights } from '../../lib/fill/friction/two-weights.js';
import { model } from './damper.js';
import { atmosphere, chamber, closedAt } from './shock.js';

const roomy = closeShock({ ...chamber, capVolume: 1 }, { kind: 'air-pocket', volume: 0.9 }, closedAt(28e-3));

describe('creep', () => {
  test('slow creep is the net force over the creeping coefficient', () => {
    const slow = creepSpeed(model, 0.2 + 1e-6);
    expect(slow).toBeCloseTo(1e-6 / creepingDampingCoefficient(model), 14);
  });

  test('damping balances the net force, outward and inward', () => {
    const out = creepSpeed(model, 3);
    expect(out).toBeGreaterThan(0);
    expect(damperForce(model, { speed: -out, position: 0 }).dampingForce).toBeCloseTo(-2.8, 9);
    expect(creepSpeed(model, -3)).toBeCloseTo(-out, 12);
  });

  test('friction holds the shaft', () => {
    expect(creepSpeed(model, 0.2)).toBe(0);
    expect(creepSpeed(model, -0.1)).toBe(0);
    expect(() => creepSpeed(model, Number.NaN)).toThrow(/force/u);
  });

  test('time over a stretch without gas force is the stretch over the speed', () => {
    const time = pullOutTime(model, roomy, { pull: 2, from: 26e-3, to: 2e-3 });
    expect(time).toBeCloseTo(24e-3 / creepSpeed(model, 2), 6);
  });

  test('a gas force along the way: half the stretch with each mean force, within 1 %', () => {
    const shock = closeShock(chamber, { kind: 'air-pocket', volume: 0.4e-6 }, closedAt(14e-3));
    const whole = pullOutTime(model, shock, { pull: 2, from: 26e-3, to: 2e-3 });
    const parts =
      pullOutTime(model, shock, { pull: 2, from: 26e-3, to: 14e-3 }) +
      pullOutTime(model, shock, { pull: 2, from: 14e-3, to: 2e-3 });
    expect(whole / parts).toBeCloseTo(1, 6);
  });

  test('gas that pushes out helps the weight, gas that sucks in holds it back', () => {
    // Closed half way in: pushed further in the gas pushes out, further out it sucks in. A vacuum could hold with 0.7 N at most.
    const shock = closeShock(chamber, { kind: 'air-pocket', volume: 0.4e-6 }, closedAt(14e-3));
    const [inside, outside] = [
      pullOutTime(model, shock, { pull: 2, from: 26e-3, to: 14e-3 }),
      pullOutTime(model, shock, { pull: 2, from: 14e-3, to: 2e-3 }),
    ];
    const alone = 12e-3 / creepSpeed(model, 2);
    expect(inside).toBeLessThan(0.98 * alone);
    expect(outside).toBeGreaterThan(1.02 * alone);
  });

  test('a weight too light for the way says so', () => {
    expect(() => pullOutTime(model, roomy, { pull: 0.15, from: 26e-3, to: 2e-3 })).toThrow(
      /pull must be more than 0\.2/u,
    );
    expect(() => pullOutTime(model, roomy, { pull: 1, from: 2e-3, to: 26e-3 })).toThrow(/to must be/u);
  });
});

describe('friction measured', () => {
  const timed = (pull: number, gas = 0) => ({ pull, time: 24e-3 / ((pull + gas - 0.3) / 60) });
  const stretch = { length: 24e-3, gasForce: 0, timeError: 0 };

  test('two weights and a stopwatch give back friction and damping', () => {
    const { friction, dampingCoefficient } = frictionFromTwoWeights(timed(0.6), timed(1.2), stretch);
    expect(friction).toBeCloseTo(0.3, 9);
    expect(dampingCoefficient).toBeCloseTo(60, 9);
    expect(() => frictionFromTwoWeights(timed(1.2), timed(0.6), stretch)).toThrow(
      'heavier.pull must be above the 1.2 of the lighter weight N, got 0.6 N',
    );
  });

  test('a gas that pushes out does not pass for little friction', () => {
    const found = frictionFromTwoWeights(timed(0.6, 0.15), timed(1.2, 0.15), { ...stretch, gasForce: 0.15 });
    expect(found.friction).toBeCloseTo(0.3, 9);
    expect(found.dampingCoefficient).toBeCloseTo(60, 9);
  });

  test('the error of the hand is carried: 4.8 and 1.6 s, each 0.1 s off, by small changes of each', () => {
    const [light, heavy] = [timed(0.6), timed(1.2)];
    const { frictionError, dampingError } = frictionFromTwoWeights(light, heavy, {
      ...stretch,
      timeError: 0.1,
    });
    // m g − F = c s/t turned round for both, one time moved at a time.
    const solve = (first: number, second: number) => {
      const friction = (0.6 * first - 1.2 * second) / (first - second);
      return [friction, ((0.6 - friction) * first) / 24e-3] as const;
    };
    const slope = (place: 0 | 1, dFirst: number, dSecond: number) =>
      (solve(light.time + dFirst, heavy.time + dSecond)[place] -
        solve(light.time - dFirst, heavy.time - dSecond)[place]) /
      2e-6;
    for (const [place, error] of [
      [0, frictionError],
      [1, dampingError],
    ] as const) {
      const expected = 0.1 * Math.hypot(slope(place, 1e-6, 0), slope(place, 0, 1e-6));
      expect(error / expected).toBeCloseTo(1, 6);
    }
  });

  test('weights that cannot tell are refused, with what would', () => {
    expect(() =>
      frictionFromTwoWeights(
        { pull: 0.6, time: 2 },
        { pull: 0.7, time: 1.7 },
        { ...stretch, timeError: 0.1 },
      ),
    ).toThrow(/heavier\.time must be below 1\.57.* Hang a heavier weight, or time a longer stretch/u);
  });

  test('a hand on the scale is slow where damping adds a tenth of the friction', () => {
    const speed = slowHandSpeed(model, 0.5) ?? Number.NaN;
    expect(damperForce(model, { speed: -speed, position: 0 }).dampingForce).toBeCloseTo(-0.05, 9);
    expect(() => slowHandSpeed(model, 0)).toThrow('friction must be greater than 0 N');
  });

  test('scale: half the sum is gas, half the difference friction', () => {
    expect(frictionFromScale(0.9, -0.1)).toEqual({ gasForce: 0.4, friction: 0.5 });
    expect(() => frictionFromScale(0.1, 0.2)).toThrow(/lettingOut/u);
  });

  test('below a speed friction rules: there the damping force equals it', () => {
    const speed = frictionRulesBelow(model, 0.5) ?? Number.NaN;
    expect(damperForce(model, { speed, position: 0 }).dampingForce).toBeCloseTo(0.5, 9);
    expect(frictionRulesBelow(model, 0)).toBe(0);
    expect(() => frictionRulesBelow(model, -1)).toThrow(/friction/u);
  });

  test('ride height band by hand: both ways of 0.3 N at a lever of 0.6 over 600 N/m', () => {
    expect(rideHeightBand(0.3, { wheelRate: 600, motionRatio: 0.6 })).toBeCloseTo(0.6e-3, 12);
    expect(() => rideHeightBand(0.3, { wheelRate: 0, motionRatio: 1 })).toThrow(/wheelRate/u);
  });
});

describe('dead band', () => {
  const airy = (airFraction: number) => ({
    volume: 1.5e-6,
    oil: {
      liquidBulkModulus: 0.87e9,
      airFraction,
      referencePressure: atmosphere,
      polytropicExponent: 1,
    },
  });

  test('slow in creeping flow: V α/(A p) · Δp_steady · ln(1/(1 − s)) for a small pressure drop', () => {
    // dV/dp = V α/p; A − Q/v = A (1 − p/p_steady): x = V α Δp/(A p) ∫ ds/(1 − s). Oil itself adds p/(α K) = 0.012 %.
    const speed = 1e-6;
    const steady = model.pistonFlow.pressureDrop(model.dampingArea * speed).pressureDrop;
    const expected = ((1.5e-6 * 0.1 * steady) / (model.dampingArea * atmosphere)) * Math.LN10;
    expect(deadBand(model, airy(0.1), -speed) / expected).toBeCloseTo(1, 2);
    expect(deadBand(model, airy(0.1), speed) / expected).toBeCloseTo(1, 2);
  });

  test('pulled, air stretches more than it shrinks when pushed: compression loses more travel', () => {
    expect(deadBand(model, airy(0.05), 0.05)).toBeGreaterThan(1.5 * deadBand(model, airy(0.05), -0.05));
  });

  test('in proportion to the air, and next to nothing without', () => {
    const ratio = deadBand(model, airy(0.1), -0.05) / deadBand(model, airy(0.05), -0.05);
    expect(ratio).toBeCloseTo(2, 1);
    expect(deadBand(model, airy(0), -0.05)).toBeLessThan(2e-6);
  });

  test('with the gas on the shaft side the way out loses more, and an emulsion is refused', () => {
    const laidOut = (layout: 'shaft-side' | 'emulsion') =>
      damperModel({ ...model.damper, gas: { ...model.damper.gas, layout } }, model.fluid);
    const shaftSide = laidOut('shaft-side');
    expect(deadBand(shaftSide, airy(0.05), -0.05)).toBeGreaterThan(
      1.5 * deadBand(shaftSide, airy(0.05), 0.05),
    );
    expect(() => deadBand(laidOut('emulsion'), airy(0.05), 0.05)).toThrow(
      'gas.layout must be blind-side or shaft-side: in an emulsion neither side is held, got emulsion',
    );
  });

  test('a compression that would tear the oil is refused with the speed at which it begins', () => {
    // The speed that it names is the fastest one that it answers.
    const named = /below ([\d.]+), where a cavity opens/u;
    const message = (() => {
      try {
        return String(deadBand(model, airy(0.05), 0.3));
      } catch (error) {
        return (error as Error).message;
      }
    })();
    const fastest = Number(named.exec(message)?.[1]);
    expect(deadBand(model, airy(0.05), 0.999 * fastest)).toBeGreaterThan(0);
    expect(() => deadBand(model, airy(0.05), 1.001 * fastest)).toThrow(named);
    expect(() => deadBand(model, airy(0.05), 0.3)).toThrow(
      /speed must be below 0\.1\d+, where a cavity opens/u,
    );
    expect(() => deadBand(model, airy(0.05), 0)).toThrow(/speed/u);
    expect(() => deadBand(model, airy(0.05), 0.05, 1)).toThrow(/share/u);
  });

  test('a pocket that passes the piston costs its volume over the damping area', () => {
    expect(airPassageTravel(model, 50e-9)).toBeCloseTo(50e-9 / model.dampingArea, 12);
  });
});
