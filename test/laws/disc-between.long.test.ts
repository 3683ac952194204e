import { describe, expect, test } from 'vitest';
import type { Damper } from '../../lib/damper/damper.js';
import { forceDraws } from '../../lib/decisions/spread/force-spread.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import { bindPistonFlow, pistonFlow } from '../../lib/flow/piston/piston-flow.js';
import { discsBetween } from '../../lib/flow/valve/disc-between.js';
import { createOil, type DiscValve, type Piston, sealedGas } from '../../lib/index.js';

const bore = 0.012;
const fluid = { density: 970, kinematicViscosity: 3e-4 };
const valve: DiscValve = {
  face: 'shaft-side',
  covers: [1],
  outerDiameter: 0.0105,
  clampDiameter: 0.005,
  thickness: 1e-4,
  count: 1,
  elasticModulus: 2e11,
  poissonRatio: 0.3,
  preload: 5e-6,
};
const piston = (diameter: number): Piston => ({
  diameter: 0.01195,
  thickness: 0.0025,
  holes: [
    { count: 2, diameter: 1.2e-3 },
    { count: 3, diameter, pitchDiameter: 0.0078 },
  ],
  eccentricity: 0,
  valves: [valve],
});

describe('discs over holes that are nearly alike, tabled at steps of 3 % of the hole', () => {
  const bind = discsBetween(0.03 * 1.5e-3);
  const overOpening = [0.9, 1.02, 1.2, 2, 5, 20];

  test.each([1.46e-3, 1.483e-3, 1.5e-3, 1.511e-3])(
    'holes of %d m: the flow is within 0.1 % of that with a table of its own',
    (diameter) => {
      const own = pistonFlow(piston(diameter), bore, fluid);
      const between = bindPistonFlow(piston(diameter), bore, fluid, sharpHoleLaw, bind);
      const [opening = 0] = own.valves.map(({ openingPressure }) => openingPressure);
      const [openingBetween = 0] = between.valves.map(({ openingPressure }) => openingPressure);
      expect(Math.abs(openingBetween / opening - 1)).toBeLessThan(1e-3);
      for (const part of overOpening)
        expect(Math.abs(between.flow(part * opening) / own.flow(part * opening) - 1)).toBeLessThan(1e-3);
    },
  );

  test('a wider hole lets more through, also between two tables', () => {
    const flows = Array.from({ length: 12 }, (_, index) =>
      bindPistonFlow(piston(1.46e-3 + index * 5e-6), bore, fluid, sharpHoleLaw, bind).flow(2e6),
    );
    flows.slice(1).forEach((flow, index) => {
      expect(flow).toBeGreaterThan(flows[index] ?? 0);
    });
  });

  test('beside a step as wide as the hole the disc has its own table', () => {
    const own = pistonFlow(piston(1.5e-3), bore, fluid).flow(2e6);
    expect(bindPistonFlow(piston(1.5e-3), bore, fluid, sharpHoleLaw, discsBetween(2e-3)).flow(2e6)).toBe(own);
  });

  test('a tolerance too small to be a step leaves all builds alike, and each force a number', () => {
    const damper: Damper = {
      bore,
      shaftDiameter: 0.003,
      stroke: 0.028,
      piston: piston(1.5e-3),
      gas: sealedGas({ volume: 1e-6 }),
      seal: { kineticForce: 0, breakawayForce: 0 },
    };
    const point = { temperature: 298.15, kinematicViscosity: 3e-4 };
    const build = {
      damper,
      oil: createOil({ base: 'silicone', viscosity: { kind: 'silicone', point } }),
      temperature: 293.15,
      position: 0.014,
      speeds: [0.3, -0.3],
    };
    const drawing = { count: 8, seed: 1, sampling: 'random' } as const;
    const draws = (halfWidth: number) =>
      forceDraws({ ...build, tolerances: { holeDiameter: { kind: 'uniform', halfWidth } } }, drawing);
    const [pushed = Number.NaN, pulled = Number.NaN] = draws(1e-315);
    expect(pushed).toBeGreaterThan(0);
    expect(pulled).toBeLessThan(0);
    for (const [index, force] of draws(1e-315).entries())
      expect(force / (index % 2 === 0 ? pushed : pulled)).toBeCloseTo(1, 9);
    expect((draws(1e-12)[0] ?? 0) / pushed).toBeCloseTo(1, 5);
  });
});
