import * as z from 'zod/mini';
import { shaftPlaceField } from './closing-schema.js';
import { countField, nameField, numberField } from './plain-field.js';
import { cornerSchema, wantedSchema } from './plan-schema.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';

const measuredSchema = record(
  {
    viscosity: quantityField({
      dimension: 'kinematicViscosity',
      from: '1 cSt',
      to: '100000 cSt',
      example: '338 cSt',
      description: 'Of its oil at 25 °C',
    }),
    holes: numberField(
      { from: 0.8, to: 1.25 },
      {
        description: 'Diameter of its first holes over that stated; the others are larger by as much.',
        examples: [1.006],
      },
    ),
    friction: quantityField({
      dimension: 'force',
      from: '0 N',
      to: '20 N',
      example: '0.21 N',
      description: 'Of its seals while moving',
    }),
    doubt: quantityField({
      dimension: 'ratio',
      from: '0 %',
      to: '100 %',
      example: '4 %',
      description: 'How far its damping may be off, 19 times of 20',
    }),
  },
  {
    description:
      'What its measurements say, in place of what is stated; "npm start -- --use measured" writes it into the pages.',
  },
);

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
    measured: z.optional(measuredSchema),
  },
  { description: 'One shock put together from the parts above.' },
);

/** A build with its parts still by name. */
export type BuildEntry = z.output<typeof buildSchema>;
