import * as z from 'zod/mini';
import { parseQuantity, QuantityError } from '../../units/index.js';
import { quantityPattern } from '../../units/quantity-text.js';
import { wrongKind } from '../source/wording.js';
import { type FieldHelp, fieldHelp } from './field-help.js';
import { choiceField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';
import { report } from './schema-issue.js';

/** How far the shaft is pushed in: a length [m], or an end of the stroke. */
export type ShaftPlace = number | 'fully out' | 'fully in';

const longestStroke = 0.2;
const places = 'text such as "fully out", "fully in" or "14 mm"';

/** How far the shaft is pushed in, in words or as a length. */
export function shaftPlaceField(help: FieldHelp) {
  return z.pipe(
    z.string({ error: ({ input }) => wrongKind(input, places) }).register(fieldHelp, {
      examples: ['fully out', 'fully in', '14 mm'],
      pattern: `^fully (?:out|in)$|${quantityPattern('length')}`,
      ...help,
    }),
    z.transform((text: string, payload): ShaftPlace => {
      if (text === 'fully out' || text === 'fully in') return text;
      try {
        const length = parseQuantity(text, 'length');
        if (!(length >= 0 && length <= longestStroke))
          report(payload, [], `must be 0 mm to 200 mm, got ${JSON.stringify(text)}`);
        return length;
      } catch (error) {
        if (!(error instanceof QuantityError)) throw error;
        report(payload, [], `must be ${places}: ${error.message}`);
        return z.NEVER;
      }
    }),
  );
}

/** The place as a length [m]. */
export function placeInStroke(place: ShaftPlace, stroke: number): number {
  if (place === 'fully out') return 0;
  return place === 'fully in' ? stroke : place;
}

/** How often a shock was bled, in words. */
const bleeds = ['never', 'once', 'twice', 'three times'] as const;

const volume = (to: string, example: string, description: string) =>
  z.optional(quantityField({ dimension: 'volume', from: '0 ml', to, example, description }));

/** How a shock was closed, and what the syringe gave. */
export const closingSchema = z.pipe(
  record(
    {
      shaft: z.optional(
        shaftPlaceField({
          description:
            'How far the shaft was pushed in as the cap or the bleed was closed: fully out, fully in, or a length; by default as it is usual for the kind of compensator (0 mm to 200 mm).',
        }),
      ),
      temperature: z.optional(
        quantityField({
          dimension: 'temperature',
          from: '-30 °C',
          to: '80 °C',
          example: '20 °C',
          description: 'Temperature of the oil as it was closed; by default 20 °C, a guess',
        }),
      ),
      'ambient-pressure': z.optional(
        quantityField({
          dimension: 'pressure',
          from: '0.5 bar',
          to: '1.2 bar',
          example: '1 atm',
          description: 'Absolute pressure of the air outside; by default 1 atm',
        }),
      ),
      'free-air': volume(
        '50 ml',
        '0.03 ml',
        'Air left in the oil as bubbles; by default a guess from "bleed"',
      ),
      bleed: z.optional(
        choiceField(bleeds, { description: 'How often it was bled; by default once.', default: 'once' }),
      ),
      poured: volume('500 ml', '4.2 ml', 'Oil poured into the empty body, read on the syringe'),
      'drawn-off': volume(
        '100 ml',
        '0.5 ml',
        'Oil that left again, by syringe or bleed, after the body was full to the rim with the shaft fully out',
      ),
    },
    { description: 'How the shock was closed, and what the syringe gave.' },
  ),
  z.transform((entry, payload) => {
    const { shaft, temperature, 'ambient-pressure': ambientPressure, bleed, poured } = entry;
    const { 'free-air': freeAir, 'drawn-off': drawnOff } = entry;
    if (bleed !== undefined && freeAir !== undefined)
      report(payload, ['bleed'], 'must be left out where "free-air" says what is left');
    if (poured !== undefined && drawnOff !== undefined && drawnOff >= poured)
      report(payload, ['drawn-off'], 'must be less than what was poured');
    return {
      ...(shaft === undefined ? {} : { shaft }),
      ...(temperature === undefined ? {} : { temperature }),
      ...(ambientPressure === undefined ? {} : { ambientPressure }),
      ...(freeAir === undefined ? {} : { freeAir }),
      ...(bleed === undefined ? {} : { bleeds: bleeds.indexOf(bleed) }),
      ...(poured === undefined ? {} : { poured }),
      ...(drawnOff === undefined ? {} : { drawnOff }),
    };
  }),
);
