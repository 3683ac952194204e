import * as z from 'zod/mini';
import { formatQuantity } from '../../units/index.js';
import type { ShockInside, ShockPartLengths } from '../shock-part.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';
import { report } from './schema-issue.js';

const length = (from: string, example: string, description: string) =>
  quantityField({ dimension: 'length', from, to: '300 mm', example, description });

const volume = (to: string, example: string, description: string) =>
  quantityField({ dimension: 'volume', from: '0 ml', to, example, description });

/** The inside of a body. */
export const insideSchema = z.pipe(
  record(
    {
      length: length('3 mm', '42 mm', 'Inner length from the seal seat to the rim under the cap'),
      'cap-volume': z.optional(
        volume('50 ml', '0.6 ml', 'Hollow of the cap above the rim, with what sits in it; by default none'),
      ),
      'solid-volume': z.optional(
        volume('50 ml', '0.3 ml', 'Piston, nut and spacers together; by default the piston alone'),
      ),
    },
    { description: 'The inside of the body, which oil, gas, piston and shaft share.' },
  ),
  z.transform((entry): ShockInside => {
    const { 'cap-volume': capVolume = 0, 'solid-volume': solidVolume } = entry;
    return { length: entry.length, capVolume, ...(solidVolume === undefined ? {} : { solidVolume }) };
  }),
);

/** Lengths from eyelet to eyelet. */
export const lengthsSchema = z.pipe(
  record(
    {
      'body-eyelet': length(
        '1 mm',
        '54 mm',
        'Centre of the upper eyelet to the face where the shaft comes out',
      ),
      shaft: length('1 mm', '48 mm', 'Shaft from the piston to the shoulder of the rod end'),
      'seal-stack': length('0 mm', '9 mm', 'From the seat on which the piston stops to that face'),
      'rod-end': length('0 mm', '8 mm', 'Shoulder of the rod end to the centre of the lower eyelet'),
      'droop-spacers': z.optional(length('0 mm', '2 mm', 'Spacers on the shaft inside; by default none')),
      'bump-stop': z.optional(
        length('0 mm', '3 mm', 'Stop or spacers on the shaft outside; by default none'),
      ),
      'piston-travel': z.optional(
        length('1 mm', '33 mm', 'Free travel of the piston inside, without spacers'),
      ),
    },
    { description: 'Lengths along the shock, from eyelet to eyelet.' },
  ),
  z.transform((entry, payload): ShockPartLengths => {
    const { 'droop-spacers': innerSpacers = 0, 'bump-stop': bumpStop = 0 } = entry;
    const taken = entry['seal-stack'] + innerSpacers + bumpStop;
    if (entry.shaft <= taken) {
      const millimetres = (value: number): string => formatQuantity(value, 'length', 'mm', 4);
      const message = `must be longer than seals, spacers and bump stop together, ${millimetres(taken)}, got ${millimetres(entry.shaft)}`;
      report(payload, ['shaft'], message);
    }
    return {
      bodyEyelet: entry['body-eyelet'],
      shaft: entry.shaft,
      sealStack: entry['seal-stack'],
      rodEnd: entry['rod-end'],
      innerSpacers,
      bumpStop,
      ...(entry['piston-travel'] === undefined ? {} : { pistonTravel: entry['piston-travel'] }),
    };
  }),
);
