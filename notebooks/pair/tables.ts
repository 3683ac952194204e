import type { ShockPair } from '../../lib/decisions/pair/pairs.js';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { percent } from '../base/wording.js';

/** Every two of the shocks, the most likely alike first. */
export function pairTable(pairs: readonly ShockPair[], limit: number): TableBlock {
  return {
    kind: 'table',
    id: 'pairs',
    title: 'Every two of them',
    table: {
      columns: [
        { label: 'Pair', unit: '' },
        { label: 'Differ by', unit: '%', dimension: 'ratio', digits: 2 },
        { label: `Likely to differ by more than ${percent(limit)}`, unit: '' },
      ],
      rows: pairs
        .slice(0, 15)
        .map(({ first, second, ratio, unlikeProbability }) => [
          `${first} and ${second}`,
          Math.abs(ratio - 1),
          unlikeProbability < 0.005 ? 'under 1 %' : percent(unlikeProbability),
        ]),
    },
  };
}
