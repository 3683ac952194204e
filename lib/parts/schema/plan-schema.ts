import * as z from 'zod/mini';
import type { DayTemperature } from '../../decisions/day/day-plan.js';
import type { CornerOfCar, PartTolerances, ShopOil, TimedShockPart } from '../parts.js';
import { mustBe, wrongKind } from '../source/wording.js';
import { fieldHelp } from './field-help.js';
import { oilSchema } from './oil-schema.js';
import { nameField, numberField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { list, record } from './record.js';
import { report } from './schema-issue.js';

/** A bottle that could be bought: an oil that says how it is sold. */
export const shopSchema = z.pipe(
  oilSchema,
  z.transform((oil, payload): ShopOil => {
    const { bottle } = oil;
    if (bottle === undefined) {
      report(payload, ['bottle'], 'is missing; write { volume: 60 ml, price: 7.90 EUR }');
      return z.NEVER;
    }
    return { ...oil, bottle };
  }),
);

const clock = z.pipe(
  z
    .string({ error: ({ input }) => wrongKind(input, 'a time of day such as "14:30", in quotes') })
    .register(fieldHelp, {
      description: 'Time of day, 24 hours.',
      examples: ['14:30'],
      pattern: '^([01]?\\d|2[0-3]):[0-5]\\d$',
    }),
  z.transform((text: string, payload): number => {
    const [, hours, minutes] = /^([01]?\d|2[0-3]):([0-5]\d)$/u.exec(text) ?? [];
    if (hours === undefined || minutes === undefined) {
      report(payload, [], mustBe('a time of day such as "14:30", 24 hours', text));
      return z.NEVER;
    }
    return 3600 * Number(hours) + 60 * Number(minutes);
  }),
);

/** Oil temperature at a time of the day. */
export const daySchema: z.ZodMiniType<DayTemperature> = record(
  {
    time: clock,
    temperature: quantityField({
      dimension: 'temperature',
      from: '-30 °C',
      to: '80 °C',
      example: '24 °C',
      description: 'Temperature of the oil in the shock',
    }),
  },
  { description: 'Oil temperature at a time of the day; times rise.' },
);

/** A shock timed with a stopwatch, its build by name. */
export type TimedEntry = Omit<TimedShockPart, 'build'> & { readonly build?: string | undefined };

/** A shock timed with a stopwatch. */
export const timedSchema: z.ZodMiniType<TimedEntry> = record(
  {
    name: nameField({
      description: 'Name of the shock, for example where it sits.',
      examples: ['front left'],
    }),
    build: z.optional(
      nameField({
        description:
          'Name of the build under "builds" that it is one of; may be left out where there is one build.',
      }),
    ),
    times: list(
      quantityField({
        dimension: 'time',
        from: '0.2 s',
        to: '600 s',
        example: '4.1 s',
        description: 'Time over the same travel under the same weight',
      }),
      { description: 'Repeated times, each over the same travel under the same weight.' },
      { from: 1, to: 50 },
    ),
  },
  { description: 'A shock timed with a stopwatch.' },
);

const off = (description: string) =>
  z.optional(
    quantityField({ dimension: 'length', from: '0 mm', to: '1 mm', example: '0.02 mm', description }),
  );

/** How far sizes may be off, plus or minus. */
export const tolerancesSchema = z.pipe(
  record(
    {
      'hole-diameter': off('Holes, plus or minus, all alike'),
      'hole-taper': off('Difference between the two ends of a hole, plus or minus'),
      thickness: off('Thickness of the piston, plus or minus'),
      bore: off('Bore, plus or minus'),
      gap: off('Gap between piston and bore on one side, plus or minus'),
      viscosity: z.optional(
        quantityField({
          dimension: 'ratio',
          from: '0 %',
          to: '30 %',
          example: '5 %',
          description: 'Viscosity against the label of the bottle, plus or minus',
        }),
      ),
      temperature: z.optional(
        quantityField({
          dimension: 'temperatureDifference',
          from: '0 K',
          to: '20 K',
          example: '3 K',
          description: 'Oil temperature, plus or minus',
        }),
      ),
      'gas-volume': z.optional(
        quantityField({
          dimension: 'volume',
          from: '0 ml',
          to: '20 ml',
          example: '0.1 ml',
          description: 'Gas that the fill leaves, plus or minus',
        }),
      ),
    },
    { description: 'How far sizes may be off, plus or minus; a drill is usually 0.02 mm off or less.' },
  ),
  z.transform((entry): PartTolerances => {
    const {
      'hole-diameter': holeDiameter,
      'hole-taper': holeTaper,
      'gas-volume': gasVolume,
      ...others
    } = entry;
    const all = { holeDiameter, holeTaper, ...others, gasVolume };
    return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
  }),
);

/** The corner of the car that a build carries. */
export const cornerSchema = z.pipe(
  record(
    {
      mass: quantityField({
        dimension: 'mass',
        from: '20 g',
        to: '10 kg',
        example: '420 g',
        description: 'Mass on this corner, from a scale under the wheel, less wheel and half the arm',
      }),
      'motion-ratio': numberField(
        { from: 0.2, to: 1.5 },
        { description: 'Shock travel for each wheel travel, measured with a ruler.', examples: [0.65] },
      ),
    },
    { description: 'The corner of the car that the shock carries.' },
  ),
  z.transform((entry): CornerOfCar => ({ sprungMass: entry.mass, motionRatio: entry['motion-ratio'] })),
);

/** Damping that is wanted, as that of the same shock on an oil at a temperature. */
export const wantedSchema = record(
  {
    oil: nameField({ description: 'Name of an oil under "oils" on which the shock feels right.' }),
    at: quantityField({
      dimension: 'temperature',
      from: '-30 °C',
      to: '80 °C',
      example: '20 °C',
      description: 'Oil temperature at which it feels right',
    }),
  },
  { description: 'Wanted damping: as this shock has it on an oil at a temperature.' },
);
