import { standardGravity } from '../../lib/base/constants.js';
import { type MeasuredShock, timedShock } from '../../lib/decisions/pair/measured-shock.js';
import { bestPairing, type Pairing, rankedPairs, type ShockPair } from '../../lib/decisions/pair/pairs.js';
import type { Build, Parts } from '../../lib/parts/parts.js';

/** Part of the moving friction by which the seals of one make differ from shock to shock: a guess (common practice, no source). */
export const sealSpread = 0.2;

/** What the reader says of the timing. */
export interface Timing {
  /** Largest difference that is no matter, as a part. */
  readonly limit: number;
  /** Standard uncertainty of one time [s]. */
  readonly hand: number;
  /** Mass hung on the shaft [kg]. */
  readonly weight: number;
}

/** The timed shocks of one build: only these can be pairs. */
export interface TimedGroup {
  readonly build: Build;
  readonly shocks: readonly MeasuredShock[];
  /** Part of a time that friction alone may change from one shock to its like; undefined where the weight hardly moves the shaft. */
  readonly frictionDoubt: number | undefined;
  /** Undefined where one shock alone was timed. */
  readonly pairing: Pairing | undefined;
  readonly pairs: readonly ShockPair[];
}

/**
 * Part by which a time changes where the friction is off by its spread: `t = c s/(m g − F)`.
 *
 * The push of the gas is left out: it is the same for like shocks.
 */
export function frictionDoubt({ shock }: Build, weight: number): number | undefined {
  const { typical } = shock.seal;
  const net = weight * standardGravity - typical.kineticForce;
  // Below half of the pull the test times the seal.
  return net > typical.kineticForce ? (sealSpread * typical.kineticForce) / net : undefined;
}

/** The timed shocks of a file, build by build, in the order of the file. */
export function timedGroups({ timed = [] }: Parts, { limit, hand, weight }: Timing): readonly TimedGroup[] {
  const builds = [...new Set(timed.map(({ build }) => build.name))];
  return builds.flatMap((name) => {
    const ofBuild = timed.filter(({ build }) => build.name === name);
    const [first] = ofBuild;
    if (first === undefined) return [];
    const { build } = first;
    const doubt = frictionDoubt(build, weight);
    const shocks = ofBuild.map(({ name: shock, times }) =>
      withDoubt(timedShock(shock, times, hand), doubt ?? 0),
    );
    const alone = shocks.length < 2;
    return [
      {
        build,
        shocks,
        frictionDoubt: doubt,
        pairing: alone ? undefined : bestPairing(shocks, limit),
        pairs: alone ? [] : rankedPairs(shocks, limit),
      },
    ];
  });
}

/** What a time says of damping is in doubt by the clock and by the friction. */
function withDoubt(shock: MeasuredShock, doubt: number): MeasuredShock {
  return { ...shock, relativeUncertainty: Math.hypot(shock.relativeUncertainty, doubt) };
}

/** By how much two times differ: the slower over the quicker, less one, whatever their order. */
export function timesDiffer({ ratio }: Pick<ShockPair, 'ratio'>): number {
  return Math.max(ratio, 1 / ratio) - 1;
}
