import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { heatOf, type Stroked } from './stroked.js';

export const caseNames = { likely: 'likely', bubbles: 'with bubbles', 'early release': 'air let go early' };

/** The figures of the last stroke, with what air leaves open. */
export function figuresTable(all: readonly Stroked[]): TableBlock {
  return {
    kind: 'table',
    id: 'bench-figures',
    title: 'What the loops say',
    note: 'Damping is that of a linear damper that takes as much energy from the same sine; stiffness is the part of the force that follows the travel. Bubbles grow where a cavity would be, so that there is none.',
    table: {
      columns: [
        { label: 'Oil', unit: '' },
        { label: 'Pushes', unit: 'N', dimension: 'force', digits: 3 },
        { label: 'Pulls', unit: 'N', dimension: 'force', digits: 3 },
        { label: 'Energy', unit: 'J', digits: 3 },
        { label: 'Damping', unit: 'N·s/m', digits: 3 },
        { label: 'Stiffness', unit: 'N/mm', dimension: 'springRate', digits: 2 },
        { label: 'Cavity', unit: 'ml', dimension: 'volume', digits: 2 },
        { label: 'Lost stroke', unit: 'mm', dimension: 'length', digits: 2 },
      ],
      rows: all.map(({ end, cycle, figures, result }) => [
        caseNames[end],
        cycle.largestForce.value,
        -cycle.smallestForce.value,
        cycle.work,
        figures.equivalentDamping,
        figures.dynamicStiffness,
        cycle.largestCavity,
        result.lostStroke,
      ]),
    },
  };
}

/** Where the energy of a stroke goes. */
export function energyTable({ cycle, repeats, stroke }: Stroked): TableBlock {
  const { holes, recoil, rim, seals } = cycle.lost;
  const parts: readonly (readonly [string, number])[] = [
    ['oil through holes, valves and gap', holes + recoil],
    ['oil dragged along at the rim', rim],
    ['seals', seals],
    ...(repeats ? [] : [['none of them: gas that still settles', cycle.work - heatOf(cycle)] as const]),
  ];
  return {
    kind: 'table',
    id: 'bench-energy',
    title: 'What each part turns into heat',
    note: 'Of the stroke that is shown. Gas and springy oil give back what they take.',
    table: {
      columns: [
        { label: 'Part', unit: '' },
        { label: 'A stroke', unit: 'mJ', digits: 3 },
        { label: 'All the time', unit: 'W', digits: 3 },
        { label: 'Share', unit: '%', dimension: 'ratio', digits: 2 },
      ],
      rows: parts.map(([name, energy]) => [
        name,
        1000 * energy,
        energy * stroke.frequency,
        energy / cycle.work,
      ]),
    },
  };
}
