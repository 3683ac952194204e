import { requireShape } from '../../base/shape.js';
import { damperModel } from '../../damper/damper-model.js';
import { fluidAt } from '../../fluid/oil/fluid-at.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { paretoFront } from '../../numeric/pareto-front.js';
import type { Search } from '../search/search.js';
import {
  type Design,
  type DesignFront,
  type DesignProblem,
  designProblemShape,
  type RobustDesign,
  requireDesignProblem,
} from './design-problem.js';
import { type Drilled, drilledDamper } from './drilled-damper.js';
import { smallestPiston } from './hole-room.js';
import { type Judgement, judge, largestApart } from './judgement.js';

function judgeDesign(problem: DesignProblem, drilled: Drilled, fluid: FluidState): Judgement {
  return judge(damperModel(drilledDamper(problem.damper, drilled), fluid), problem);
}

/**
 * All pistons that can be drilled with all oils, and those of them that no other beats in both the slow and the fast force.
 *
 * @param problem - sizes and oils to try, wanted forces, errors to stand
 * @throws InputError for an input outside its range
 * @public
 */
export function* designSearch(problem: DesignProblem): Search<DesignFront> {
  requireShape({ problem }, { problem: designProblemShape });
  requireDesignProblem(problem);
  const { damper, counts, drills, tapers, thicknesses, oils, temperature } = problem;
  const designs: Design[] = [];
  let unfit = 0;
  for (const [place, { name, oil }] of oils.entries()) {
    const fluid = fluidAt(oil, temperature);
    for (const [step, drill] of drills.entries()) {
      for (const count of counts) {
        for (const taper of tapers) {
          const widest = drill + Math.abs(taper) / 2 + problem.drillError;
          const narrowest = drill - Math.abs(taper) / 2 - problem.drillError;
          if (
            narrowest <= 0 ||
            smallestPiston(count, widest, damper.shaftDiameter) > damper.piston.diameter
          ) {
            unfit += thicknesses.length;
            continue;
          }
          for (const thickness of thicknesses) {
            const drilled = { count, drill, taper, thickness };
            designs.push({ ...drilled, oil: name, ...judgeDesign(problem, drilled, fluid) });
          }
        }
      }
      yield (place + (step + 1) / drills.length) / oils.length;
    }
  }
  const front = paretoFront(designs, ({ slowError, fastError }) => [slowError, fastError]);
  return { computed: designs.length, unfit, front: front.map((design) => withRobustness(problem, design)) };
}

function withRobustness(problem: DesignProblem, design: Design): RobustDesign {
  const oil = problem.oils.find(({ name }) => name === design.oil)?.oil;
  if (oil === undefined) throw new Error(`no oil ${design.oil}`);
  const { temperature, drillError, temperatureError } = problem;
  const change = (drill: number, kelvin: number): number => {
    const made = judgeDesign(problem, { ...design, drill }, fluidAt(oil, kelvin));
    return Math.max(largestApart(made.slow, design.slow), largestApart(made.fast, design.fast));
  };
  const { drill } = design;
  return {
    ...design,
    drillChange: Math.max(...[-drillError, drillError].map((error) => change(drill + error, temperature))),
    temperatureChange: Math.max(
      ...[-temperatureError, temperatureError].map((error) => change(drill, temperature + error)),
    ),
  };
}
