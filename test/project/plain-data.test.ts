import { describe, expect, test } from 'vitest';
import { damperForce, damperModel, fluidAt, forceVelocityCurve } from '../../lib/index.js';
import { benchStroke, movingShock } from '../../lib/motion/index.js';
import { forceTable, readParts, readShock } from '../../lib/parts/index.js';
import { smallFile } from '../parts/small-file.js';

const { damper, oil, closed } = readShock(smallFile);
const fluid = fluidAt(oil, 293.15);
const model = damperModel(damper, fluid);
const inMotion = { volume: 3e-6, farVolume: 4e-7, bulkModulus: 1e9 };
const stroke = { kind: 'sine', middle: 0.012, amplitude: 0.005, frequency: 2, cycles: 1 } as const;
const grid = { temperatures: [293.15], fastest: 0.3, speedsEachWay: 2, positions: 2 };

describe('what is said to go to a worker as it is', () => {
  test.each<[string, unknown]>([
    ['parts', readParts(smallFile)],
    ['damper', damper],
    ['oil', oil],
    ['fluid', fluid],
    ['fill', closed],
    ['table', forceTable(damper, oil, grid)],
    ['stroke', benchStroke(movingShock(model, inMotion), stroke)],
  ])('%s', (_, value) => {
    expect(structuredClone(value)).toEqual(value);
  });

  test('a force, which loses only the warnings that are worked out when read', () => {
    const force = damperForce(model, { speed: 5, position: 0.01 });
    expect(force.warnings.length).toBeGreaterThan(0);
    const clone = structuredClone({ ...force, warnings: force.warnings });
    expect(clone).toEqual({ ...force, warnings: force.warnings });
    expect(structuredClone(force).warnings).toBeUndefined();
    expect(structuredClone(force).force).toBe(force.force);
    expect(structuredClone(forceVelocityCurve(model, [-0.1, 0.1], 0.01))).toHaveLength(2);
  });
});

test('what is bound holds functions, and is refused by structuredClone rather than losing them', () => {
  expect(() => structuredClone(model)).toThrow();
  expect(() => structuredClone(model.pistonFlow)).toThrow();
  expect(() => structuredClone(movingShock(model, inMotion))).toThrow();
});
