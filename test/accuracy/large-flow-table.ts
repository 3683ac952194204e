import { type LargeFlow, largeFlows } from '../reference/unsteady-large.js';
import { percent } from './comparison.js';

const nameOf = ({ kind, measure, reynoldsNumber }: LargeFlow): string =>
  kind === 'swing'
    ? `swings with \`ω d²/ν\` ${measure}, Re to ${reynoldsNumber}`
    : `starts as sin² within ${measure} \`d²/ν\`, to Re ${reynoldsNumber}`;

/** Flows with inertia: how far the laws are off, in parts of the largest force, as Markdown. */
export function largeFlowTable(): string {
  return [
    '| flow | steady law: force | pressure drop | with the mass: force | pressure drop | mesh and step: force | pressure drop |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...largeFlows().map((flow) => {
      const { steadyLaw, withApparentMass, meshAndStep } = flow;
      const cells = [steadyLaw, withApparentMass, meshAndStep].flatMap(({ force, drop }) => [force, drop]);
      return `| ${nameOf(flow)} | ${cells.map(percent).join(' | ')} |`;
    }),
  ].join('\n');
}
