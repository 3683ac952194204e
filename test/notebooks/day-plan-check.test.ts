import { expect, test } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { singleBottleCheck } from '../../notebooks/day-plan/checks.js';
import { shockWith, silicone } from '../decisions/demo.js';

const damper = shockWith(4, 1.2e-3);
const oil = createOil(silicone(350));
const warm = 303.15;
const weights = [
  { speed: 0.1, weight: 3 },
  { speed: 0.6, weight: 1 },
];
/** A plan whose wanted forces are so many times smaller than those of the only bottle, at each speed. */
const checkOf = (factors: readonly number[], worthwhile: number, mismatch: number) => {
  const model = damperModel(damper, fluidAt(oil, warm));
  const forces = weights.map(({ speed }, place) => Math.abs(oilForce(model, speed)) / (factors[place] ?? 1));
  const block = singleBottleCheck({
    build: { name: 'front' },
    plan: {
      steps: [
        { temperature: 283.15, mismatch: 0.9 },
        { temperature: warm, mismatch },
      ],
    },
    problem: { wanted: { weights, forces }, bottles: [{ oil }], damper, worthwhile },
  } as never);
  if (block.kind !== 'check') throw new Error('no check');
  return { passed: block.passed, against: Number(/against ([\d.]+)/u.exec(block.detail)?.[1]) };
};

test('the best bottle is off by the mean square of the logarithms, by weight, at the hottest time', () => {
  // The same factor at all speeds is that factor; 1.2 at three quarters of the weight is exp(√¾ ln 1.2) − 1 = 17.1 %.
  expect(checkOf([1.2, 1.2], 0.05, 0.1)).toEqual({ passed: true, against: 20 });
  expect(checkOf([1.2, 1], 0.05, 0.1).against).toBeCloseTo(17.1, 0);
  expect(checkOf([1.2, 1.2], 0.05, 0.25).passed).toBe(false);
});

test('what a rebuild is worth is allowed in any case', () => {
  expect(checkOf([1.2, 1.2], 0.3, 0.29)).toEqual({ passed: true, against: 30 });
  expect(checkOf([1.2, 1.2], 0.3, 0.31).passed).toBe(false);
});
