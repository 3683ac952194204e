import { damperModel } from '../../lib/damper/damper-model.js';
import { logMismatch } from '../../lib/decisions/match/damping-mismatch.js';
import { viscosityWindow } from '../../lib/decisions/match/match-viscosity.js';
import type { OrderPlan, UnservedFill } from '../../lib/decisions/order/order-plan.js';
import type { OrderProblem } from '../../lib/decisions/order/order-problem.js';
import { oilDensity, typicalDensityAt15Celsius } from '../../lib/fluid/oil/density.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { cSt, labelOf, labelTemperature } from '../base/decision-cases.js';
import { celsius, listed, percent } from '../base/wording.js';

/** Bottles that are sold by an interval, and what that alone may do to the fills with them. */
export function labelDoubts({ bottles, builds }: OrderProblem, plan: OrderPlan): readonly string[] {
  if (!plan.possible) return [];
  return plan.lines.flatMap(({ bottle }) => {
    const { name = '', oil } = bottles[bottle] ?? {};
    if (oil === undefined || oil.low === oil.high) return [];
    const [low, high] = (['low', 'high'] as const).map(
      (bound) => fluidAt(oil, labelTemperature, bound).kinematicViscosity,
    ) as [number, number];
    const fills = plan.fills.filter(({ choice }) => choice.first === bottle && choice.second === undefined);
    const worst = Math.max(
      0,
      ...fills.flatMap(({ build: of, temperature }) => {
        const build = builds.find(({ name: one }) => one === of);
        if (build === undefined) return [];
        return (['low', 'high'] as const).map((bound) => {
          const model = damperModel(build.damper, fluidAt(oil, temperature, bound));
          return Math.expm1(logMismatch(model, build.wanted).rootMeanSquare);
        });
      }),
    );
    const alone = worst > 0 ? `; filled alone it may then be ${percent(worst)} off` : '';
    return [
      `${name} is sold by a label and may hold anything from ${cSt(low)} to ${cSt(high)} (at 25 °C)${alone}. Measure it, or buy one marked in cSt.`,
    ];
  });
}

/** What a build wants where nothing serves, as a bottle would be labelled, and what the shelf has. */
export function unservedSentences(
  problem: OrderProblem,
  unserved: readonly UnservedFill[],
): readonly string[] {
  const builds = [...new Set(unserved.map(({ build }) => build))];
  const labels = problem.bottles
    .filter(({ oil }) => oil.base === 'silicone')
    .map(({ oil }) => fluidAt(oil, labelTemperature).kinematicViscosity);
  return builds.flatMap((name) => {
    const build = problem.builds.find((one) => one.name === name);
    if (build === undefined) return [];
    const at = unserved.filter((one) => one.build === name).map(({ temperature }) => temperature);
    const wants = at.flatMap((temperature) => {
      const density = oilDensity('silicone', temperature, typicalDensityAt15Celsius.silicone);
      const window = viscosityWindow(
        { damper: build.damper, density, wanted: build.wanted },
        problem.tolerance,
      );
      return window === undefined ? [] : [labelOf(window.best, temperature)];
    });
    const where =
      at.length === problem.temperatures.length ? 'at any temperature' : `at ${listed(at.map(celsius))}`;
    if (wants.length === 0)
      return [
        `${name}: no oil at all keeps it within ${percent(problem.tolerance)} ${where}; its piston bends the curve another way. Allow more, or take the piston that it is wanted with.`,
      ];
    const [least, most] = [Math.min(...wants), Math.max(...wants)];
    const wanted = least === most ? cSt(least) : `${cSt(least)} to ${cSt(most)}`;
    const shelf =
      labels.length === 0
        ? 'there is no silicone to choose from'
        : `what there is runs from ${cSt(Math.min(...labels))} to ${cSt(Math.max(...labels))}`;
    return [
      `${name}: nothing serves it ${where}. A silicone bottle of ${wanted} (at 25 °C) would; ${shelf}.`,
    ];
  });
}
