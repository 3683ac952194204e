import type { Damper } from '../damper/damper.js';
import { damperModel } from '../damper/damper-model.js';
import { fluidAt } from '../fluid/fluid-at.js';
import type { FluidState } from '../fluid/fluid-state.js';
import { dampingForceAt } from './damping-mismatch.js';
import {
  type Design,
  type DesignFront,
  type DesignProblem,
  type MadeForce,
  type RobustDesign,
  requireDesignProblem,
  type WantedForce,
} from './design-problem.js';
import { smallestPiston } from './hole-room.js';
import { paretoFront } from './pareto-front.js';
import type { Search } from './search.js';

type Drilled = Pick<Design, 'count' | 'drill' | 'taper' | 'thickness'>;

function drilledDamper(damper: Damper, { count, drill, taper, thickness }: Drilled): Damper {
  const { diameter, eccentricity } = damper.piston;
  const straight = { count, diameter: drill };
  const tapered = {
    count,
    diameter: drill - taper / 2,
    shape: { kind: 'conical', shaftSideDiameter: drill + taper / 2 } as const,
  };
  return {
    ...damper,
    piston: { diameter, eccentricity, thickness, holes: [taper === 0 ? straight : tapered] },
  };
}

/** Forces at the slow and the fast speed. */
type Made = Pick<Design, 'slow' | 'fast'>;

function forcesOf(problem: DesignProblem, drilled: Drilled, fluid: FluidState): Made {
  const model = damperModel(drilledDamper(problem.damper, drilled), fluid);
  const at = ({ speed }: WantedForce) => ({
    compression: dampingForceAt(model, speed),
    rebound: -dampingForceAt(model, -speed),
  });
  return { slow: at(problem.slow), fast: at(problem.fast) };
}

/** Difference as a part: twice as hard is as far off as half as hard. */
function partsApart(a: number, b: number): number {
  return Math.expm1(Math.abs(Math.log(a / b)));
}

function largestApart(made: MadeForce, wanted: MadeForce): number {
  return Math.max(partsApart(made.compression, wanted.compression), partsApart(made.rebound, wanted.rebound));
}

/**
 * All pistons that can be drilled with all oils, and those of them that no other beats in both the slow and the fast force.
 *
 * @param problem - sizes and oils to try, wanted forces, errors to stand
 * @throws InputError for an input outside its range
 * @public
 */
export function* designSearch(problem: DesignProblem): Search<DesignFront> {
  requireDesignProblem(problem);
  const { damper, counts, drills, tapers, thicknesses, oils, slow, fast, temperature } = problem;
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
            const made = forcesOf(problem, drilled, fluid);
            const slowError = largestApart(made.slow, slow);
            const fastError = largestApart(made.fast, fast);
            designs.push({ ...drilled, oil: name, ...made, slowError, fastError });
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
    const made = forcesOf(problem, { ...design, drill }, fluidAt(oil, kelvin));
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
