import * as z from 'zod/mini';
import type { SpringPart } from '../parts.js';
import { nameField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';

/** A coil spring. */
export const springSchema = z.pipe(
  record(
    {
      name: nameField({
        description: 'Name by which a build refers to this spring.',
        examples: ['front soft'],
      }),
      rate: quantityField({
        dimension: 'springRate',
        from: '0.01 N/mm',
        to: '20 N/mm',
        example: '0.45 N/mm',
        description: 'Spring rate: the force for each millimetre',
      }),
      'free-length': quantityField({
        dimension: 'length',
        from: '5 mm',
        to: '300 mm',
        example: '45 mm',
        description: 'Length without load',
      }),
    },
    { description: 'A coil spring.' },
  ),
  z.transform(
    (entry): SpringPart => ({ name: entry.name, rate: entry.rate, freeLength: entry['free-length'] }),
  ),
);
