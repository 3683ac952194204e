import { describe, expect, it } from 'vitest';
import { cornerMotion, dampingRatio, swingLeft } from '../../lib/decisions/pair/setting.js';

/**
 * Rao, Mechanical Vibrations, the worked example "Shock absorber for a motorcycle" (Example 2.14 of one edition): mass 200 kg, damped
 * period 2 s, amplitude down to a quarter in half a cycle. Printed: ζ 0.4037, ω 3.4338 rad/s, k 2358.2652 N/m, critical damping
 * 1373.54 N·s/m, c 554.4981 N·s/m. Read in a copy of the solution on a public page.
 */
const printed = { ratio: 0.4037, angularFrequency: 3.4338, k: 2358.2652, critical: 1373.54, c: 554.4981 };
const corner = { sprungMass: 200, motionRatio: 1, springRate: printed.k };

describe('setting against a textbook', () => {
  it('has the printed natural frequency, critical damping and damping ratio', () => {
    const { naturalFrequency, criticalDamping } = cornerMotion(corner);
    // Printed cut short, not rounded: 3.43385.
    expect(Math.abs(2 * Math.PI * naturalFrequency - printed.angularFrequency)).toBeLessThan(1e-4);
    expect(criticalDamping).toBeCloseTo(printed.critical, 1);
    expect(dampingRatio(corner, printed.c)).toBeCloseTo(printed.ratio, 4);
  });

  it('leaves a sixteenth of the swing after a whole cycle, and has the printed damped period', () => {
    // The printed ratio has four digits: 1e-4 of it moves the swing by 2.7e-4 of itself times 2π/(1 − ζ²)^(3/2).
    expect(Math.abs(swingLeft(printed.ratio) * 16 - 1)).toBeLessThan(1e-3);
    const damped = cornerMotion(corner).naturalFrequency * Math.sqrt(1 - printed.ratio ** 2);
    expect(Math.abs(damped * 2 - 1)).toBeLessThan(1e-4);
  });
});
