import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import type { Block } from '../../lib/page/blocks/block.js';
import { oilAlone } from '../base/oil-forces.js';
import { celsius, percent } from '../base/wording.js';
import type { BuildDay } from './build-days.js';

/** The best single bottle at the hottest time, found by trying every bottle force by force: the plan may not be further off there than that. */
export function singleBottleCheck({ build, plan, problem }: BuildDay): Block {
  const hottest = plan.steps.reduce((a, b) => (b.temperature > a.temperature ? b : a));
  const { weights, forces } = problem.wanted;
  const total = weights.reduce((sum, { weight }) => sum + weight, 0);
  const least = Math.min(
    ...problem.bottles.map(({ oil }) => {
      // As the plan takes it: at rest.
      const { kinematicViscosity, density } = fluidAt(oil, hottest.temperature);
      const model = damperModel(problem.damper, { kinematicViscosity, density });
      const squares = weights.reduce((sum, { speed, weight }, place) => {
        return sum + weight * Math.log(oilAlone(model, speed) / (forces[place] ?? Number.NaN)) ** 2;
      }, 0);
      return Math.exp(Math.sqrt(squares / total)) - 1;
    }),
  );
  const allowed = Math.max(problem.worthwhile, least);
  return {
    kind: 'check',
    claim: `${build.name} at ${celsius(hottest.temperature)}: the plan is no further off than the better of what a rebuild is worth and the best single bottle, tried one by one`,
    passed: hottest.mismatch <= allowed + 1e-3,
    detail: `${percent(hottest.mismatch)} against ${percent(allowed)}`,
    ifFailed: 'Take the best single bottle from the page that compares oils',
  };
}
