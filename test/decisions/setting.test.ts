import { describe, expect, it } from 'vitest';
import { cornerMotion, dampingRatio, reloadedCorner, swingLeft } from '../../lib/decisions/pair/setting.js';

const corner = { sprungMass: 0.6, motionRatio: 0.65, springRate: 500 };

describe('setting', () => {
  it('swings as a mass on a spring: half the mass, root two the frequency', () => {
    const light = cornerMotion({ ...corner, sprungMass: 0.3 });
    expect(light.naturalFrequency / cornerMotion(corner).naturalFrequency).toBeCloseTo(Math.SQRT2, 12);
  });

  it('has the motion ratio squared in rate and critical damping', () => {
    const direct = cornerMotion({ ...corner, motionRatio: 1, springRate: 500 * 0.65 ** 2 });
    const geared = cornerMotion(corner);
    expect(geared.wheelRate).toBeCloseTo(direct.wheelRate, 10);
    expect(geared.naturalFrequency).toBeCloseTo(direct.naturalFrequency, 12);
    // The same damping at the wheel takes 1/0.65² of it at the shaft.
    expect(geared.criticalDamping * 0.65 ** 2).toBeCloseTo(direct.criticalDamping, 10);
  });

  it('sags by its weight over its wheel rate', () => {
    const { staticDeflection, wheelRate } = cornerMotion(corner);
    expect(staticDeflection * wheelRate).toBeCloseTo(0.6 * 9.80665, 12);
  });

  it('keeps frequency and damping ratio in a heavier car', () => {
    const { springRate, dampingFactor, dampingFactorOldSpring } = reloadedCorner(corner, 0.75);
    const heavier = { ...corner, sprungMass: 0.75, springRate };
    expect(cornerMotion(heavier).naturalFrequency).toBeCloseTo(cornerMotion(corner).naturalFrequency, 12);
    expect(dampingRatio(heavier, 20 * dampingFactor)).toBeCloseTo(dampingRatio(corner, 20), 12);
    const oldSpring = { ...corner, sprungMass: 0.75 };
    expect(dampingRatio(oldSpring, 20 * dampingFactorOldSpring)).toBeCloseTo(dampingRatio(corner, 20), 12);
  });

  it('leaves nothing of a swing from critical damping on, and all of it without damping', () => {
    expect(swingLeft(1)).toBe(0);
    expect(swingLeft(1.4)).toBe(0);
    expect(swingLeft(0)).toBe(1);
  });

  it('refuses a car without mass and a negative damping', () => {
    expect(() => cornerMotion({ ...corner, sprungMass: 0 })).toThrow(
      'sprungMass must be greater than 0 kg, got 0 kg',
    );
    expect(() => cornerMotion({ ...corner, motionRatio: -1 })).toThrow('motionRatio must be greater than 0');
    expect(() => dampingRatio(corner, -1)).toThrow('dampingCoefficient must be 0 or more N·s/m');
    expect(() => reloadedCorner(corner, Number.NaN)).toThrow('sprungMass must be greater than 0 kg');
    expect(() => swingLeft(-0.1)).toThrow('ratio must be 0 or more');
  });
});
