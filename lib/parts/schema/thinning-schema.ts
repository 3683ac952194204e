import * as z from 'zod/mini';
import type { MeasuredThinning } from '../../fluid/oil/oil-definition.js';
import { sharpestBend } from '../../fluid/shear/thinning-viscosity.js';
import { choiceField, numberField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';
import { report } from './schema-issue.js';

/** How an oil thins when sheared, as its owner measured it. */
export const thinningSchema = z.pipe(
  record(
    {
      law: choiceField(['carreau', 'carreau-yasuda', 'cross'], {
        description: 'Law that was fitted to the measurement.',
      }),
      time: quantityField({
        dimension: 'time',
        from: '0.001 µs',
        to: '1 s',
        example: '6 µs',
        description: 'Time constant of the law at the temperature given beside it',
      }),
      at: quantityField({
        dimension: 'temperature',
        from: '-40 °C',
        to: '200 °C',
        example: '25 °C',
        description: 'Temperature at which the thinning was measured',
      }),
      exponent: numberField(
        { from: 0, to: 1 },
        { description: 'Exponent: n of Carreau and Yasuda (1 does not thin), m of Cross (0 does not thin).' },
      ),
      bend: z.optional(
        numberField({ from: 0.1, to: 10 }, { description: 'Sharpness a of Yasuda; Carreau has 2.' }),
      ),
      floor: z.optional(
        numberField(
          { from: 0, to: 0.99 },
          { description: 'Viscosity at the highest shear over that at rest.', default: 0 },
        ),
      ),
    },
    {
      description: 'How the oil thins when sheared, from a measurement of your own; without it, it does not.',
    },
  ),
  z.transform((entry, payload): MeasuredThinning => {
    const { at: temperature, bend, exponent, floor = 0, law, time } = entry;
    if ((bend !== undefined) !== (law === 'carreau-yasuda')) {
      report(payload, ['bend'], 'goes with the law "carreau-yasuda", and only with it');
    }
    if (law === 'cross') {
      if (exponent > 0.95) report(payload, ['exponent'], 'must be at most 0.95 with the law "cross"');
      return { temperature, thinning: { kind: 'cross', time, exponent, floor } };
    }
    if (exponent < 0.05) report(payload, ['exponent'], 'must be at least 0.05 with this law');
    const sharpest = sharpestBend(exponent);
    if (exponent >= 0.05 && bend !== undefined && bend > sharpest) {
      report(
        payload,
        ['bend'],
        `must be at most ${sharpest} with the exponent ${exponent}: the flow would fall while the pressure rises`,
      );
    }
    return { temperature, thinning: { kind: 'carreau-yasuda', time, exponent, bend: bend ?? 2, floor } };
  }),
);
