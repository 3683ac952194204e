import * as z from 'zod/mini';
import { InputError } from '../../base/input-error.js';
import { type CourseKind, type RecordedCourse, readCourse } from '../../measure/dyno/read-course.js';
import type { RecordedStroke } from '../parts.js';
import { mustBe, wrongKind } from '../source/wording.js';
import { fieldHelp } from './field-help.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';
import { report } from './schema-issue.js';

/** Letters that a recording may have. */
const longestRecord = 500_000;

/** The text of a recording, read. */
function courseField(kind: CourseKind) {
  return z.pipe(
    z
      .string({ error: ({ input }) => wrongKind(input, 'the text of a recording, after "record: |"') })
      .register(fieldHelp, {
        description: `The recording: a header that names time and ${kind} with their units, then one row a sample.`,
        maxLength: longestRecord,
      }),
    z.transform((text: string, payload): RecordedCourse => {
      if (text.length > longestRecord) {
        report(
          payload,
          [],
          mustBe(`text of at most ${longestRecord} letters; leave out every other row`, text.length),
        );
        return z.NEVER;
      }
      try {
        return readCourse(text, kind);
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        report(payload, [], `cannot be used: ${error.message}`);
        return z.NEVER;
      }
    }),
  );
}

/** Travel of a shaft as somebody recorded it. */
export const strokeSchema: z.ZodMiniType<RecordedStroke> = z.pipe(
  record(
    {
      record: courseField('travel'),
      'zero-at': z.optional(
        quantityField({
          dimension: 'length',
          from: '-200 mm',
          to: '200 mm',
          example: '4 mm',
          description: 'How far the shaft is pushed in where the travel of the record is 0, 0 mm if left out',
        }),
      ),
    },
    { description: 'A recording of the travel of a shaft, pushing in positive.' },
  ),
  z.transform(({ record: { times, values }, 'zero-at': zeroAt = 0 }): RecordedStroke => {
    // A sum of two decimals must not leave the stroke by its last bit.
    return { times, travels: values.map((value) => Number((value + zeroAt).toPrecision(12))) };
  }),
);

/** Height of the ground under a wheel as somebody measured it. */
export const groundSchema: z.ZodMiniType<RecordedCourse> = z.pipe(
  record(
    { record: courseField('height') },
    { description: 'Height of the ground under the wheel against time.' },
  ),
  z.transform(({ record: course }): RecordedCourse => course),
);
