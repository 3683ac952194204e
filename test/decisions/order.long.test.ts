import { describe, expect, it } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { type Bottle, fillName, fillState } from '../../lib/decisions/day/fill-choice.js';
import { dampingMismatch } from '../../lib/decisions/match/damping-mismatch.js';
import type { OrderPlan } from '../../lib/decisions/order/order-plan.js';
import { orderPlan } from '../../lib/decisions/order/order-plan-by-program.js';
import { orderPlanByTrying } from '../../lib/decisions/order/order-plan-by-trying.js';
import type { OrderProblem } from '../../lib/decisions/order/order-problem.js';
import { finish, finishInSlices } from '../../lib/decisions/search/search.js';
import { blendViscosity } from '../../lib/fluid/blend/blend.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { bottles, problem } from './order-case.js';

/** Whether a set of bottles serves everything, worked out fill by fill without the windows and masks of the plan. */
function serves(question: OrderProblem, set: readonly number[]): boolean {
  const { builds, temperatures, parts, tolerance } = question;
  const good = (
    viscosities: readonly number[],
    density: number,
    build: OrderProblem['builds'][number],
  ): boolean =>
    viscosities.every(
      (kinematicViscosity) =>
        dampingMismatch(damperModel(build.damper, { kinematicViscosity, density }), build.wanted).typical <=
        tolerance,
    );
  return builds.every((build) =>
    temperatures.every((temperature) =>
      set.some((a) =>
        set.some((b) => {
          const [first, second] = [question.bottles[a]?.oil, question.bottles[b]?.oil];
          if (first === undefined || second === undefined) return false;
          const state = fluidAt(first, temperature);
          if (a === b) return good([state.kinematicViscosity], state.density, build);
          return Array.from({ length: parts - 1 }, (_, part) => (part + 1) / parts).some((share) => {
            const rules = Object.values(
              blendViscosity({ pair: { first, second }, temperature }, share).rules,
            );
            return good([Math.min(...rules), Math.max(...rules)], state.density, build);
          });
        }),
      ),
    ),
  );
}

function cheapestByForce(
  question: OrderProblem,
): { readonly size: number; readonly price: number } | undefined {
  const count = question.bottles.length;
  let best: { size: number; price: number } | undefined;
  for (let mask = 1; mask < 2 ** count; mask++) {
    const set = question.bottles.flatMap((_, bottle) => ((mask >> bottle) & 1 ? [bottle] : []));
    const price = set.reduce((sum, bottle) => sum + (question.bottles[bottle]?.price ?? 0), 0);
    const better =
      best === undefined || set.length < best.size || (set.length === best.size && price < best.price);
    if (better && serves(question, set)) best = { size: set.length, price };
  }
  return best;
}

function possible(plan: OrderPlan): OrderPlan & { readonly possible: true } {
  if (!plan.possible) throw new Error('no plan');
  return plan;
}

