import { paretoFront } from '../../numeric/pareto-front.js';
import type { DesignFront } from './design-problem.js';

/** One front of several that were searched apart: what none of them beats. */
export function mergedFronts(fronts: readonly DesignFront[]): DesignFront {
  const members = fronts.flatMap(({ front }) => front);
  return {
    computed: fronts.reduce((sum, { computed }) => sum + computed, 0),
    unfit: fronts.reduce((sum, { unfit }) => sum + unfit, 0),
    front: paretoFront(members, ({ slowError, fastError }) => [slowError, fastError]),
  };
}
