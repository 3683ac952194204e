import type { ToleranceName } from '../../lib/decisions/spread/toleranced-build.js';
import { capital } from '../../lib/page/blocks/capital.js';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { formatQuantity } from '../../lib/units/index.js';
import { percent } from '../base/wording.js';
import { type Cause, halfWidth, type TwoSpreads } from './two-spreads.js';
import { answerPlace, motionText, plainName } from './wording.js';

/** Left against right and all against the plan, at each speed; `fastForce` says which force the fastest is. */
export function spreadTable({ pairs, shared, together }: TwoSpreads, fastForce: string): TableBlock {
  const part = { unit: '%', dimension: 'ratio', digits: 2 } as const;
  return {
    kind: 'table',
    id: 'spread',
    title: 'How far apart, at each speed',
    table: {
      columns: [
        { label: 'Motion', unit: '' },
        { label: 'Left and right, half of pairs below', ...part },
        { label: 'Left and right, 9 of 10 below', ...part },
        { label: 'All together off by (±, 9 of 10)', ...part },
        { label: 'Force, one in 20 below', unit: 'N', dimension: 'force' },
        { label: 'Force, half below', unit: 'N', dimension: 'force' },
        { label: 'Force, one in 20 above', unit: 'N', dimension: 'force' },
      ],
      rows: together().map(({ speed, low, median, high }, place) => {
        const [least, most] = [Math.abs(low), Math.abs(high)].sort((a, b) => a - b);
        const ofShared = shared?.spreads()[place];
        return [
          motionText(speed),
          pairs[place]?.median ?? 0,
          pairs[place]?.high ?? 0,
          ofShared === undefined ? 0 : halfWidth(ofShared),
          least ?? 0,
          Math.abs(median),
          most ?? 0,
        ];
      }),
    },
    note: `The forces hold everything that may be off at once. ${fastForce}`,
  };
}

function halfWidthText(name: ToleranceName, { build }: Cause): string {
  const deviation = build.tolerances[name];
  const off = deviation?.kind === 'uniform' ? deviation.halfWidth : 0;
  if (name === 'viscosity') return `± ${percent(off)}`;
  if (name === 'temperature') return `± ${off} K`;
  if (name === 'gasVolume') return `± ${formatQuantity(off, 'volume', 'ml', 2)}`;
  return `± ${formatQuantity(off, 'length', 'mm', 2)}`;
}

/** What was let off by how much, and what it does. */
export function toleranceTable({ own, shared }: TwoSpreads): TableBlock {
  const rows = (cause: Cause | undefined, of: string) =>
    [...(cause?.shares[answerPlace] ?? [])]
      .sort((a, b) => b.total - a.total)
      .map(({ name, total }) => [
        capital(plainName(name)),
        of,
        cause === undefined ? '' : halfWidthText(name, cause),
        Math.max(0, total),
      ]);
  return {
    kind: 'table',
    id: 'tolerances',
    title: 'What may be off, and what it does at the middle speed',
    table: {
      columns: [
        { label: 'Size', unit: '' },
        { label: 'Sets apart', unit: '' },
        { label: 'Off by up to', unit: '' },
        { label: 'Share of that spread', unit: '%', dimension: 'ratio', digits: 2 },
      ],
      rows: [...rows(own, 'left and right'), ...rows(shared, 'all from the plan')],
    },
  };
}
