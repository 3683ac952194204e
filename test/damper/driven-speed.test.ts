import { describe, expect, test } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fastestRebound, landingShaftSpeed } from '../../lib/damper/driven-speed.js';
import { front, oil } from './three-builds.js';

describe('speeds that happen', () => {
  const model = damperModel({ ...front(1.4), seal: { kineticForce: 0.2, breakawayForce: 0.3 } }, oil);

  test('rebound goes as fast as damping and seals equal the spring and the gas', () => {
    // 0.6 N/mm, 20 mm in.
    const speed = fastestRebound(model, { force: 12, position: 20e-3 });
    const { dampingForce, gasForce } = damperForce(model, { speed, position: 20e-3 });
    expect(speed).toBeLessThan(-0.1);
    expect(speed).toBeGreaterThan(-0.6);
    expect(-dampingForce + 0.2).toBeCloseTo(12 + gasForce, 6);
  });

  test('a stronger spring drives it faster, a thicker oil slower, and friction can hold it', () => {
    const at = (force: number) => fastestRebound(model, { force, position: 0 });
    expect(at(15)).toBeLessThan(at(12));
    const thick = damperModel(model.damper, { ...oil, kinematicViscosity: 1e-3 });
    expect(fastestRebound(thick, { force: 12, position: 0 })).toBeGreaterThan(at(12));
    expect(at(0.1)).toBe(0);
    expect(at(-5)).toBe(0);
    expect(() => at(1e9)).toThrow(
      'force must be one that drives the shaft no faster than 1000 m/s, in N, got 1000000000 N',
    );
  });

  test('a drop of 0.3 m at 0.7 mm of shaft for each mm of wheel: 0.7 √(2 · 9.80665 · 0.3) m/s', () => {
    expect(landingShaftSpeed(0.3, 0.7)).toBeCloseTo(1.698, 3);
    expect(() => landingShaftSpeed(4, 0.7)).toThrow('height must be 0 to 3 m');
    expect(() => landingShaftSpeed(0.3, 0)).toThrow('motionRatio must be greater than 0');
  });
});
