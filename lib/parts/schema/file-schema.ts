import * as z from 'zod/mini';
import { mustBe } from '../source/wording.js';
import { buildSchema } from './build-schema.js';
import { groundSchema, strokeSchema } from './course-schema.js';
import { type FieldHelp, fieldHelp } from './field-help.js';
import { measurementSchema } from './measurement-schema.js';
import { oilSchema } from './oil-schema.js';
import { pistonSchema } from './piston-schema.js';
import { noteField } from './plain-field.js';
import { daySchema, shopSchema, timedSchema, tolerancesSchema } from './plan-schema.js';
import { list, record } from './record.js';
import { shockSchema } from './shock-schema.js';
import { springSchema } from './spring-schema.js';

/** Version of the format. It changes only if a file of the old version would be read differently. */
const formatVersion = 1;

const dashpot = z
  .literal(formatVersion, {
    error: ({ input }) =>
      input === undefined
        ? `is missing; the file must begin with "dashpot: ${formatVersion}", the version of the format`
        : mustBe(`${formatVersion}, the version of the format that this program reads`, input),
  })
  .register(fieldHelp, { description: 'Version of the format.' });

function optionalList<Item extends z.core.$ZodType>(item: Item, help: FieldHelp) {
  return z.optional(list(item, help));
}

/** The whole file. */
export const fileSchema = record(
  {
    $schema: z.optional(noteField({ description: 'Where an editor finds this schema; not read.' })),
    dashpot,
    about: z.optional(noteField({ description: 'What this file is, for people.' })),
    oils: optionalList(oilSchema, { description: 'Oils.' }),
    pistons: optionalList(pistonSchema, { description: 'Pistons.' }),
    shocks: optionalList(shockSchema, { description: 'Shock bodies with shaft, gas and seals.' }),
    springs: optionalList(springSchema, { description: 'Springs.' }),
    builds: optionalList(buildSchema, { description: 'Shocks put together from these parts.' }),
    shop: optionalList(shopSchema, { description: 'Bottles that could be bought: oils with their bottle.' }),
    day: optionalList(daySchema, { description: 'Oil temperatures through a day.' }),
    timed: optionalList(timedSchema, { description: 'Shocks timed with a stopwatch, to find pairs.' }),
    measurements: optionalList(measurementSchema, {
      description: 'What was measured on shocks, oils and pistons.',
    }),
    tolerances: z.optional(tolerancesSchema),
    'recorded-stroke': z.optional(strokeSchema),
    'recorded-ground': z.optional(groundSchema),
  },
  {
    title: 'dashpot parts file',
    description:
      'Measured parts of small oil-filled shock absorbers: oils, pistons, shock bodies, springs, builds.',
  },
);
