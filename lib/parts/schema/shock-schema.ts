import * as z from 'zod/mini';
import { standardAtmosphere } from '../../base/constants.js';
import type { GasSide } from '../../damper/gas.js';
import { formatQuantity } from '../../units/index.js';
import { insideFaults } from '../inside-faults.js';
import type { ShockPart } from '../parts.js';
import { compensatorSchema } from './compensator-schema.js';
import { insideSchema, lengthsSchema } from './lengths-schema.js';
import { choiceField, nameField, numberField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';
import { report } from './schema-issue.js';
import { guessedSeal, sealSchema } from './seal-schema.js';

/** Air in a pocket that a stroke leaves no time to shed its heat: adiabatic, 1.4. */
const defaultExponent = 1.4;

const gasSchema = record(
  {
    volume: quantityField({
      dimension: 'volume',
      from: '1 mm³',
      to: '200 ml',
      example: '1.2 ml',
      description: 'Volume of the gas with the shaft fully out',
    }),
    pressure: quantityField({
      dimension: 'pressure',
      from: '0.1 bar',
      to: '10 bar',
      example: '1 atm',
      description:
        'Absolute pressure of the gas with the shaft fully out (the air around us has about 1 bar)',
    }),
    exponent: z.optional(
      numberField(
        { from: 1, to: 1.4 },
        {
          description:
            'Polytropic exponent: 1 slow, at constant temperature; 1.4 fast, air that sheds no heat.',
          default: defaultExponent,
        },
      ),
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
    layout: z.optional(
      choiceField(['blind-side', 'shaft-side', 'emulsion'], {
        description:
          'Where the gas is: behind one face of the piston, or mixed through the oil; by default blind-side.',
      }),
    ),
    'air-release-pressure': z.optional(
      quantityField({
        dimension: 'pressure',
        from: '0 bar',
        to: '0.2 bar',
        example: '0.1 bar',
        description:
          'Absolute pressure at which air comes out of the oil and it tears; by default 0, the most any oil holds',
      }),
    ),
  },
  { description: 'The gas that makes room for the shaft: an air pocket, or what a bladder or foam holds.' },
);

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
  'oil-volume': quantityField({
    dimension: 'volume',
    from: '0.05 ml',
    to: '500 ml',
    example: '6 ml',
    description: 'Oil that one fill takes',
  }),
  gas: gasSchema,
  seal: z.optional(sealSchema),
  inside: z.optional(insideSchema),
  compensator: z.optional(compensatorSchema),
  lengths: z.optional(lengthsSchema),
};

/** A shock body with its shaft, gas and seals. */
export const shockSchema = z.pipe(
  record(shockShape, { description: 'A shock body with its shaft, gas and seals, without piston and oil.' }),
  z.transform((entry, payload): ShockPart => {
    const gas = gasSide(entry.gas);
    const { seal = guessedSeal, inside, compensator, lengths } = entry;
    const shock = {
      name: entry.name,
      bore: entry.bore,
      shaftDiameter: entry.shaft,
      stroke: entry.stroke,
      oilVolume: entry['oil-volume'],
      gas,
      seal,
      ...(inside === undefined ? {} : { inside }),
      ...(compensator === undefined ? {} : { compensator }),
      ...(lengths === undefined ? {} : { lengths }),
    };
    for (const [path, message] of shockFaults(shock)) report(payload, path, message);
    return shock;
  }),
);

function gasSide(entry: z.output<typeof gasSchema>): GasSide {
  return {
    volume: entry.volume,
    pressure: entry.pressure,
    polytropicExponent: entry.exponent ?? defaultExponent,
    ambientPressure: entry['ambient-pressure'] ?? standardAtmosphere,
    ...(entry.layout === undefined ? {} : { layout: entry.layout }),
    ...(entry['air-release-pressure'] === undefined
      ? {}
      : { airReleasePressure: entry['air-release-pressure'] }),
  };
}

function shockFaults(shock: ShockPart): readonly (readonly [readonly string[], string])[] {
  const faults: (readonly [readonly string[], string])[] = [];
  const millimetres = (value: number): string => formatQuantity(value, 'length', 'mm', 4);
  const { bore, gas, seal, shaftDiameter, stroke } = shock;
  if (shaftDiameter >= bore)
    faults.push([
      ['shaft'],
      `must be thinner than the bore of ${millimetres(bore)}, got ${millimetres(shaftDiameter)}`,
    ]);
  const shaftArea = (Math.PI / 4) * shaftDiameter ** 2;
  if (gas.volume <= shaftArea * stroke) {
    const cubic = (value: number): string => formatQuantity(value, 'volume', 'mm³', 4);
    faults.push([
      ['gas', 'volume'],
      `must be more than ${cubic(shaftArea * stroke)}, which the ${millimetres(shaftDiameter)} shaft pushes aside over ` +
        `the stroke of ${millimetres(stroke)}, got ${cubic(gas.volume)}: the shock locks with the shaft ` +
        `${millimetres(gas.volume / shaftArea)} in`,
    ]);
  }
  const release = gas.airReleasePressure ?? 0;
  if (release >= gas.pressure) {
    const bar = (value: number): string => formatQuantity(value, 'pressure', 'bar', 4);
    faults.push([
      ['gas', 'air-release-pressure'],
      `must be below the gas pressure of ${bar(gas.pressure)}, got ${bar(release)}`,
    ]);
  }
  if (seal.breakawayForce < seal.kineticForce) {
    const newtons = (value: number): string => formatQuantity(value, 'force', 'N', 4);
    faults.push([
      ['seal', 'breakaway-friction'],
      `must be at least the moving friction of ${newtons(seal.kineticForce)}, got ${newtons(seal.breakawayForce)}`,
    ]);
  }
  return [...faults, ...insideFaults(shock)];
}
