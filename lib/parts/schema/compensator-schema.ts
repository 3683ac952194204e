import * as z from 'zod/mini';
import type { Compensator } from '../../gas/compensator.js';
import { choiceField, numberField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';
import { report } from './schema-issue.js';

const kinds = ['air-pocket', 'bladder', 'vented-bladder', 'foam', 'emulsion', 'none'] as const;
type Kind = (typeof kinds)[number];
type Key = 'volume' | 'stiffness' | 'gas-fraction';

/** Which keys a kind needs, and which it may have besides. */
const keysOf: Readonly<Record<Kind, { readonly needs: readonly Key[]; readonly takes: readonly Key[] }>> = {
  'air-pocket': { needs: ['volume'], takes: [] },
  bladder: { needs: ['volume'], takes: ['stiffness'] },
  'vented-bladder': { needs: ['volume', 'stiffness'], takes: [] },
  foam: { needs: ['volume', 'gas-fraction'], takes: ['stiffness'] },
  emulsion: { needs: ['gas-fraction'], takes: [] },
  none: { needs: [], takes: [] },
};

const shape = {
  kind: choiceField(kinds, {
    description:
      'air-pocket: air under the cap. bladder: a rubber cup or diaphragm with sealed air behind it; vented-bladder: with a hole in the cap. foam: a closed-cell insert. emulsion: air in the oil. none: nothing, so that the shaft locks.',
  }),
  volume: z.optional(
    quantityField({
      dimension: 'volume',
      from: '1 mm³',
      to: '200 ml',
      example: '0.8 ml',
      description: 'Air of the pocket or behind the bladder as the cap is closed, or the whole foam',
    }),
  ),
  stiffness: z.optional(
    quantityField({
      dimension: 'volumeStiffness',
      from: '0 kPa/ml',
      to: '100000 kPa/ml',
      example: '40 kPa/ml',
      description: 'Pressure that the rubber or the foam walls themselves add per volume; by default none',
    }),
  ),
  'gas-fraction': z.optional(
    numberField(
      { from: 0.001, to: 0.99 },
      { description: 'Part of the foam, or of oil and air together, that is gas.', examples: [0.85] },
    ),
  ),
};

/** What makes room for the shaft. */
export const compensatorSchema = z.pipe(
  record(shape, { description: 'What makes room for the shaft that goes in.' }),
  z.transform((entry, payload): Compensator => {
    const { needs, takes } = keysOf[entry.kind];
    for (const key of ['volume', 'stiffness', 'gas-fraction'] as const) {
      if (entry[key] === undefined && needs.includes(key))
        report(payload, [], `needs "${key}" where the kind is ${entry.kind}`);
      if (entry[key] !== undefined && ![...needs, ...takes].includes(key))
        report(payload, [key], `has no meaning where the kind is ${entry.kind}`);
    }
    if (entry.kind === 'vented-bladder' && entry.stiffness === 0)
      report(payload, ['stiffness'], 'must be greater than 0 kPa/ml for a vented bladder, got 0 kPa/ml');
    return compensatorOf(entry);
  }),
);

function compensatorOf(entry: {
  readonly kind: Kind;
  readonly volume?: number | undefined;
  readonly stiffness?: number | undefined;
  readonly 'gas-fraction'?: number | undefined;
}): Compensator {
  // A key that is needed and missing has been reported; what stands in for it is never seen.
  const { kind, volume = 0, stiffness = 0, 'gas-fraction': gasFraction = 0 } = entry;
  switch (kind) {
    case 'air-pocket':
      return { kind, volume };
    case 'bladder':
      return { kind, volume, stiffness, vented: false };
    case 'vented-bladder':
      return { kind: 'bladder', volume, stiffness, vented: true };
    case 'foam':
      return { kind, volume, gasFraction, stiffness };
    case 'emulsion':
      return { kind, gasFraction };
    default:
      return { kind };
  }
}
