import { viscosityWindow } from '../../lib/decisions/match/match-viscosity.js';
import type { OrderPlan } from '../../lib/decisions/order/order-plan.js';
import type { OrderProblem } from '../../lib/decisions/order/order-problem.js';
import { oilDensity, typicalDensityAt15Celsius } from '../../lib/fluid/oil/density.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart } from '../../lib/plot/figure/line-chart.js';
import { cSt, labelOf, labelTemperature } from '../base/decision-cases.js';
import { celsius, percent } from '../base/wording.js';

/** The oil that each build wants against the temperature, as a bottle is labelled, with the bottles as level lines. */
export function wantedLabelFigure(problem: OrderProblem, plan: OrderPlan): Figure {
  const { bottles, builds, temperatures, tolerance } = problem;
  const bought = plan.possible ? plan.lines.map(({ bottle }) => bottle) : bottles.map((_, index) => index);
  const series = builds.map(({ name, damper, wanted }) => ({
    name,
    points: temperatures.flatMap((temperature) => {
      const density = oilDensity('silicone', temperature, typicalDensityAt15Celsius.silicone);
      const window = viscosityWindow({ damper, density, wanted }, tolerance);
      if (window === undefined) return [];
      const [low, y, high] = [window.low, window.best, window.high].map((one) => labelOf(one, temperature));
      return low === undefined || y === undefined || high === undefined
        ? []
        : [{ x: temperature, y, low, high }];
    }),
  }));
  const [first] = series;
  const [cold, hot] = [first?.points[0], first?.points.at(-1)];
  return lineChart({
    id: 'wanted-oil',
    title: 'The oil each build wants, by the number on a bottle',
    alt: `${first?.name} wants a ${cSt(cold?.y ?? 0)} bottle at ${celsius(cold?.x ?? 0)} and a ${cSt(hot?.y ?? 0)} one at ${celsius(hot?.x ?? 0)}. Where a band (${percent(tolerance)} of damping) meets the level line of a bottle, that bottle does alone; in between, a blend does.`,
    x: { label: 'Oil temperature', unit: '°C', dimension: 'temperature' },
    y: { label: 'Viscosity at 25 °C', unit: 'cSt', dimension: 'kinematicViscosity' },
    series: series.filter(({ points }) => points.length > 1),
    rules: bought.flatMap((place) => {
      const bottle = bottles[place];
      if (bottle === undefined || bottle.oil.base !== 'silicone') return [];
      const value = fluidAt(bottle.oil, labelTemperature).kinematicViscosity;
      return [{ axis: 'y', value, label: bottle.name } as const];
    }),
  });
}
