import { asMeasured } from './as-measured.js';
import type { Build, MeasuredValues, Parts } from './parts.js';

/** What the measurements of a build say of it. */
export interface FittedBuild {
  readonly build: string;
  readonly measured: MeasuredValues;
}

/**
 * Parts with fitted builds in the place of those stated, as if the file said so: what they came out with stands after the parts of the file. Measurements stay with the
 * builds as stated.
 */
export function withFittedBuilds(parts: Parts, fitted: readonly FittedBuild[]): Parts {
  const of = new Map(fitted.map(({ build, measured }) => [build, measured]));
  const replaced: Build[] = [];
  const builds = parts.builds.map((build) => {
    const measured = of.get(build.name);
    if (measured === undefined) return build;
    const other = asMeasured(build, measured);
    replaced.push(other);
    return other;
  });
  const timed = parts.timed?.map((one) => ({
    ...one,
    build: builds[parts.builds.indexOf(one.build)] ?? one.build,
  }));
  return {
    ...parts,
    oils: [...parts.oils, ...replaced.map(({ oil }) => oil)],
    pistons: [...parts.pistons, ...replaced.map(({ piston }) => piston)],
    shocks: [...parts.shocks, ...replaced.map(({ shock }) => shock)],
    builds,
    ...(timed === undefined ? {} : { timed }),
  };
}

/** All that a fit of a build rests on, as one text; nothing where the parts have no such build, or one that is not as stated. */
function groundsOf({ builds, measurements = [], tolerances }: Parts, name: string): string | undefined {
  const build = builds.find((one) => one.name === name);
  if (build === undefined || build.measured !== undefined) return undefined;
  const { shock, piston, oil, closeAt } = build;
  const own = measurements.filter((one) => one.build.name === name);
  return JSON.stringify([
    shock,
    piston.piston,
    oil.definition,
    closeAt,
    tolerances,
    own.map(({ readings, dyno }) => [readings, dyno]),
  ]);
}

/**
 * The fitted builds that still belong to parts: those with the sizes, oil, tolerances and measurements that they were fitted with.
 *
 * @param fitted - builds of `before`
 * @param before - the parts as they were fitted
 * @param parts - as they are now
 */
export function stillFitted(
  fitted: readonly FittedBuild[],
  before: Parts,
  parts: Parts,
): readonly FittedBuild[] {
  if (parts === before) return fitted;
  return fitted.filter(({ build }) => {
    const grounds = groundsOf(parts, build);
    return grounds !== undefined && grounds === groundsOf(before, build);
  });
}
