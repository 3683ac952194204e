import { expect, test } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { dampingMismatch } from '../../lib/decisions/match/damping-mismatch.js';
import { orderPlanByTrying } from '../../lib/decisions/order/order-plan-by-trying.js';
import { finish } from '../../lib/decisions/search/search.js';
import { blendViscosity } from '../../lib/fluid/blend/blend.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { problem } from './order-case.js';

const question = problem({});
const plan = finish(orderPlanByTrying(question));
if (!plan.possible) throw new Error('no plan');

test('a blend is as far off as by the worse of its two furthest blending rules', () => {
  const blends = plan.fills.filter(({ choice }) => choice.second !== undefined);
  const ends = blends.map(({ build: name, temperature, choice, mismatch }) => {
    const build = question.builds.find((one) => one.name === name);
    const [first, second] = [choice.first, choice.second ?? 0].map((place) => question.bottles[place]?.oil);
    if (build === undefined || first === undefined || second === undefined) throw new Error('no fill');
    const rules = Object.values(
      blendViscosity({ pair: { first, second }, temperature }, choice.secondShare).rules,
    );
    const { density } = fluidAt(first, temperature);
    const [low = 0, high = 0] = [Math.min(...rules), Math.max(...rules)].map(
      (kinematicViscosity) =>
        dampingMismatch(damperModel(build.damper, { kinematicViscosity, density }), build.wanted).typical,
    );
    expect(mismatch).toBeCloseTo(Math.max(low, high), 9);
    return high > low;
  });
  // Both ends are the worse one somewhere, or this would not tell them apart.
  expect(new Set(ends).size).toBe(2);
});

test('further bottles stand in the order of what they are worth: fewest blends first, then nearest', () => {
  const worth = plan.further.map(({ aloneShare, meanMismatch }) => [-aloneShare, meanMismatch] as const);
  expect(worth).toEqual(worth.toSorted(([a, b], [c, d]) => a - c || b - d));
  expect(new Set(worth.map(([share]) => share)).size).toBeGreaterThan(1);
});
