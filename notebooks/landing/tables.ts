import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import type { Landed } from '../base/landed.js';

/** Several landings side by side, the softest first. */
export function landingsTable(
  id: string,
  title: string,
  landings: readonly Landed[],
  nameOf: (landing: Landed) => string,
): TableBlock {
  return {
    kind: 'table',
    id: `landing-${id}`,
    title,
    note: 'Softest first. "Pushes out" is the largest force of the shock alone; "body feels" counts gravities.',
    table: {
      columns: [
        { label: 'With', unit: '' },
        { label: 'Goes in', unit: 'mm', dimension: 'length', digits: 3 },
        { label: 'Stop', unit: '' },
        { label: 'Pushes out', unit: 'N', dimension: 'force', digits: 3 },
        { label: 'Body feels', unit: '', digits: 2 },
      ],
      rows: [...landings]
        .sort((a, b) => a.gravities - b.gravities)
        .map((landing) => [
          nameOf(landing),
          landing.outcome.largestTravel.value,
          landing.bottoms ? 'touched' : 'free',
          landing.outcome.largestShockForce.value,
          landing.gravities,
        ]),
    },
  };
}
