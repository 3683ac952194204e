import type { Block } from '../../lib/page/blocks/block.js';
import type { OilPart } from '../../lib/parts/parts.js';
import type { Cell } from '../../lib/plot/chart/table.js';
import { millimetres } from '../base/bench-wording.js';
import { celsius } from '../base/wording.js';
import { type Asked, type Landings, pushOf, travelOf } from './landings.js';
import { siliconeOf } from './same-landing.js';

/** An oil of the table, with what its row calls it. */
export interface Tried {
  readonly label: string;
  readonly oil: OilPart;
}

/** The landing that is liked beside that of the new shock on some oils. */
export function landingBlocks(
  { build, right, now, shock }: Asked,
  { drop, liked, on }: Landings,
  oils: readonly Tried[],
): readonly Block[] {
  const row = (name: string, landing: ReturnType<Landings['on']>): readonly Cell[] =>
    typeof landing === 'string'
      ? [name, null, landing, null]
      : [name, travelOf(landing), landing.bottoms ? 'touched' : 'free', pushOf(landing)];
  return [
    {
      kind: 'table',
      id: 'landings',
      title: `How it lands from ${millimetres(drop)}`,
      note: `${build.name} as you like it, and ${shock.name} with the new piston on each oil at ${celsius(now)}, under the same spring and car. "Pushes out" is the largest force of the shock alone.${build.corner === undefined ? ' What the car weighs and its motion ratio are guesses.' : ''}`,
      table: {
        columns: [
          { label: 'Landing', unit: '' },
          // So fine that a difference of a tenth in the words is seen here too.
          { label: 'Goes in', unit: 'mm', dimension: 'length', digits: 4 },
          { label: 'Stop', unit: '' },
          { label: 'Pushes out', unit: 'N', dimension: 'force', digits: 3 },
        ],
        rows: [
          row(`as you like it, on ${right.oil.name} at ${celsius(right.temperature)}`, liked),
          ...oils.map(({ label, oil }) => row(label, on(oil))),
        ],
      },
    },
    ...(liked.bottoms
      ? [
          {
            kind: 'text',
            text: `${build.name} touches its bump stop in this landing, and the stop hides what the oil does: choose a lower drop.`,
          } as const,
        ]
      : []),
  ];
}

/** How much thinner and thicker the oils on either side are. */
const beside = 1.1;

/** Oils on either side of the exact one: the search went by a line between two others. */
export function sameLandingCheck({ now }: Asked, { liked, on }: Landings, kinematicViscosity: number): Block {
  const travelOn = (viscosity: number): number | undefined => {
    const landing = on(siliconeOf(viscosity, now));
    return typeof landing === 'string' ? undefined : travelOf(landing);
  };
  const [thin, thick] = [travelOn(kinematicViscosity / beside), travelOn(kinematicViscosity * beside)];
  const wanted = travelOf(liked);
  return {
    kind: 'check',
    claim:
      'On oil a tenth thinner than the exact one it goes in further than wanted, on oil a tenth thicker less far',
    passed: (thin ?? wanted + 1) > wanted && (thick ?? 0) < wanted,
    detail: `${thin === undefined ? 'through its oil' : millimetres(thin)} and ${thick === undefined ? 'locked' : millimetres(thick)}, where ${millimetres(wanted)} are wanted`,
    ifFailed: 'Try the nearest bottle and look how far its shaft goes in',
  };
}
