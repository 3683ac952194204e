import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { cSt, softOrHard } from '../base/decision-cases.js';
import { percent } from '../base/wording.js';
import type { Match, MatchedFill } from './matched.js';

/** The exact oil and the nearest bottles. */
export function bottleTable({ exact, singles }: Match, label: number): TableBlock {
  const row = ({ mismatch }: MatchedFill, name: string) => [
    name,
    softOrHard(mismatch.meanRatio),
    percent(mismatch.typical),
  ];
  return {
    kind: 'table',
    id: 'bottles',
    title: 'The nearest oils',
    note: '"Off by" is the typical deviation over the shaft speeds that count.',
    table: {
      columns: ['Oil', 'On the whole', 'Off by'].map((text) => ({ label: text, unit: '' })),
      rows: [row(exact, `exact: ${cSt(label)}`), ...singles.slice(0, 4).map((fill) => row(fill, fill.name))],
    },
  };
}
