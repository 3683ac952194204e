import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import type { TrackHeat } from './track.js';
import { type Asked, atRunEnd, type Warmed } from './warmed.js';

/** Temperature and damping at some times of the run. */
export function minutesTable(
  likely: Warmed,
  [cool, warm]: readonly [Warmed, Warmed],
  still: Warmed,
  { run }: Asked,
): TableBlock {
  const shares = [0, 0.1, 0.25, 0.5, 1];
  return {
    kind: 'table',
    id: 'warm-up-minutes',
    title: 'While driving',
    table: {
      columns: [
        { label: 'After', unit: 'min', dimension: 'time', digits: 2 },
        { label: 'In wind', unit: '°C', dimension: 'temperature', digits: 3 },
        { label: 'from', unit: '°C', dimension: 'temperature', digits: 3 },
        { label: 'to', unit: '°C', dimension: 'temperature', digits: 3 },
        { label: 'Still air', unit: '°C', dimension: 'temperature', digits: 3 },
        { label: 'Damping left', unit: '%', dimension: 'ratio', digits: 3 },
      ],
      rows: shares.map((share) => {
        const at = ({ result, runEnd }: Warmed) => result.temperatures[Math.round(share * runEnd)] ?? 0;
        const [low, high] = [at(cool), at(warm)].sort((a, b) => a - b);
        return [share * run, at(likely), low ?? 0, high ?? 0, at(still), likely.left(at(likely))];
      }),
    },
    note: `Damping in wind, mean of in and out at the middle speed. At the end the likely oil is ${(atRunEnd(likely) - (likely.result.temperatures[0] ?? 0)).toFixed(1)} K warmer than the air.`,
  };
}

/** What makes the heat. */
export function sourcesTable(heat: TrackHeat, air: number): TableBlock {
  const [bumps, landings] = [heat.bumps(air), heat.landings(air)];
  return {
    kind: 'table',
    id: 'warm-up-sources',
    title: 'What makes the heat in this one shock',
    table: {
      columns: [
        { label: 'From', unit: '' },
        { label: 'One', unit: 'mJ', digits: 3 },
        { label: 'All the time', unit: 'W', digits: 3 },
      ],
      rows: [
        ['bumps', 1000 * heat.ofOneBump, bumps],
        ['landings', 1000 * heat.ofOneLanding, landings],
      ],
    },
  };
}
