import { describe, expect, it } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { betweenReadings, type DayProblem, dayPlan } from '../../lib/decisions/day/day-plan.js';
import { fillState } from '../../lib/decisions/day/fill-choice.js';
import { blendPlan } from '../../lib/decisions/match/blend-plan.js';
import { dampingMismatch, dampingOf } from '../../lib/decisions/match/damping-mismatch.js';
import { speedRange } from '../../lib/decisions/match/speed-weights.js';
import { finish } from '../../lib/decisions/search/search.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { shockWith, silicone } from './demo.js';

const damper = shockWith(4, 1.2e-3);
const bottles = [250, 350, 500].map((viscosity) => ({
  name: `${viscosity}`,
  oil: createOil(silicone(viscosity)),
  volume: 60e-6,
}));
const oil = createOil(silicone(350));
const wanted = dampingOf(damperModel(damper, fluidAt(oil, 293.15)), speedRange(0.05, 1, 3));
const hour = 3600;
const day = (...celsius: readonly number[]) =>
  celsius.map((degrees, index) => ({ time: (8 + index) * hour, temperature: 273.15 + degrees }));

function problem(changes: Partial<DayProblem>): DayProblem {
  return {
    damper,
    wanted,
    bottles,
    temperatures: day(12, 18, 24, 30, 34, 30, 22),
    worthwhile: 0.12,
    parts: 2,
    ...changes,
  };
}

/** Mismatch of every fill at every time, then every sequence of fills: the dynamic program must find none better. */
function bestByForce(question: DayProblem): { readonly excess: number; readonly rebuilds: number } {
  const choices = [0, 1, 2].map((first) => ({ first, secondShare: 0 }));
  const off = question.temperatures.map(({ temperature }) =>
    choices.map((choice) => {
      const { typical, density } = fillState(bottles, choice, temperature);
      return dampingMismatch(damperModel(damper, { kinematicViscosity: typical, density }), wanted).typical;
    }),
  );
  let best = { excess: Number.POSITIVE_INFINITY, rebuilds: 0 };
  for (let code = 0; code < 3 ** off.length; code++) {
    const sequence = off.map((_, index) => Math.floor(code / 3 ** index) % 3);
    const excess = off.reduce(
      (sum, row, index) => sum + Math.max(0, (row[sequence[index] ?? 0] ?? 0) - question.worthwhile),
      0,
    );
    const rebuilds = sequence.filter((choice, index) => index > 0 && choice !== sequence[index - 1]).length;
    const better = excess < best.excess - 1e-12 || (excess < best.excess + 1e-12 && rebuilds < best.rebuilds);
    if (better) best = { excess, rebuilds };
  }
  return best;
}

