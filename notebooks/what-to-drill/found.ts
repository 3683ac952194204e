import { damperModel } from '../../lib/damper/damper-model.js';
import type { DesignProblem, RobustDesign, WantedForce } from '../../lib/decisions/design/design-problem.js';
import { type Judgement, judge } from '../../lib/decisions/design/judgement.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { paretoFront } from '../../lib/numeric/pareto-front.js';
import { quantity } from '../../lib/page/parameters/declare-parameters.js';
import type { Build, Parts } from '../../lib/parts/parts.js';
import { damperOfBuild } from '../base/decision-cases.js';
import { runsIn } from '../base/piston-in-bore.js';

/** Most designs that a picture and a table tell apart. */
const mostShown = 10;
/** Designs further off than this, or than twice the best one, are not worth a look. */
export const farOff = 0.3;

const letters = [...'ABCDEFGH'];

/** How much of a change a robust design stands. */
export const robustLimit = quantity({
  dimension: 'ratio',
  unit: '%',
  label: 'Robust within',
  help: 'How far a small error may change a force before you would notice.',
  default: 8,
  min: 1,
  max: 50,
  step: 1,
});

/** A design of the front as the page shows it. */
export interface Shown {
  /** What stands beside its mark: 1, 2, 3 … from right when slow to right when fast. */
  readonly number: number;
  readonly design: RobustDesign;
  readonly isRobust: boolean;
}

/** A piston of the file on an oil of the file. */
export interface Owned extends Judgement {
  /** What stands beside its mark: A, B, C … */
  readonly letter: string;
  readonly name: string;
}

/** What the search brought, as the page shows it. */
export interface Found {
  readonly build: Build;
  readonly problem: DesignProblem;
  /** Forces that would be wanted at a speed of which the search knows nothing, where there is one. */
  readonly beside?: WantedForce;
  readonly shown: readonly Shown[];
  /** The one that the page names: nearest in both, of the robust ones where there are some. */
  readonly pick?: Shown;
  /** Pistons of the file that run in the bore, with each oil: those that no other of them beats. */
  readonly owned: readonly Owned[];
}

/** The larger of the two errors. */
const worse = ({ slowError, fastError }: Judgement): number => Math.max(slowError, fastError);

const nearest = (a: Judgement, b: Judgement): number => worse(a) - worse(b);

interface Search {
  readonly parts: Parts;
  readonly build: Build;
  readonly problem: DesignProblem;
  readonly front: readonly RobustDesign[];
  readonly limit: number;
}

/** The designs worth a look, the one to name, and what the file holds already. */
export function found({ parts, build, problem, front, limit }: Search): Found {
  const [best] = front.toSorted(nearest);
  const widest = best === undefined ? farOff : Math.max(farOff, 2 * worse(best));
  const near = front
    .filter((design) => worse(design) <= widest)
    .toSorted(nearest)
    .slice(0, mostShown);
  const shown = front
    .filter((design) => near.includes(design))
    .map((design, index): Shown => {
      const isRobust = Math.max(design.drillChange, design.temperatureChange) <= limit;
      return { number: index + 1, design, isRobust };
    });
  const robust = shown.filter(({ isRobust }) => isRobust);
  const [pick] = (robust.length > 0 ? robust : shown).toSorted((a, b) => nearest(a.design, b.design));
  const owned = ownedPistons(parts, build, problem)
    .filter((one) => worse(one) <= widest)
    .slice(0, letters.length)
    .map((one, index): Owned => ({ ...one, letter: letters[index] ?? '' }));
  return { build, problem, shown, owned, ...(pick === undefined ? {} : { pick }) };
}

function ownedPistons({ pistons }: Parts, build: Build, problem: DesignProblem) {
  const all = pistons
    .filter(({ piston }) => runsIn(piston.diameter, build.shock.bore))
    .flatMap((part) =>
      problem.oils.map(({ name, oil }) => {
        const model = damperModel(
          damperOfBuild({ ...build, piston: part }),
          fluidAt(oil, problem.temperature),
        );
        return { name: `${part.name} on ${name}`, ...judge(model, problem) };
      }),
    );
  return paretoFront(all, ({ slowError, fastError }) => [slowError, fastError]);
}

/** The build as it is, on its own oil. */
export function asItIs({ build, problem }: Found) {
  const fluid = fluidAt(createOil(build.oil.definition), problem.temperature);
  return damperModel(damperOfBuild(build), fluid);
}
