import type { ForceSpread, ToleranceShare } from '../../lib/decisions/spread/force-spread.js';
import type { TolerancedBuild, ToleranceName } from '../../lib/decisions/spread/toleranced-build.js';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { formatQuantity } from '../../lib/units/index.js';
import { percent } from '../base/wording.js';
import { capital, plainName } from './wording.js';

/** The spread at each speed. */
export function spreadTable(spreads: readonly ForceSpread[]): TableBlock {
  const force = { unit: 'N', dimension: 'force' } as const;
  return {
    kind: 'table',
    id: 'spread',
    title: 'Rebound force over all builds',
    table: {
      columns: [
        { label: 'Shaft speed', unit: 'mm/s', dimension: 'speed' },
        { label: 'One in 20 below', ...force },
        { label: 'Half below', ...force },
        { label: 'One in 20 above', ...force },
        { label: 'Standard deviation', unit: '%', dimension: 'ratio', digits: 2 },
      ],
      rows: spreads.map(({ speed, low, median, high, mean, standardDeviation }) => [
        -speed,
        -high,
        -median,
        -low,
        standardDeviation / Math.abs(mean),
      ]),
    },
  };
}

function halfWidthText(name: ToleranceName, { tolerances }: TolerancedBuild): string {
  const deviation = tolerances[name];
  const halfWidth = deviation?.kind === 'uniform' ? deviation.halfWidth : 0;
  if (name === 'viscosity') return `± ${percent(halfWidth)}`;
  if (name === 'temperature') return `± ${halfWidth} K`;
  if (name === 'gasVolume') return `± ${formatQuantity(halfWidth, 'volume', 'ml', 2)}`;
  return `± ${formatQuantity(halfWidth, 'length', 'mm', 2)}`;
}

/** What was let off by how much, and what it does. */
export function toleranceTable(build: TolerancedBuild, shares: readonly ToleranceShare[]): TableBlock {
  return {
    kind: 'table',
    id: 'tolerances',
    title: 'What may be off, and what it does at the middle speed',
    table: {
      columns: [
        { label: 'Size', unit: '' },
        { label: 'Off by up to', unit: '' },
        { label: 'Share of the spread', unit: '%', dimension: 'ratio', digits: 2 },
      ],
      rows: [...shares]
        .sort((a, b) => b.total - a.total)
        .map(({ name, total }) => [capital(plainName(name)), halfWidthText(name, build), Math.max(0, total)]),
    },
  };
}
