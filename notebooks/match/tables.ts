import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { cSt, offBy, softOrHard } from '../base/decision-cases.js';
import type { Match, MatchedFill } from './matched.js';

/** The exact oil and the nearest bottles. */
export function bottleTable({ exact, singles }: Match, label: number): TableBlock {
  const row = ({ mismatch }: MatchedFill, name: string) => [
    name,
    softOrHard(mismatch.meanRatio),
    offBy(mismatch),
  ];
  return {
    kind: 'table',
    id: 'bottles',
    title: 'The nearest oils',
    note: '"On the whole" is the mean over the shaft speeds that count, "Off by" the typical deviation at one of them.',
    table: {
      columns: ['Oil', 'On the whole', 'Off by'].map((text) => ({ label: text, unit: '' })),
      rows: [row(exact, `exact: ${cSt(label)}`), ...singles.slice(0, 4).map((fill) => row(fill, fill.name))],
    },
  };
}