describe('day plan', () => {
  it('goes evenly from one reading to the next, in time and temperature', () => {
    const readings = [
      { time: 0, temperature: 280 },
      { time: 3600, temperature: 286 },
      { time: 3900, temperature: 285 },
    ];
    expect(betweenReadings(readings, 1200).map(({ time, temperature }) => [time, temperature])).toEqual([
      [0, 280],
      [1200, 282],
      [2400, 284],
      [3600, 286],
      [3900, 285],
    ]);
  });

  for (const worthwhile of [0.05, 0.12, 0.2, 0.5]) {
    it(`is as good as every sequence of bottles, at ${worthwhile}`, () => {
      const question = problem({ worthwhile, parts: 1 });
      const plan = finish(dayPlan(question));
      const force = bestByForce(question);
      const excess = plan.steps.reduce((sum, { mismatch }) => sum + Math.max(0, mismatch - worthwhile), 0);
      expect(excess).toBeCloseTo(force.excess, 10);
      expect(plan.rebuilds).toBe(force.rebuilds);
    });
  }

  it('takes a blend as the blending rule has it that is furthest off', () => {
    const far = [100, 1200].map((viscosity) => ({
      name: `${viscosity}`,
      oil: createOil(silicone(viscosity)),
      volume: 60e-6,
    }));
    const { steps } = finish(
      dayPlan(problem({ bottles: far, temperatures: day(20), worthwhile: 0.01, parts: 2 })),
    );
    const [step] = steps;
    if (step === undefined) throw new Error('a step');
    expect(step.choice.secondShare).toBe(0.5);
    const { low, high, density } = fillState(far, step.choice, 293.15);
    const off = [low, high].map(
      (kinematicViscosity) =>
        dampingMismatch(damperModel(damper, { kinematicViscosity, density }), wanted).typical,
    );
    expect(Math.abs((off[0] ?? 0) - (off[1] ?? 0))).toBeGreaterThan(0.01);
    expect(step.mismatch).toBeCloseTo(Math.max(...off), 9);
  });

  it('stays with one fill through a day of one temperature', () => {
    const plan = finish(dayPlan(problem({ temperatures: day(20, 20, 20) })));
    expect(plan.rebuilds).toBe(0);
    expect(plan.worthwhileFrom).toBe(undefined);
    expect(plan.steps.map(({ choice }) => choice.first)).toEqual([1, 1, 1]);
    expect(plan.steps[0]?.mismatch).toBeLessThan(1e-9);
  });

  it('goes softer as it gets warmer where nothing is changed, and says from when a rebuild is worth it', () => {
    const { steps, worthwhileFrom } = finish(dayPlan(problem({ worthwhile: 0.08 })));
    const ratios = steps.map(({ unchangedRatio }) => unchangedRatio);
    for (let index = 1; index < 5; index++) expect(ratios[index]).toBeLessThan(ratios[index - 1] ?? 0);
    const before = steps.findLast(({ time }) => time <= (worthwhileFrom ?? 0));
    const after = steps.find(({ time }) => time > (worthwhileFrom ?? 0));
    expect(before?.unchangedMismatch).toBeLessThanOrEqual(0.08);
    expect(after?.unchangedMismatch).toBeGreaterThan(0.08);
    // Straight between the two readings.
    const [low = 0, high = 0] = [before?.unchangedMismatch, after?.unchangedMismatch];
    const [from = 0, to = 0] = [before?.time, after?.time];
    expect(worthwhileFrom).toBeCloseTo(to - ((high - 0.08) / (high - low)) * (to - from), 6);
  });

  it('refuses times that do not rise and a day without temperatures', () => {
    expect(() => finish(dayPlan(problem({ temperatures: [] })))).toThrow('temperatures must be 1 or more');
    const [first] = day(20);
    if (first === undefined) throw new Error('a time');
    expect(() => finish(dayPlan(problem({ temperatures: [first, first] })))).toThrow(
      'temperatures[1].time must be after 28800 s',
    );
    expect(() => finish(dayPlan(problem({ worthwhile: 0 })))).toThrow('worthwhile must be greater than 0');
  });
});

describe('blend plan', () => {
  it('mixes half and half for the geometric mean of two silicones of equal density', () => {
    const pair = { first: createOil(silicone(200)), second: createOil(silicone(350)) };
    const plan = blendPlan({ pair, temperature: 298.15 }, Math.sqrt(200 * 350) * 1e-6, 60e-6);
    expect(plan.firstVolume).toBeCloseTo(30e-6, 10);
    expect(plan.firstVolume + plan.secondVolume).toBeCloseTo(60e-6, 14);
    // A quarter of the way in the logarithm takes a quarter of the thicker oil.
    const quarter = blendPlan({ pair, temperature: 298.15 }, 200e-6 * (350 / 200) ** 0.25, 60e-6);
    expect(quarter.secondVolume).toBeCloseTo(15e-6, 10);
    expect(quarter.firstVolume).toBeCloseTo(45e-6, 10);
    expect(plan.low).toBeLessThan(plan.typical);
    expect(plan.high).toBeGreaterThan(plan.typical);
    expect(() => blendPlan({ pair, temperature: 298.15 }, 500e-6, 60e-6)).toThrow('wanted must be');
  });
});
