import { expect, test } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { onsetOut } from '../../notebooks/fill-and-bleed/habits.js';
import { oil, withGas } from '../damper/pocket-damper.js';

test.each([
  ['blind-side', 1],
  ['shaft-side', -1],
] as const)(
  'gas on the %s: a shock fully out cavitates from a speed on, told by its size with its damping',
  (layout, sign) => {
    const model = damperModel(withGas({ layout }), oil);
    const onset = onsetOut(model);
    expect(Object.keys(onset ?? {})).toEqual(['speed', 'damping']);
    const { speed = 0, damping = 0 } = onset ?? {};
    const at = (part: number) => damperForce(model, { speed: sign * part * speed, position: 0 });
    expect([at(0.999).cavitating, at(1.001).cavitating]).toEqual([false, true]);
    expect(damping / Math.abs(at(0.9999).dampingForce)).toBeCloseTo(1, 3);
  },
);

test('none where gas is mixed into the oil, where there is none, or where it has no pressure', () => {
  const model = damperModel(withGas({}), oil);
  expect(onsetOut(damperModel(withGas({ layout: 'emulsion' }), oil))).toBeUndefined();
  expect(onsetOut({ ...model, gas: { ...model.gas, capacity: 0 } })).toBeUndefined();
  expect(onsetOut(model)).toBeDefined();
});
