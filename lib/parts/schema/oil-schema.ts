import * as z from 'zod/mini';
import { formatQuantity } from '../../units/index.js';
import type { OilPart, Price } from '../parts.js';
import { mustBe, wrongKind } from '../source/wording.js';
import { fieldHelp } from './field-help.js';
import { isFinding, siliconeSheetTemperature, viscosityDefinition } from './oil-viscosity.js';
import { choiceField, nameField, numberField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { list, record } from './record.js';
import { report } from './schema-issue.js';
import { thinningSchema } from './thinning-schema.js';

const viscosity = quantityField({
  dimension: 'kinematicViscosity',
  from: '1 cSt',
  to: '100000 cSt',
  example: '350 cSt',
  description: 'Kinematic viscosity at the temperature given beside it',
});

const temperature = quantityField({
  dimension: 'temperature',
  from: '-40 °C',
  to: '200 °C',
  example: '25 °C',
  description: 'Temperature at which the viscosity was measured',
});

const labelTemperature = quantityField({
  dimension: 'temperature',
  from: '-40 °C',
  to: '200 °C',
  example: '25 °C',
  description: 'Temperature at which the viscosity was measured; by default 25 °C for silicone',
});

const price = z.pipe(
  z.string({ error: ({ input }) => wrongKind(input, 'text such as "7.90 EUR"') }).register(fieldHelp, {
    description: 'Price of the bottle: an amount and the three letters of the currency (ISO 4217).',
    examples: ['7.90 EUR'],
    pattern: '^\\d{1,6}(?:\\.\\d{1,3})? ?[A-Z]{3}$',
  }),
  z.transform((text: string, payload): Price => {
    const [, amount, currency] = /^(\d{1,6}(?:\.\d{1,3})?) ?([A-Z]{3})$/u.exec(text) ?? [];
    if (amount === undefined || currency === undefined) {
      report(payload, [], mustBe('an amount and a currency code of ISO 4217, such as "7.90 EUR"', text));
      return z.NEVER;
    }
    return { amount: Number(amount), currency };
  }),
);

const bottle = record(
  {
    volume: quantityField({
      dimension: 'volume',
      from: '1 ml',
      to: '20 l',
      example: '60 ml',
      description: 'Oil in a full bottle',
    }),
    price: z.optional(price),
  },
  { description: 'How the oil is sold.' },
);

const oilShape = {
  name: nameField({ description: 'Name by which a build refers to this oil.', examples: ['clear 350'] }),
  base: choiceField(['silicone', 'petroleum'], {
    description: 'What the oil is made of: it decides density, expansion, and the change with temperature.',
  }),
  viscosity: z.optional(viscosity),
  at: z.optional(labelTemperature),
  'viscosity-index': z.optional(
    numberField(
      { from: -100, to: 500 },
      { description: 'Viscosity index of the data sheet (ASTM D2270, ISO 2909).', examples: [95] },
    ),
  ),
  'viscosity-temperature-coefficient': z.optional(
    numberField(
      { from: 0.3, to: 0.9 },
      {
        description: 'Viscosity-temperature coefficient of a silicone: 1 − ν(210 °F)/ν(100 °F).',
        examples: [0.6],
      },
    ),
  ),
  points: z.optional(
    list(
      record({ at: temperature, viscosity }, { description: 'One measured viscosity.' }),
      { description: 'Viscosities measured at different temperatures; instead of "viscosity" and "at".' },
      { from: 2, to: 50 },
    ),
  ),
  'iso-grade': z.optional(
    numberField(
      { from: 2, to: 3200 },
      { description: 'ISO viscosity grade (ISO 3448), such as 32 for VG 32.', examples: [32] },
    ),
  ),
  'trade-weight': z.optional(
    numberField(
      { from: 10, to: 80 },
      {
        description: 'The "wt" of the label, an interval and not a number: common practice, no source.',
        examples: [35],
      },
    ),
  ),
  density: z.optional(
    quantityField({
      dimension: 'density',
      from: '600 kg/m³',
      to: '1300 kg/m³',
      example: '970 kg/m³',
      description: 'Density at 15 °C; by default the typical one of the base',
    }),
  ),
  'shear-thinning': z.optional(thinningSchema),
  bottle: z.optional(bottle),
};

const oilRecord = record(oilShape, {
  description: 'An oil and one way to know its viscosity.',
  oneOf: [
    { required: ['viscosity'] },
    { required: ['points'] },
    { required: ['iso-grade'] },
    { required: ['trade-weight'] },
  ],
});

/** An oil, as its owner knows it. */
export const oilSchema = z.pipe(
  oilRecord,
  z.transform((oil, payload): OilPart => {
    const { base, bottle, density, name, 'shear-thinning': thinning } = oil;
    const viscosity = viscosityDefinition(oil);
    if (isFinding(viscosity)) {
      report(payload, viscosity.path, viscosity.message);
      return z.NEVER;
    }
    return {
      name,
      definition: {
        base,
        viscosity,
        ...(density === undefined ? {} : { densityAt15Celsius: density }),
        ...(thinning === undefined ? {} : { shearThinning: thinning }),
      },
      ...(bottle === undefined ? {} : { bottle: soldAs(bottle) }),
      ...assumedTemperature(oil),
    };
  }),
);

/** What is said of a viscosity without a temperature. */
function assumedTemperature({
  name,
  viscosity,
  at,
}: z.output<typeof oilRecord>): Pick<OilPart, 'assumptions'> {
  if (viscosity === undefined || at !== undefined) return {};
  const written = formatQuantity(viscosity, 'kinematicViscosity', 'cSt', 6);
  const warm = formatQuantity(siliconeSheetTemperature, 'temperature', '°C', 3);
  return {
    assumptions: [
      `The ${written} of ${name} are taken at ${warm}, as data sheets of silicone oil state them: the parts file gives no temperature.`,
    ],
  };
}

function soldAs({ volume, price }: z.output<typeof bottle>): NonNullable<OilPart['bottle']> {
  return price === undefined ? { volume } : { volume, price };
}
