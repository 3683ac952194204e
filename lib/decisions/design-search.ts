import type { Damper } from '../damper/damper.js';
import { damperModel } from '../damper/damper-model.js';
import { fluidAt } from '../fluid/fluid-at.js';
import type { Oil } from '../fluid/oil.js';
import { dampingForceAt } from './damping-mismatch.js';
import {
  type Design,
  type DesignFront,
  type DesignProblem,
  type RobustDesign,
  requireDesignProblem,
} from './design-problem.js';
import { smallestPiston } from './hole-room.js';
import { paretoFront } from './pareto-front.js';
import type { Search } from './search.js';

type Drilled = Pick<Design, 'count' | 'drill' | 'taper' | 'thickness'>;

function drilledDamper(damper: Damper, { count, drill, taper, thickness }: Drilled): Damper {
  const straight = { count, diameter: drill };
  const tapered = {
    count,
    diameter: drill - taper / 2,
    shape: { kind: 'conical', shaftSideDiameter: drill + taper / 2 } as const,
  };
  return { ...damper, piston: { ...damper.piston, thickness, holes: [taper === 0 ? straight : tapered] } };
}

/** Compression and rebound force at the slow and the fast speed [N], all above 0. */
function fourForces(
  problem: DesignProblem,
  drilled: Drilled,
  oil: Oil,
  temperature: number,
): readonly number[] {
  const model = damperModel(drilledDamper(problem.damper, drilled), fluidAt(oil, temperature));
  return [problem.slow, problem.fast].flatMap(({ speed }) => [
    dampingForceAt(model, speed),
    -dampingForceAt(model, -speed),
  ]);
}

/** Difference as a part: twice as hard is as far off as half as hard. */
function partsApart(a: number, b: number): number {
  return Math.expm1(Math.abs(Math.log(a / b)));
}

function largestChange(from: readonly number[], to: readonly number[]): number {
  return Math.max(...from.map((force, index) => partsApart(to[index] ?? Number.NaN, force)));
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
  const wanted = [slow.compression, slow.rebound, fast.compression, fast.rebound];
  const designs: Design[] = [];
  let unfit = 0;
  for (const [place, { name, oil }] of oils.entries()) {
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
            const forces = fourForces(problem, drilled, oil, temperature);
            const [a = 0, b = 0, c = 0, d = 0] = forces.map((force, at) =>
              partsApart(force, wanted[at] ?? Number.NaN),
            );
            designs.push({ ...drilled, oil: name, slowError: Math.max(a, b), fastError: Math.max(c, d) });
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
  const at = (drill: number, kelvin: number) => fourForces(problem, { ...design, drill }, oil, kelvin);
  const plain = at(design.drill, temperature);
  const changes = (towards: readonly (readonly number[])[]): number =>
    Math.max(...towards.map((forces) => largestChange(plain, forces)));
  return {
    ...design,
    drillChange: changes([-drillError, drillError].map((error) => at(design.drill + error, temperature))),
    temperatureChange: changes(
      [-temperatureError, temperatureError].map((error) => at(design.drill, temperature + error)),
    ),
  };
}
