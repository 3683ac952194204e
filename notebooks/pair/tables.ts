import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { percent } from '../base/wording.js';
import { type TimedGroup, timesDiffer } from './groups.js';
import { likely } from './words.js';

/** Every two shocks of one build, the most likely alike first. */
export function pairTable({ build, pairs }: TimedGroup, place: number, limit: number): TableBlock {
  return {
    kind: 'table',
    id: `pairs-${place + 1}`,
    title: `Every two of ${build.name}`,
    table: {
      columns: [
        { label: 'Pair', unit: '' },
        { label: 'Times differ by', unit: '%', dimension: 'ratio', digits: 3 },
        { label: `Likely to damp more than ${percent(limit)} apart`, unit: '' },
      ],
      rows: pairs
        .slice(0, 15)
        .map((pair) => [
          `${pair.first} and ${pair.second}`,
          timesDiffer(pair),
          likely(pair.unlikeProbability),
        ]),
    },
  };
}
