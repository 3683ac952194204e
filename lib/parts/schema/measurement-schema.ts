import * as z from 'zod/mini';
import { dynoSchema } from './dyno-schema.js';
import { loadField } from './load-field.js';
import { choiceField, nameField, numberField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { list, record } from './record.js';
import { report } from './schema-issue.js';

const length = (from: string, to: string, example: string, description: string) =>
  quantityField({ dimension: 'length', from, to, example, description });
const time = (from: string, to: string, example: string, description: string) =>
  quantityField({ dimension: 'time', from, to, example, description });
const place = (example: string, description: string) => length('0 mm', '200 mm', example, description);

const dropSchema = record(
  {
    weight: quantityField({
      dimension: 'mass',
      from: '1 g',
      to: '20 kg',
      example: '50 g',
      description: 'What hangs on the shaft or stands on it, shaft and rod end counted in',
    }),
    times: list(
      time('0.01 s', '600 s', '2.18 s', 'Time over the stretch'),
      { description: 'Repeated times of this weight over this stretch.' },
      { from: 1, to: 50 },
    ),
    by: choiceField(['stopwatch', 'film'], {
      description: 'Whether a hand took the times or the frames of a film were counted.',
    }),
    'frames-per-second': z.optional(
      numberField({ from: 10, to: 10_000 }, { description: 'Of the film.', examples: [240] }),
    ),
    from: place('25 mm', 'How far the shaft is pushed in where the timing begins'),
    to: place('3 mm', 'The same where it ends'),
    uncertainty: z.optional(
      time(
        '0.1 ms',
        '5 s',
        '0.1 s',
        'Standard uncertainty of one time; by default 0.1 s by hand, two frames of a film',
      ),
    ),
  },
  { description: 'A weight that pulls the shaft out or pushes it in, timed over a stretch of the stroke.' },
);

const scaleSchema = record(
  {
    at: place('14 mm', 'How far the shaft is pushed in'),
    'pushing-in': loadField('What the scale shows while the shaft goes in slowly', '48 g'),
    'letting-out': loadField('The same at this place while it comes out slowly', '8 g'),
    uncertainty: z.optional(loadField('Standard uncertainty of a reading; 2 g by default', '2 g')),
  },
  { description: 'Two readings of a scale at one place of the stroke.' },
);

const ballSchema = record(
  {
    diameter: length('0.1 mm', '20 mm', '1.5 mm', 'Of the ball'),
    density: quantityField({
      dimension: 'density',
      from: '1100 kg/m³',
      to: '20000 kg/m³',
      example: '7800 kg/m³',
      description: 'Of the ball; steel has 7800 kg/m³',
    }),
    tube: length('2 mm', '200 mm', '25 mm', 'Bore of the tube, ten times the ball or more'),
    stretch: length('5 mm', '1000 mm', '100 mm', 'Timed in the middle third of the tube'),
    time: time('0.1 s', '6000 s', '5.1 s', 'Time over it'),
  },
  { description: 'A small ball that sinks in the oil.' },
);

const cupSchema = record(
  {
    cup: choiceField(['Ford 1', 'Ford 2', 'Ford 3', 'Ford 4', 'Ford 5', 'ISO 3', 'ISO 4', 'ISO 5', 'ISO 6'], {
      description: 'Which cup: of ASTM D1200 or ISO 2431.',
    }),
    time: time('1 s', '600 s', '46 s', 'Until the stream breaks'),
  },
  { description: 'A flow cup of a standard, emptied of the oil.' },
);

const holeSchema = record(
  {
    diameter: length('0.1 mm', '10 mm', '1.31 mm', 'Of a hole of the first group of the piston'),
    by: choiceField(['pin gauge', 'drill shank'], { description: 'What fitted into the hole.' }),
  },
  { description: 'A hole, by what fits into it.' },
);

const oilSchema = record(
  {
    volume: quantityField({
      dimension: 'volume',
      from: '1 ml',
      to: '5 l',
      example: '20 ml',
      description: 'Of the oil',
    }),
    mass: quantityField({
      dimension: 'mass',
      from: '0.5 g',
      to: '10 kg',
      example: '19.4 g',
      description: 'Of that volume',
    }),
  },
  { description: 'A volume of oil on the scale.' },
);

/** What a measurement may be; one entry of the file is one of these. */
export const measurementKinds = ['drop', 'scale', 'ball', 'cup', 'hole', 'weighed', 'dyno'] as const;

/** One measurement, its build by name. */
export const measurementSchema = z.pipe(
  record(
    {
      shock: z.optional(
        nameField({
          description: 'Which of the shocks of the build, for example where it sits.',
          examples: ['front left'],
        }),
      ),
      build: z.optional(
        nameField({
          description:
            'Name of the build under "builds" that was measured; may be left out where there is one build.',
        }),
      ),
      temperature: z.optional(
        quantityField({
          dimension: 'temperature',
          from: '-30 °C',
          to: '80 °C',
          example: '22 °C',
          description: 'Of the oil, by the thermometer; only a hole needs none',
        }),
      ),
      drop: z.optional(dropSchema),
      scale: z.optional(scaleSchema),
      ball: z.optional(ballSchema),
      cup: z.optional(cupSchema),
      hole: z.optional(holeSchema),
      weighed: z.optional(oilSchema),
      dyno: z.optional(dynoSchema),
    },
    { description: 'Something that was measured on a shock, its oil or its piston.' },
  ),
  z.transform((entry, payload) => {
    const kinds = measurementKinds.filter((kind) => entry[kind] !== undefined);
    if (kinds.length === 0)
      report(payload, [], `needs what was measured: one of ${measurementKinds.join(', ')}`);
    if (kinds.length > 1) report(payload, [], `is ${kinds.join(' and ')} at once; write one entry for each`);
    if (entry.temperature === undefined && kinds[0] !== 'hole' && kinds.length > 0) {
      report(payload, ['temperature'], 'is missing; write the temperature of the oil, for example "22 °C"');
    }
    const { drop } = entry;
    if (drop?.by === 'film' && drop['frames-per-second'] === undefined && drop.uncertainty === undefined) {
      report(
        payload,
        ['drop', 'frames-per-second'],
        'is missing; write how many frames a second the film has, for example 240',
      );
    }
    return entry;
  }),
);

/** One measurement as the file has it, in SI. */
export type MeasurementEntry = z.output<typeof measurementSchema>;
