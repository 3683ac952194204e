import * as z from 'zod/mini';
import type { CompensatorKind, CompensatorPart } from '../shock-part.js';
import { choiceField, numberField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';
import { report } from './schema-issue.js';

const kinds = ['air-pocket', 'bladder', 'vented-bladder', 'foam', 'emulsion', 'none'] as const;
const someKeys = ['volume', 'stiffness', 'gas-fraction', 'side'] as const;

/** Which of these keys mean something for a kind. */
const keysOf: Readonly<Record<CompensatorKind, readonly (typeof someKeys)[number][]>> = {
  'air-pocket': ['volume', 'side'],
  bladder: ['volume', 'stiffness', 'side'],
  'vented-bladder': ['volume', 'stiffness', 'side'],
  foam: ['volume', 'stiffness', 'gas-fraction', 'side'],
  emulsion: ['gas-fraction'],
  none: [],
};

const shape = {
  kind: choiceField(kinds, {
    description:
      'air-pocket: air under the cap. bladder: a rubber cup or diaphragm with sealed air behind it; vented-bladder: with a hole in the cap. foam: a closed-cell insert. emulsion: air beaten into the oil. none: a cap with a bleed screw and nothing under it.',
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
  side: z.optional(
    choiceField(['blind-side', 'shaft-side'], {
      description: 'Side of the piston on which it sits; by default the blind side, under the cap.',
    }),
  ),
  exponent: z.optional(
    numberField(
      { from: 1, to: 1.4 },
      {
        description:
          'Polytropic exponent of a stroke: 1 slow, at constant temperature; 1.4 fast, air that sheds no heat. By default that of a pocket of this size.',
        examples: [1.3],
      },
    ),
  ),
  'air-release-pressure': z.optional(
    quantityField({
      dimension: 'pressure',
      from: '0 bar',
      to: '0.2 bar',
      example: '0.1 bar',
      description:
        'Absolute pressure at which air comes out of the oil; by default 0, the most any oil holds',
    }),
  ),
};

/** What makes room for the shaft. */
export const compensatorSchema = z.pipe(
  record(shape, { description: 'What makes room for the shaft that goes in.' }),
  z.transform((entry, payload): CompensatorPart => {
    for (const key of someKeys) {
      if (entry[key] !== undefined && !keysOf[entry.kind].includes(key))
        report(payload, [key], `has no meaning where the kind is ${entry.kind}`);
    }
    const { kind, volume, stiffness, side, exponent } = entry;
    const { 'gas-fraction': gasFraction, 'air-release-pressure': airReleasePressure } = entry;
    return {
      kind,
      ...(volume === undefined ? {} : { volume }),
      ...(stiffness === undefined ? {} : { stiffness }),
      ...(gasFraction === undefined ? {} : { gasFraction }),
      ...(side === undefined ? {} : { side }),
      ...(exponent === undefined ? {} : { exponent }),
      ...(airReleasePressure === undefined ? {} : { airReleasePressure }),
    };
  }),
);