describe('order plan', () => {
  const questions = {
    blends: problem({}),
    'no blends': problem({ parts: 1, tolerance: 0.2 }),
    'finer blends': problem({ parts: 10, tolerance: 0.07 }),
    'wide tolerance': problem({ tolerance: 0.6 }),
    'no prices': problem({
      bottles: problem({}).bottles.map(({ name, oil, volume }) => ({ name, oil, volume })),
    }),
  };
  for (const [name, question] of Object.entries(questions)) {
    it(`is as small and as cheap as brute force, with both solvers: ${name}`, async () => {
      const force = cheapestByForce(question);
      for (const plan of [finish(orderPlanByTrying(question)), await orderPlan(question)]) {
        const { lines, fills } = possible(plan);
        expect(lines.length).toBe(force?.size);
        const price = lines.reduce((sum, { bottle }) => sum + (question.bottles[bottle]?.price ?? 0), 0);
        expect(price).toBe(force?.price);
        expect(
          serves(
            question,
            lines.map(({ bottle }) => bottle),
          ),
        ).toBe(true);
        expect(fills.length).toBe(8);
        expect(Math.max(...fills.map(({ mismatch }) => mismatch))).toBeLessThanOrEqual(
          question.tolerance + 1e-9,
        );
      }
    });
  }

  it('counts the oil: every fill is made of bottles that were bought, and nothing is lost', () => {
    const question = problem({ fills: 40 });
    const { lines, price } = possible(finish(orderPlanByTrying(question)));
    const used = lines.reduce((sum, line) => sum + line.used, 0);
    expect(used).toBeCloseTo(40 * 15e-6, 12);
    for (const { used: volume, count } of lines) expect(count).toBe(Math.ceil(volume / 60e-6));
    expect(price).toBe(
      lines.reduce((sum, { bottle, count }) => sum + count * (question.bottles[bottle]?.price ?? 0), 0),
    );
  });

  it('a further bottle never makes the plan need more blends', () => {
    const { further, aloneShare } = possible(finish(orderPlanByTrying(problem({}))));
    expect(further.length).toBeGreaterThan(3);
    for (const one of further) expect(one.aloneShare).toBeGreaterThanOrEqual(aloneShare);
  });

  it('serves what it can and says what nothing serves', async () => {
    // By viscosity alone: 350 and 250 mm²/s at 25 °C are wanted; 200 does for the thinner one in the cold.
    const question = problem({ bottles: bottles([150, 6], [200, 7]), temperatures: [308.15, 278.15] });
    for (const plan of [finish(orderPlanByTrying(question)), await orderPlan(question)]) {
      const { fills, unserved } = possible(plan);
      expect(unserved).toContainEqual({ build: 'front', temperature: 308.15 });
      expect(fills.map(({ build, temperature }) => ({ build, temperature }))).toContainEqual({
        build: 'rear',
        temperature: 278.15,
      });
      expect(fills.length + unserved.length).toBe(4);
    }
    const none = problem({ bottles: bottles([20, 6]) });
    for (const plan of [finish(orderPlanByTrying(none)), await orderPlan(none)]) {
      expect(plan.possible).toBe(false);
      expect(plan.unserved).toHaveLength(8);
    }
  });

  it('buys nothing that is at hand, and no more than is missing beside it', async () => {
    const plain = possible(finish(orderPlanByTrying(problem({}))));
    const all = plain.lines.map(({ bottle }) => bottle);
    for (const owned of [all, all.slice(0, 1)]) {
      const question = problem({ owned });
      const [trying, program] = [finish(orderPlanByTrying(question)), await orderPlan(question)].map(
        possible,
      );
      const bought = trying?.lines.filter(({ count }) => count > 0) ?? [];
      expect(bought.length).toBeLessThanOrEqual(all.length - owned.length);
      expect(bought.some(({ bottle }) => owned.includes(bottle))).toBe(false);
      expect(program?.lines.filter(({ count }) => count > 0)).toHaveLength(bought.length);
    }
    expect(() => finish(orderPlanByTrying(problem({ owned: [99] })))).toThrow('owned[0] must be 0 to 6');
  });

  it('never mixes silicone with petroleum oil', () => {
    const petroleum: Bottle = {
      name: 'mineral',
      oil: createOil({ base: 'petroleum', viscosity: { kind: 'iso-grade', grade: 32 } }),
      volume: 60e-6,
    };
    const question = problem({ bottles: [...problem({}).bottles, petroleum] });
    const { fills } = possible(finish(orderPlanByTrying(question)));
    expect(fills.some(({ choice }) => choice.second === 7 || choice.first === 7)).toBe(false);
  });

  it('stops when asked to, with progress before', async () => {
    const stop = new AbortController();
    const seen: number[] = [];
    const running = orderPlan(
      problem({ parts: 20, temperatures: Array.from({ length: 40 }, (_, i) => 270 + i) }),
      {
        signal: stop.signal,
        onProgress: (done) => {
          seen.push(done);
          stop.abort(new Error('enough'));
        },
      },
    );
    await expect(running).rejects.toThrow('enough');
    expect(seen.length).toBe(1);
    expect(seen[0]).toBeGreaterThan(0);
    expect(seen[0]).toBeLessThan(1);
  });

  it('takes a signal for no other thing, nor another thing for a search', async () => {
    const search = function* (): Generator<number, string, void> {
      yield 0.5;
      return 'end';
    };
    expect(await finishInSlices(search(), { signal: new AbortController().signal })).toBe('end');
    for (const signal of [3, 'stop', null, {}, new Map()])
      await expect(finishInSlices(search(), { signal } as never)).rejects.toThrow(/^control\.signal/u);
    for (const bad of [3, null, {}]) await expect(finishInSlices(bad as never)).rejects.toThrow(/^search/u);
  });

  it('names fills in the smallest whole parts', () => {
    const list = bottles([200, 1], [350, 1]);
    expect(fillName(list, { first: 0, second: 1, secondShare: 0.6 }, 10)).toBe('2 parts 200 + 3 parts 350');
    expect(fillName(list, { first: 0, second: 1, secondShare: 0.25 }, 4)).toBe('3 parts 200 + 1 part 350');
    expect(fillName(list, { first: 1, secondShare: 0 }, 10)).toBe('350');
    // Half and half at 25 °C by additive logarithms: √(200·350) = 264.6 mm²/s; densities are equal.
    expect(fillState(list, { first: 0, second: 1, secondShare: 0.5 }, 298.15).typical).toBeCloseTo(
      264.575e-6,
      9,
    );
  });

  it('a blend of two labels is spread by the blending rules alone, as each label by itself is not', () => {
    const labels = [25, 40].map((weight) => ({
      name: `${weight}wt`,
      oil: createOil({ base: 'silicone', viscosity: { kind: 'trade-weight', weight } }),
      volume: 60e-6,
    }));
    const at = (secondShare: number, second?: number) =>
      fillState(labels, { first: 0, secondShare, ...(second === undefined ? {} : { second }) }, 298.15);
    // Middles 270 and 500 mm²/s at 25 °C, labels 220 to 310 and 420 to 550 (common practice, no source).
    expect(at(0).low).toBeCloseTo(270e-6, 9);
    expect(at(0).high).toBeCloseTo(270e-6, 9);
    // By hand: √(270·500) = 367.4 by additive logarithms, ((∛270 + ∛500)/2)³ = 373.3 by cube roots; the labels alone would span √(220·420) = 304 to √(310·550) = 413.
    const { low, typical, high } = at(0.5, 1);
    expect(typical * 1e6).toBeCloseTo(367.42, 1);
    expect(high * 1e6).toBeGreaterThan(373.2);
    expect(low * 1e6).toBeGreaterThan(355);
    expect(high * 1e6).toBeLessThan(385);
  });

  it('refuses an empty shop list and a tolerance of 0', () => {
    expect(() => finish(orderPlanByTrying(problem({ bottles: [] })))).toThrow(
      'bottles must be 1 or more, got 0',
    );
    expect(() => finish(orderPlanByTrying(problem({ tolerance: 0 })))).toThrow(
      'tolerance must be greater than 0',
    );
    expect(() => finish(orderPlanByTrying(problem({ parts: 40 })))).toThrow('parts must be 1 to 20');
  });
});
