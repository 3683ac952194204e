import * as z from 'zod/mini';
import { shaftPlaceField } from './closing-schema.js';
import { countField, nameField } from './plain-field.js';
import { cornerSchema, wantedSchema } from './plan-schema.js';
import { record } from './record.js';

/** A build as the file has it: parts by name. */
export const buildSchema = record(
  {
    name: nameField({ description: 'Name of this build.', examples: ['rear, hot track'] }),
    shock: nameField({ description: 'Name of a shock under "shocks".' }),
    piston: nameField({ description: 'Name of a piston under "pistons".' }),
    oil: nameField({ description: 'Name of an oil under "oils".' }),
    spring: z.optional(nameField({ description: 'Name of a spring under "springs".' })),
    quantity: z.optional(
      countField(100, { description: 'How many shocks are built like this.', default: 1, examples: [2] }),
    ),
    'close-at': z.optional(
      shaftPlaceField({
        description:
          'How far the shaft is pushed in as the cap or the bleed is closed, where it is not as "closing" of the shock says (0 mm to 200 mm).',
      }),
    ),
    corner: z.optional(cornerSchema),
    wanted: z.optional(wantedSchema),
  },
  { description: 'One shock put together from the parts above.' },
);

/** A build with its parts still by name. */
export type BuildEntry = z.output<typeof buildSchema>;
