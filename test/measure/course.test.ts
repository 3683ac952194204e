import { describe, expect, test } from 'vitest';
import { longestGap, speedOfLastDigit } from '../../lib/measure/dyno/course-doubts.js';
import { readCourse } from '../../lib/measure/dyno/read-course.js';

const rows = (...lines: readonly string[]) => ['time (s);travel (mm)', ...lines].join('\n');

describe('a recording of travel or height against time', () => {
  test('units and decimal commas are read, and time begins at 0', () => {
    const course = readCourse(
      '# mine\nt (ms);note;Travel [cm]\n500;a;0,1\n510;b;0,25\n530;c;0,2\n',
      'travel',
    );
    expect(course.times).toEqual([0, 0.010000000000000009, 0.030000000000000027]);
    expect(course.values).toEqual([0.001, 0.0025, 0.002]);
    expect(readCourse('time (s),height (in)\n0,0\n1,1\n2,0', 'height').values[1]).toBeCloseTo(0.0254, 12);
  });

  test.each([
    [
      'time that runs back',
      rows('0;1', '0,1;2', '0,05;3'),
      /time must be above 0\.1 s, .* in row 3, got 0\.05 s/u,
    ],
    ['a time twice', rows('0;1', '0,1;2', '0,1;3'), 'in row 3'],
    ['an empty cell', rows('0;1', '0,1;', '0,2;3'), 'travel must be a number in row 2, got ""'],
    ['a word', rows('0;1', '0,1;up', '0,2;3'), 'travel must be a number in row 2, got "up"'],
    ['no unit', 'time;travel (mm)\n0;1\n1;2\n2;3', 'time must be headed with a unit (s, ms'],
    ['a unit of something else', 'time (s);travel (N)\n0;1\n1;2\n2;3', 'travel must be headed with a unit'],
    ['no travel', 'time (s);height (mm)\n0;1\n1;2\n2;3', 'travel must be a column such as "travel (mm)"'],
    [
      'commas for two things',
      'time (s),travel (mm)\n0,0,1\n0,1,2\n0,2,3',
      'row 1 must be written with decimal points, or with ; between the columns',
    ],
    ['two rows', rows('0;1', '1;2'), 'rows must be 3 or more, got 2'],
    [
      'more than a minute',
      rows('0;1', '30;2', '61;3'),
      'time must be at most 60 s; cut a piece out, got 61 s',
    ],
    [
      'too many rows',
      rows(...Array.from({ length: 5001 }, (_, index) => `${index / 100};1`)),
      'rows must be at most 5000; cut a piece out, or leave out every other row, got 5001',
    ],
  ])('%s is refused by row or column', (_, text, said) => {
    expect(() => readCourse(text, 'travel')).toThrow(said);
  });

  test('a gap is the longest stretch beyond five usual steps in which the shaft moved', () => {
    const times = [0, 0.01, 0.02, 0.03, 0.13, 0.14, 0.34, 0.35];
    expect(longestGap({ times, values: [0, 1, 2, 3, 4, 5, 5, 6] })?.rows).toEqual([4, 5]);
    expect(longestGap({ times, values: [0, 1, 2, 3, 4, 5, 6, 7] })?.rows).toEqual([6, 7]);
    const longerFirst = [0, 0.01, 0.02, 0.03, 0.23, 0.24, 0.34, 0.35];
    expect(longestGap({ times: longerFirst, values: [0, 1, 2, 3, 4, 5, 6, 7] })?.rows).toEqual([4, 5]);
    expect(longestGap({ times: [0, 0.01, 0.02, 0.06], values: [0, 1, 2, 3] })).toBeUndefined();
  });

  test('what the last digit pretends: tenths of a millimetre every millisecond are 100 mm/s', () => {
    const times = Array.from({ length: 200 }, (_, index) => index / 1000);
    const rounded = (step: number) => times.map((time) => Math.round((0.05 * time) / step) * step);
    expect(speedOfLastDigit({ times, values: rounded(1e-4) })).toBeCloseTo(0.1, 6);
    expect(speedOfLastDigit({ times, values: rounded(1e-6) })).toBeUndefined();
    expect(speedOfLastDigit({ times, values: times.map(() => 0.01) })).toBeUndefined();
  });
});
