import type { Build } from '../../lib/parts/parts.js';

/**
 * What follows from a build alone, worked out once while it is at hand: controls ask for it with every redrawing, and a landing takes as long as ten of them.
 */
export function byBuild<Result>(of: (build: Build) => Result): (build: Build) => Result {
  const known = new WeakMap<Build, { readonly result: Result }>();
  return (build) => {
    const found = known.get(build) ?? { result: of(build) };
    known.set(build, found);
    return found.result;
  };
}
