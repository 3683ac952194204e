import { describe, expect, test } from 'vitest';
import type { DamperModel } from '../../lib/damper/damper-model.js';
import { handChecks, slowDampingByHand } from '../../notebooks/base/by-hand.js';

const shaped = (shape?: object, more: object = {}) =>
  ({
    damper: {
      bore: 0.012,
      piston: {
        diameter: 0.01195,
        thickness: 0.0025,
        eccentricity: 0.5,
        holes: [{ count: 2, diameter: 0.0017, ...(shape && { shape }) }],
        ...more,
      },
    },
    fluid: { kinematicViscosity: 350e-6, density: 970 },
    dampingArea: 1e-4,
  }) as unknown as DamperModel;

describe('slow damping by hand', () => {
  // Worked out in Python from the formulas of White, Fluid Mechanics (tube, Sampson's ends, eccentric gap, wall moved along it): 28.988 N·s/m of pressure and 1.475 N·s/m of drag on the rim.
  test('is pressure past holes and rim, and drag on the rim', () => {
    expect(slowDampingByHand(shaped())).toBeCloseTo(30.4625, 3);
    expect(slowDampingByHand(shaped({ kind: 'straight' }))).toBeCloseTo(30.4625, 3);
  });

  const edge = { kind: 'chamfered', width: 2e-4, angle: Math.PI / 4 } as const;
  test.each([
    ['an edge on the side of the shaft', shaped({ kind: 'straight', shaftEdge: edge })],
    ['an edge on the blind side', shaped({ kind: 'straight', blindEdge: edge })],
    ['a taper', shaped({ kind: 'conical', blindSideDiameter: 0.0017, shaftSideDiameter: 0.0015 })],
    ['no hole', shaped(undefined, { holes: [] })],
    ['a valve', shaped(undefined, { valves: [{}] })],
  ])('knows no formula for %s', (_, model) => {
    expect(slowDampingByHand(model)).toBeUndefined();
    expect(handChecks([{ name: 'one', model }])).toEqual([]);
  });
});
