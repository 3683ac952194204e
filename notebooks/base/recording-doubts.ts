import { longestGap, speedOfLastDigit } from '../../lib/measure/dyno/course-doubts.js';
import type { RecordedCourse } from '../../lib/measure/dyno/read-course.js';
import { formatQuantity } from '../../lib/units/index.js';
import { shaftSpeed } from './wording.js';

/** What of a recording may mislead, as sentences. */
export function recordingDoubts(course: RecordedCourse): readonly string[] {
  const gap = longestGap(course);
  const pretended = speedOfLastDigit(course);
  return [
    ...(gap === undefined
      ? []
      : [
          `Between rows ${gap.rows[0]} and ${gap.rows[1]} of the recording nothing is written for ${formatQuantity(gap.length, 'time', 's', 2)}: the line drawn across is a guess.`,
        ]),
    ...(pretended === undefined
      ? []
      : [
          `The last digit of the recording pretends ${shaftSpeed(pretended)} from row to row: what is slower than that is noise, and so are its forces. Record one digit more, or leave out every other row.`,
        ]),
  ];
}
