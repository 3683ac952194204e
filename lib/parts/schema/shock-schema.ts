import * as z from 'zod/mini';
import { guessedSeal } from '../assembly/seal-interval.js';
import type { ShockPart } from '../shock-part.js';
import { closingSchema, placeInStroke } from './closing-schema.js';
import { compensatorSchema } from './compensator-schema.js';
import { insideSchema, lengthsSchema } from './lengths-schema.js';
import { nameField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';
import { sealSchema } from './seal-schema.js';

/** Where each key of the former `gas` went. */
const gasMoved =
  'was replaced: what makes room is said once. "volume" is "compensator.volume" now, or follows from "inside" and "oil-volume", or from ' +
  '"closing.drawn-off"; "pressure" follows from how the shock was closed ("closing.shaft", "closing.ambient-pressure"); "exponent" and ' +
  '"air-release-pressure" are in "compensator"; "ambient-pressure" is in "closing"; "layout" is "compensator.side", or the kind "emulsion"';

const shockShape = {
  name: nameField({ description: 'Name by which a build refers to this shock.', examples: ['rear 16 mm'] }),
  bore: quantityField({
    dimension: 'length',
    from: '3 mm',
    to: '40 mm',
    example: '12 mm',
    description: 'Inner diameter of the body',
  }),
  shaft: quantityField({
    dimension: 'length',
    from: '1 mm',
    to: '15 mm',
    example: '3 mm',
    description: 'Diameter of the shaft',
  }),
  stroke: quantityField({
    dimension: 'length',
    from: '1 mm',
    to: '200 mm',
    example: '28 mm',
    description: 'Travel of the shaft from fully out to the stop',
  }),
  'oil-volume': z.optional(
    quantityField({
      dimension: 'volume',
      from: '0.05 ml',
      to: '500 ml',
      example: '6 ml',
      description: 'Oil that stays in the closed shock',
    }),
  ),
  seal: z.optional(sealSchema),
  inside: z.optional(insideSchema),
  compensator: z.optional(compensatorSchema),
  closing: z.optional(closingSchema),
  lengths: z.optional(lengthsSchema),
};

/** A shock body with its shaft, what makes room for it, and its seals. */
export const shockSchema = z.pipe(
  record(
    shockShape,
    { description: 'A shock body with its shaft and what makes room for it, without piston and oil.' },
    { gas: gasMoved },
  ),
  z.transform((entry): ShockPart => {
    const { seal = guessedSeal, inside, compensator, closing, lengths, 'oil-volume': oilVolume } = entry;
    return {
      name: entry.name,
      bore: entry.bore,
      shaftDiameter: entry.shaft,
      stroke: entry.stroke,
      ...(oilVolume === undefined ? {} : { oilVolume }),
      seal,
      ...(inside === undefined ? {} : { inside }),
      ...(compensator === undefined ? {} : { compensator }),
      ...(closing === undefined ? {} : { closing: closingOf(closing, entry.stroke) }),
      ...(lengths === undefined ? {} : { lengths }),
    };
  }),
);

function closingOf(
  { shaft, ...others }: z.output<typeof closingSchema>,
  stroke: number,
): NonNullable<ShockPart['closing']> {
  return { ...others, ...(shaft === undefined ? {} : { position: placeInStroke(shaft, stroke) }) };
}
