import { describe, expect, test } from 'vitest';
import { annularGapConductance } from '../../lib/flow/gap/annular-gap.js';

/**
 * Exact laminar flow of an eccentric annulus, for a pressure gradient and a viscosity of 1.
 *
 * Piercy, Hooper & Winny, Phil. Mag. (7) 15 (1933) 647, as in White, Viscous Fluid Flow, sec. 3-3.3 (from memory).
 */
function exactFlow(outer: number, inner: number, offset: number): number {
  const f = (outer ** 2 - inner ** 2 + offset ** 2) / (2 * offset);
  const m = Math.sqrt(f ** 2 - outer ** 2);
  // ½ ln((F + M)/(F − M)) of the source, without the difference of near numbers.
  const alpha = Math.log((f + m) / outer);
  const beta = Math.log((f - offset + m) / inner);
  let sum = 0;
  for (let n = 1; n < 5000; n++) {
    const term = (n * Math.exp(-n * (beta + alpha))) / Math.sinh(n * (beta - alpha));
    sum += term;
    if (term < 1e-16 * sum) break;
  }
  const whole =
    outer ** 4 - inner ** 4 - (4 * offset ** 2 * m ** 2) / (beta - alpha) - 8 * offset ** 2 * m ** 2 * sum;
  return (Math.PI / 8) * whole;
}

describe('eccentric annulus: Piercy, Hooper & Winny 1933', () => {
  test('tends to the concentric annulus of Bird, Stewart & Lightfoot as the offset vanishes', () => {
    const k = 0.8;
    const concentric = (Math.PI / 8) * (1 - k ** 4 - (1 - k ** 2) ** 2 / Math.log(1 / k));
    expect(Math.abs(exactFlow(1, k, 1e-4) / concentric - 1)).toBeLessThan(1e-5);
  });

  // The law of the thin gap, π D h³ (1 + 1.5 ε²)/12, with D half way across; what it leaves out is of order h/R times ε².
  test.each([
    [0.2, 0.01],
    [0.2, 0.05],
    [0.5, 0.01],
    [0.5, 0.05],
    [0.9, 0.01],
    [0.9, 0.05],
    [0.99, 0.002],
    [0.99, 0.01],
  ])(
    'off the axis by %d of a gap of %d of the radius: the thin law within 0.6 h/R',
    (eccentricity, height) => {
      const bore = 0.012;
      const radius = bore / 2;
      const gap = { bore, pistonDiameter: bore * (1 - height), length: 1, eccentricity };
      const fluid = { density: 1000, kinematicViscosity: 1e-3 };
      const exact = exactFlow(radius, radius * (1 - height), eccentricity * radius * height);
      expect(Math.abs(annularGapConductance(gap, fluid) / exact - 1)).toBeLessThan(0.6 * height);
    },
  );

  test('touching, two and a half times as much passes as on the axis', () => {
    const exact = exactFlow(1, 0.995, 0.005 * 0.9999) / exactFlow(1, 0.995, 1e-6);
    expect(Math.abs(exact / 2.5 - 1)).toBeLessThan(0.005);
  });
});
