import { asMeasured } from './as-measured.js';
import { buildFault } from './build-fit.js';
import type { Build, OilPart, PistonPart } from './parts.js';
import type { BuildEntry } from './schema/build-schema.js';
import type { ShockPart } from './shock-part.js';
import type { Finding } from './source/finding.js';

/** The builds of a file, those that were measured with the parts that they came out with. */
interface BuildsAsMeasured {
  readonly builds: readonly Build[];
  readonly oils: readonly OilPart[];
  readonly pistons: readonly PistonPart[];
  readonly shocks: readonly ShockPart[];
}

/**
 * Puts what was measured in the place of what was stated, for builds that say so.
 *
 * @param entries - the builds as the file has them
 * @param named - the same put together, in the same places
 * @param stated - all builds as stated
 * @param findings - to which what is wrong is added
 */
export function buildsAsMeasured(
  entries: readonly (BuildEntry | undefined)[],
  named: readonly (Build | undefined)[],
  stated: readonly Build[],
  findings: Finding[],
): BuildsAsMeasured {
  const builds = stated.map((build): Build => {
    const index = named.indexOf(build);
    const measured = entries[index]?.measured;
    if (measured === undefined) return build;
    const other = asMeasured(build, measured);
    const fault = buildFault(build) === undefined ? buildFault(other) : undefined;
    if (fault !== undefined) {
      findings.push({
        path: ['builds', index, 'measured'],
        message: `makes a shock that cannot be: ${[...fault.path, fault.message].join(' ')}`,
      });
    }
    return other;
  });
  const replaced = builds.filter(({ measured }) => measured !== undefined);
  return {
    builds,
    oils: replaced.map(({ oil }) => oil),
    pistons: replaced.map(({ piston }) => piston),
    shocks: replaced.map(({ shock }) => shock),
  };
}
