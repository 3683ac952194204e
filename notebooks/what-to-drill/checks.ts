import type { RobustDesign } from '../../lib/decisions/design/design-problem.js';
import type { Block } from '../../lib/page/blocks/block.js';
import { pointAt } from '../base/oil-forces.js';
import { modelOfDesign } from './figures.js';
import type { Found } from './found.js';

/** What the page checks of its own numbers. */
export function frontChecks(search: Found, front: readonly RobustDesign[]): readonly Block[] {
  const beaten = front.filter(({ slowError, fastError }) =>
    front.some(
      (other) =>
        other.slowError <= slowError &&
        other.fastError <= fastError &&
        (other.slowError < slowError || other.fastError < fastError),
    ),
  );
  return [
    {
      kind: 'check',
      claim: 'None of these designs is beaten by another at both speeds',
      passed: beaten.length === 0,
      detail: `${front.length - beaten.length} of ${front.length} designs`,
      ifFailed: 'Choose by the errors of the table, not by its order',
      consistency: true,
    },
    ...forcesAgain(search),
  ];
}

/** The forces of each design shown, once more by the whole law of the damper. */
function forcesAgain(search: Found): readonly Block[] {
  const { problem, shown } = search;
  // The gas of an emulsion makes one way harder and the other softer; the search knows the oil alone.
  if (problem.damper.gas.layout === 'emulsion') return [];
  const right = shown.filter((one) => {
    const model = modelOfDesign(search, one);
    return (['slow', 'fast'] as const).every((pace) => {
      const { speed } = problem[pace];
      const { compression, rebound } = one.design[pace];
      return [
        pointAt(model, speed).dampingForce / compression,
        -pointAt(model, -speed).dampingForce / rebound,
      ].every((ratio) => Math.abs(ratio - 1) < 1e-9);
    });
  });
  return [
    {
      kind: 'check',
      claim: 'The whole law of the damper gives the forces that the search found',
      passed: right.length === shown.length,
      detail: `${right.length} of ${shown.length} designs, four forces each`,
      ifFailed: 'Compare the pistons on their own page before you drill',
    },
  ];
}
