import { describe, expect, it } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import { dampingMismatch, dampingOf, scaledDamping } from '../../lib/decisions/match/damping-mismatch.js';
import { matchViscosity, viscosityWindow } from '../../lib/decisions/match/match-viscosity.js';
import { speedRange } from '../../lib/decisions/match/speed-weights.js';
import { fluid, shockWith } from './demo.js';

const range = speedRange(0.05, 1);
const density = 970;

describe('match', () => {
  it('takes the damping force of the damper itself', () => {
    const model = damperModel(shockWith(4, 1.2e-3), fluid(350));
    for (const speed of [-1.3, -0.02, 0.1, 0.7])
      expect(oilForce(model, speed)).toBe(damperForce(model, { speed, position: 0.0125 }).dampingForce);
  });

  it('twice too hard at one of two speeds is off by the root mean square of the logarithms', () => {
    const model = damperModel(shockWith(4, 1.2e-3), fluid(350));
    const own = dampingOf(model, [
      { speed: -0.1, weight: 3 },
      { speed: 0.1, weight: 1 },
    ]);
    const [rebound = 0, compression = 0] = own.forces;
    const off = dampingMismatch(model, { weights: own.weights, forces: [rebound / 2, compression] });
    expect(off.ratios).toEqual([2, 1]);
    // Worked by hand: √(3/4) ln 2 and 3/4 ln 2.
    expect(off.typical).toBeCloseTo(Math.exp(Math.sqrt(0.75) * Math.LN2) - 1, 12);
    expect(off.meanRatio).toBeCloseTo(2 ** 0.75, 12);
  });

  it('finds the very viscosity of the reference again', () => {
    const damper = shockWith(4, 1.2e-3);
    const wanted = dampingOf(damperModel(damper, fluid(350)), range);
    const match = matchViscosity({ damper, density, wanted });
    expect(Math.abs(match.kinematicViscosity / 350e-6 - 1)).toBeLessThan(1e-6);
    expect(match.mismatch.typical).toBeLessThan(1e-6);
    expect(match.atLimit).toBe(false);
  });

  it('in the creeping limit needs a viscosity in the ratio of the hole conductances', () => {
    // Hagen-Poiseuille with Sampson ends: flow of a hole is Δp d⁴/(128 μ/π) / (L + 3πd/16); with L = 2.5 mm, no gap worth counting.
    const conductance = (n: number, d: number): number => (n * d ** 4) / (2.5e-3 + (3 * Math.PI * d) / 16);
    const [from, to] = [shockWith(4, 1.2e-3), shockWith(3, 1.4e-3)].map((damper) => ({
      ...damper,
      piston: { ...damper.piston, diameter: 11.96e-3 },
    }));
    if (from === undefined || to === undefined) throw new Error('two dampers');
    const slow = speedRange(1e-7, 1e-6);
    const wanted = dampingOf(damperModel(from, fluid(350)), slow);
    const match = matchViscosity({ damper: to, density, wanted });
    const expected = 350e-6 * (conductance(3, 1.4e-3) / conductance(4, 1.2e-3));
    // What is left is the drag of the rim, π D L μ/h, 3 % of the force of the holes at a gap of 20 µm and the same for both.
    expect(Math.abs(match.kinematicViscosity / expected - 1)).toBeLessThan(0.03);
  });

  it('a bigger hole leaves a mismatch that no oil mends: too soft slow or too hard fast', () => {
    const wanted = dampingOf(damperModel(shockWith(4, 1.2e-3), fluid(350)), range);
    const match = matchViscosity({ damper: shockWith(2, 1.2e-3), density, wanted });
    const { ratios } = match.mismatch;
    expect(match.kinematicViscosity).toBeLessThan(350e-6 / 2);
    // In rebound, where the oil cannot tear: fast first, slow last.
    expect(ratios[0]).toBeGreaterThan(1);
    expect(ratios[4]).toBeLessThan(1);
    expect(match.mismatch.typical).toBeGreaterThan(0.02);
  });

  it('the ends of the window miss by exactly the tolerance', () => {
    const damper = shockWith(4, 1.2e-3);
    const wanted = dampingOf(damperModel(damper, fluid(350)), range);
    const window = viscosityWindow({ damper, density, wanted }, 0.1);
    for (const end of [window?.low, window?.high]) {
      const model = damperModel(damper, { kinematicViscosity: end ?? 0, density });
      expect(dampingMismatch(model, wanted).typical).toBeCloseTo(0.1, 9);
    }
    expect(window?.low).toBeLessThan(350e-6);
    expect(window?.high).toBeGreaterThan(350e-6);
    const other = matchViscosity({ damper: shockWith(2, 1.2e-3), density, wanted });
    expect(
      viscosityWindow({ damper: shockWith(2, 1.2e-3), density, wanted }, other.mismatch.typical / 2),
    ).toBe(undefined);
  });

  it('says so where even water would damp too much', () => {
    const damper = shockWith(1, 0.6e-3);
    const wanted = scaledDamping(dampingOf(damperModel(damper, fluid(1)), range), 0.01);
    expect(matchViscosity({ damper, density, wanted }).atLimit).toBe(true);
  });

  it('refuses what cannot be compared', () => {
    const damper = shockWith(4, 1.2e-3);
    const wanted = { weights: [{ speed: 0.1, weight: 1 }], forces: [-2] };
    expect(() => matchViscosity({ damper, density, wanted })).toThrow(
      'forces[0] must be a force with the sign of its speed',
    );
    expect(() => dampingOf(damperModel(damper, fluid(350)), [{ speed: 0, weight: 1 }])).toThrow(
      'must be either way and at least 1e-30 m/s',
    );
    expect(() => dampingOf(damperModel(damper, fluid(350)), [])).toThrow(
      'sum of the weights must be greater than 0',
    );
    // Holes of four fifths of the bore, far beyond any law: at 3 m/s nothing is left of their damping.
    const open = shockWith(22, 1.53e-3);
    const sieve = { ...open, bore: 0.008, piston: { ...open.piston, diameter: 0.0077, thickness: 0.001 } };
    const fast = { weights: [{ speed: 3, weight: 1 }], forces: [2] };
    expect(() => dampingMismatch(damperModel(sieve, fluid(5)), fast)).toThrow(
      'damping force of the model must be against the motion at 3 m/s',
    );
    expect(() => speedRange(0.2, 0.1)).toThrow('fastest must be 0.2 or more m/s, got 0.1 m/s');
  });
});
