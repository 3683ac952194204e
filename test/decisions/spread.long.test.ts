import { describe, expect, it } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import { finish } from '../../lib/decisions/search/search.js';
import { forceSpread, toleranceShares } from '../../lib/decisions/spread/force-spread.js';
import type { TolerancedBuild } from '../../lib/decisions/spread/toleranced-build.js';
import { toleranceModel } from '../../lib/decisions/spread/tolerances.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { shockWith } from './demo.js';
import { build, uniform } from './toleranced.js';

describe('spread of the force', () => {
  it('has no spread without tolerances: the force of the damper itself', () => {
    const [spread] = finish(
      forceSpread({ ...build, tolerances: {} }, { count: 8, seed: 1, sampling: 'random' }),
    );
    const whole = damperForce(damperModel(build.damper, fluidAt(build.oil, 298.15)), {
      speed: -0.05,
      position: 0.0125,
    });
    expect(spread?.mean).toBeCloseTo(whole.dampingForce + whole.gasForce, 12);
    expect(spread?.high).toBe(spread?.low);
  });

  it('with one size at the end of its tolerance has the force of a damper drawn so by hand', () => {
    const plain = shockWith(4, 1.2e-3);
    const piston = (changes: Partial<typeof plain.piston>) => ({
      ...plain,
      piston: { ...plain.piston, ...changes },
    });
    const hole = (diameter: number) => piston({ holes: [{ count: 4, diameter }] });
    const off = 0.02e-3;
    const drawn = {
      holeDiameter: hole(1.22e-3),
      holeTaper: piston({
        holes: [{ count: 4, diameter: 1.19e-3, shape: { kind: 'conical', shaftSideDiameter: 1.21e-3 } }],
      }),
      thickness: piston({ thickness: 2.52e-3 }),
      bore: { ...piston({ diameter: 11.92e-3 }), bore: 12.02e-3 },
      gap: piston({ diameter: 11.86e-3 }),
    };
    const fluidState = fluidAt(build.oil, 298.15);
    for (const [name, damper] of Object.entries(drawn)) {
      const model = toleranceModel({ ...build, tolerances: { [name]: uniform(off) } });
      const forces = new Float64Array(2);
      model.evaluate(Float64Array.of(1), forces);
      for (const [place, speed] of build.speeds.entries()) {
        const { dampingForce, gasForce } = damperForce(damperModel(damper, fluidState), {
          speed,
          position: 0.0125,
        });
        expect((forces[place] ?? 0) / (dampingForce + gasForce)).toBeCloseTo(1, 12);
      }
    }
  });

  it('creeping and viscous, a label off by 5 % makes the force off by 5 %: h/√3 as standard deviation', () => {
    const slow = { ...build, speeds: [-1e-6], tolerances: { viscosity: uniform(0.05) } };
    const gasOff = finish(
      forceSpread({ ...slow, tolerances: {} }, { count: 1, seed: 1, sampling: 'random' }),
    )[0];
    const damping = oilForce(damperModel(build.damper, fluidAt(build.oil, 298.15)), -1e-6);
    const [spread] = finish(forceSpread(slow, { count: 4096, seed: 1, sampling: 'low-discrepancy' }));
    expect((spread?.standardDeviation ?? 0) / Math.abs(damping)).toBeCloseTo(0.05 / Math.sqrt(3), 5);
    expect((spread?.mean ?? 0) - (gasOff?.mean ?? 0)).toBeLessThan(Math.abs(damping) * 1e-4);
    // Below the 5 % quantile of a uniform distribution lie 5 % of its width.
    const low = ((gasOff?.mean ?? 0) - (spread?.low ?? 0)) / Math.abs(damping);
    expect(low).toBeCloseTo(0.05 * 0.9, 4);
  });

  it('the shares agree with the variance of each tolerance alone, where the force is all but linear', () => {
    const variance = (tolerances: TolerancedBuild['tolerances']): number => {
      const drawing = { count: 2048, seed: 2, sampling: 'low-discrepancy' } as const;
      return (finish(forceSpread({ ...build, tolerances }, drawing))[1]?.standardDeviation ?? 0) ** 2;
    };
    const whole = variance(build.tolerances);
    for (const share of finish(toleranceShares(build, 1024, 3))[1] ?? []) {
      const alone = variance({ [share.name]: build.tolerances[share.name] }) / whole;
      // Shares are parts of 1; interactions of sizes that are off by a few per cent leave less than this.
      expect(Math.abs(share.first - alone)).toBeLessThan(0.02);
      expect(share.total).toBeGreaterThan(share.first - 0.01);
    }
  });

  it('shares add up to 1 and the drill leads', () => {
    for (const shares of finish(toleranceShares(build, 2048, 1))) {
      const sum = shares.reduce((total, { first }) => total + first, 0);
      expect(Math.abs(sum - 1)).toBeLessThan(0.02);
      expect([...shares].sort((a, b) => b.first - a.first)[0]?.name).toBe('holeDiameter');
    }
  });

  it('refuses a tolerance that is negative or takes all of a size, and no speed', () => {
    const drawing = { count: 64, seed: 1, sampling: 'random' } as const;
    const bad = (changes: Partial<TolerancedBuild>) => () =>
      finish(forceSpread({ ...build, ...changes }, drawing));
    expect(bad({ tolerances: { bore: uniform(-1) } })).toThrow(
      'tolerances.bore.halfWidth must be 0 or more m',
    );
    expect(bad({ tolerances: { holeDiameter: uniform(2e-3) } })).toThrow('diameter must be');
    expect(bad({ speeds: [] })).toThrow('speeds must be 1 or more');
    expect(bad({ speeds: [0] })).toThrow('size of speeds[0] must be greater than 0');
    expect(bad({ position: 1 })).toThrow('position must be 0 to 0.025 m');
    expect(toleranceModel(build).inputs).toBe(8);
  });
});
