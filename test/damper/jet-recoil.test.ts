import { describe, expect, test } from 'vitest';
import { forceWithCavity } from '../../lib/damper/cavity-force.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { jetRecoil } from '../../lib/damper/jet-recoil.js';
import { jetMomentumFlow } from '../../lib/flow/hole/jet-momentum.js';
import { area, damper, oil, withGas } from './pocket-damper.js';

describe('recoil of the jets', () => {
  test('is the momentum of the jets less half of that of the oil in the bore, ρ a (m V² + 5.5 ν V/d − ½ V U)', () => {
    const model = damperModel(withGas({ pressure: 1e8 }), oil);
    const { jetRecoil, holeReynoldsNumber } = damperForce(model, { speed: 1, position: 0 });
    const speed = (holeReynoldsNumber * 3.5e-4) / 1.3e-3;
    const holes = Math.PI * 1.3e-3 ** 2;
    const boreSpeed = model.dampingArea / area;
    // m from 0.644 in slow oil to 1.2 with the onset of inertia, F of docs/hole-law.md.
    const x = holeReynoldsNumber / 35.6;
    const onset = x * Math.sqrt((1 + 1.486 * x ** 2) / (1 - 1.24 * x + 3.21 * x ** 2 + 1.486 * x ** 4));
    const momentum = (0.644 + 0.556 * onset) * speed ** 2 + (5.5 * 3.5e-4 * speed) / 1.3e-3;
    expect(jetRecoil / (970 * holes * (momentum - 0.5 * speed * boreSpeed))).toBeCloseTo(1, 9);
    expect(damperForce(model, { speed: -1, position: 0 }).jetRecoil).toBe(-jetRecoil);
  });

  test('takes no more from slow oil than the lower pressure on the face behind, 5.5 μ V/d of each hole', () => {
    const model = damperModel(withGas({ pressure: 1e8 }), oil);
    const slow = damperForce(model, { speed: 1e-4, position: 0 });
    const speed = (slow.holeReynoldsNumber * 3.5e-4) / 1.3e-3;
    const viscous = (970 * Math.PI * 1.3e-3 ** 2 * 5.5 * 3.5e-4 * speed) / 1.3e-3;
    expect(Math.abs(slow.jetRecoil / viscous - 1)).toBeLessThan(1e-3);
    expect(slow.jetRecoil / slow.dampingForce).toBeLessThan(0.01);
  });

  test('is that of a wider exit while the jet fills it, half way at its separation number, and of a free jet behind that', () => {
    const jet = {
      attachedShare: 0.4,
      separationNumber: 1000,
      separationPower: 4,
      creepingShare: 0,
      momentum: 1,
    };
    // Viscosity and diameter are 1, so that speed is Reynolds number; inertia has set in long before, and the momentum of a straight hole is V².
    const part = (given: typeof jet, speed: number) => jetMomentumFlow(given, speed, 1, 1) / speed ** 2;
    const free = { ...jet, separatedShare: 1.5 };
    expect(part(free, 100)).toBeCloseTo(part(jet, 100), 3);
    expect(part(free, 1000) / part({ ...jet, attachedShare: 1 }, 1000)).toBeCloseTo((0.4 + 1.5) / 2, 9);
    expect(part(free, 1e5)).toBeCloseTo(1.5, 3);
    expect(part(jet, 1e5)).toBeCloseTo(1, 3);
    expect(() => part({ ...jet, separatedShare: Number.NaN } as typeof jet, 1)).toThrow('separatedShare');
  });

  test('asks for the speed in each path, and for no more', () => {
    const model = damperModel(damper, oil);
    for (const speeds of [[], [1, 1]])
      expect(() => jetRecoil(model, speeds, 1e-6)).toThrow(
        `holeSpeeds.length must be 1, got ${speeds.length}`,
      );
    expect(jetRecoil(model, [1], 1e-6)).toBe(-jetRecoil(model, [-1], -1e-6));
  });

  test('goes with the flow, not with the shaft: a cavity that fills on the way back pushes outward all the same', () => {
    const model = damperModel(damper, oil);
    const [out, still, back] = [0.3, 0, -0.3].map((speed) =>
      forceWithCavity(model, { speed, position: 0.01 }, 2e-7),
    );
    expect(back?.jetRecoil).toBe(out?.jetRecoil);
    expect(back?.jetRecoil).toBeGreaterThan(0);
    expect(still?.force).toBeGreaterThan(10);
    expect(back?.pressureDrop).toBe(out?.pressureDrop);
  });
});
