import type { ShockFit } from '../../lib/measure/fit/fit-shock.js';
import type { Reading } from '../../lib/measure/reading/reading.js';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { formatQuantity } from '../../lib/units/index.js';
import { celsius, newtons, seconds, shaftSpeed } from './wording.js';

/** What a reading is, in words of the bench. */
export function readingWords(reading: Reading): string {
  switch (reading.kind) {
    case 'drop':
      return `${formatQuantity(reading.mass, 'mass', 'g')} ${reading.timing === 'hand' ? 'by hand' : 'on film'} at ${celsius(reading.temperature)}`;
    case 'scale':
      return `scale, ${reading.moving === 'in' ? 'pushing in' : 'letting out'} at ${formatQuantity(reading.position, 'length', 'mm')}`;
    case 'viscosity':
      return `oil by itself at ${celsius(reading.temperature)}`;
    case 'hole':
      return 'hole';
    case 'density':
      return 'weighed oil';
    case 'force':
      return `dyno at ${shaftSpeed(Math.abs(reading.speed))} ${reading.speed > 0 ? 'in' : 'out'}`;
  }
}

/** A number of a reading, as it was read. */
function readText(reading: Reading, repeat: number): string {
  switch (reading.kind) {
    case 'drop':
      return seconds(reading.times[repeat] ?? Number.NaN);
    case 'scale':
    case 'force':
      return newtons(reading.force);
    case 'viscosity':
      return formatQuantity(reading.kinematicViscosity, 'kinematicViscosity', 'cSt');
    case 'hole':
      return formatQuantity(reading.diameter, 'length', 'mm', 4);
    case 'density':
      return formatQuantity(reading.density, 'density', 'kg/m³', 4);
  }
}

/** Every number read, with how far off the fitted shock would show it; the many forces of a dyno stand elsewhere. */
export function readingsTables({ problem, residuals }: ShockFit): readonly TableBlock[] {
  const rows = residuals.flatMap(({ reading, repeat, standardised }) => {
    const of = problem.readings[reading];
    if (of === undefined || of.kind === 'force') return [];
    return [[readingWords(of), readText(of, repeat), standardised]];
  });
  if (rows.length === 0) return [];
  return [
    {
      kind: 'table',
      id: 'readings',
      title: 'What was read, against the fitted shock',
      table: {
        columns: [
          { label: 'Reading', unit: '' },
          { label: 'Read', unit: '' },
          { label: 'Fitted shock higher by', unit: 'standard uncertainties', digits: 2 },
        ],
        rows,
      },
      note: 'One in twenty lies beyond 2 either way by chance.',
    },
  ];
}
