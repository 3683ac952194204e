import * as z from 'zod/mini';
import { mustBe, wrongKind } from '../source/wording.js';
import { fieldHelp } from './field-help.js';
import { loadField } from './load-field.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';
import { report } from './schema-issue.js';

/** Letters that a record may have. */
const longestRecord = 500_000;

const recordField = z
  .string({ error: ({ input }) => wrongKind(input, 'the text of a dyno file, after "record: |"') })
  .check(
    z.check((payload) => {
      const { length } = payload.value;
      if (length > longestRecord)
        report(
          payload,
          [],
          mustBe(`text of at most ${longestRecord} letters; leave out every other row`, length),
        );
    }),
  )
  .register(fieldHelp, {
    description:
      'The dyno file: a header that names each column with its unit (time and travel, or speed, and force), then one row a sample.',
    maxLength: longestRecord,
  });

/** A dyno file in the parts file, and how it was taken. */
export const dynoSchema = record(
  {
    record: recordField,
    'zero-at': z.optional(
      quantityField({
        dimension: 'length',
        from: '0 mm',
        to: '200 mm',
        example: '4 mm',
        description:
          'How far the shaft is pushed in where the travel of the record is 0, 0 mm if left out; without travel, where the forces were read, the middle of the stroke if left out',
      }),
    ),
    uncertainty: z.optional(
      loadField(
        'Standard uncertainty of the sensor; 0.1 N by default, and 1 % of the force with it',
        '0.1 N',
      ),
    ),
  },
  { description: 'A shock on a dyno: forces in and out.' },
);
