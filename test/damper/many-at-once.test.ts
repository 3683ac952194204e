import { describe, expect, test } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperForces } from '../../lib/damper/damper-forces.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { forcesAlongTravel } from '../../lib/damper/force-after-travel.js';
import { packSpeed } from '../../lib/damper/pack-speed.js';
import { speedsAtForce } from '../../lib/damper/speeds-at-force.js';
import { isStraight, straightSizes } from '../../lib/damper/straight-build.js';
import { damper, oil } from './pocket-damper.js';

const { piston } = damper;
const straight = damperModel(damper, oil);
const thinning = { kind: 'carreau-yasuda', time: 1e-3, exponent: 0.5, bend: 2, floor: 0.1 } as const;
const unlike = {
  ...damper,
  piston: {
    ...piston,
    holes: [
      { count: 2, diameter: 1.3e-3 },
      { count: 2, diameter: 0.9e-3 },
    ],
  },
};
const speeds = Float64Array.of(-1, -0.01, 0, 0.02, 0.6);

describe('forces at many speeds at once', () => {
  test.each([
    ['straight holes', straight],
    ['holes of two sizes', damperModel(unlike, oil)],
    ['an oil that thins', damperModel(damper, { ...oil, shearThinning: thinning })],
  ])('are those of one speed after another: %s', (_, model) => {
    const forces = damperForces(model, speeds, 0.01);
    speeds.forEach((speed, place) => {
      const { force } = damperForce(model, { speed, position: 0.01 });
      expect(forces[place] ?? 0).toBeCloseTo(force, 9);
    });
  });

  test('are written into the array that is given', () => {
    const into = new Float64Array(5);
    expect(damperForces(straight, speeds, 0.01, into)).toBe(into);
    expect(into).toEqual(damperForces(straight, speeds, 0.01));
  });

  test('an array of another length, a speed that is none and a place outside are refused', () => {
    const refused = (call: () => unknown, words: string) => {
      expect(call).toThrow(InputError);
      expect(call).toThrow(words);
    };
    refused(() => damperForces(straight, speeds, 0.01, new Float64Array(4)), 'into.length must be 5, got 4');
    refused(() => damperForces(straight, speeds, 0.01, {} as never), 'into must be a list');
    refused(
      () => damperForces(straight, Float64Array.of(1, Number.NaN), 0.01),
      'speeds[1] must be a finite number',
    );
    refused(() => damperForces(straight, speeds, 0.03), 'position must be 0 to 0.028 m');
  });
});

test('a short way round is taken for one size of straight holes, no valve and an oil that does not thin', () => {
  expect(isStraight(straight)).toBe(true);
  expect(isStraight(damperModel({ ...damper, piston: { ...piston, valves: [] } }, oil))).toBe(true);
  expect(isStraight(damperModel(unlike, oil))).toBe(false);
  expect(isStraight(damperModel(damper, { ...oil, shearThinning: thinning }))).toBe(false);
  expect(isStraight(damperModel({ ...damper, gas: { ...damper.gas, layout: 'emulsion' } }, oil))).toBe(false);
  const without = { ...straight, damper: { ...damper, piston: { ...piston, holes: [] } } };
  expect(() => straightSizes(without)).toThrow('a piston with one size of hole is needed');
});

test('a curve of thinning that was measured warns of no thinning', () => {
  // So stiff an oil that its own relaxation time would have warned at this rate.
  const thick = { kinematicViscosity: 0.05, density: 970, relaxationTime: 1e-3 };
  const codes = (fluid: Parameters<typeof damperModel>[1]) =>
    damperForce(damperModel(damper, fluid), { speed: -2, position: 0 }).warnings.map(({ code }) => code);
  expect(codes(thick).filter((code) => code.startsWith('shear-thinning'))).toHaveLength(1);
  expect(codes({ ...thick, shearThinning: thinning }).filter((code) => code.startsWith('shear'))).toEqual([]);
});

test('straight holes pack at one speed both ways, tapered ones later where they widen along the flow', () => {
  expect(packSpeed(straight, 'rebound')).toBeCloseTo(packSpeed(straight) ?? 0, 9);
  const tapered = damperModel(
    {
      ...damper,
      piston: {
        ...piston,
        holes: [{ count: 4, diameter: 1.3e-3, shape: { kind: 'conical', shaftSideDiameter: 1.8e-3 } }],
      },
    },
    oil,
  );
  // Pushed in, oil enters at the narrow end, so that the hole is a diffuser and wins back some of its jet; let out, the whole jet is lost (any handbook of losses).
  expect(packSpeed(tapered, 'compression') ?? 0).toBeGreaterThan(1.05 * (packSpeed(tapered, 'rebound') ?? 0));
});

test('no way to follow gives no force', () => {
  expect(forcesAlongTravel(straight, { speed: -0.5, position: 0.02 }, [])).toEqual([]);
});

test('the force that the shock has at rest belongs to the speed 0', () => {
  const { force } = damperForce(straight, { speed: 0, position: 0.01 });
  const found = speedsAtForce(straight, { force, position: 0.01, fastest: 1 });
  expect(found.map(({ speed }) => speed)).toEqual([0]);
});
