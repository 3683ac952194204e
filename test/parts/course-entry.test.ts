import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { withCourse } from '../../lib/parts/course-entry.js';
import { readParts } from '../../lib/parts/read-parts.js';
import { smallFile } from './small-file.js';

const record = '\uFEFFtime (s);travel (mm)\r\n0;0\r\n 0,01;1\r\n\r\n0,02;3\r\n';
const travels = [0.004, 0.005, 0.007];
const heights = 'time (s),height (mm)\n0,0\n0.1,5\n0.2,-1\n';

describe('a recording becomes part of the parts file', () => {
  test.each([
    ['YAML', smallFile],
    ['without a line end', smallFile.trimEnd()],
    ['JSON', JSON.stringify(parse(smallFile))],
  ])('%s', (_, text) => {
    const stroke = readParts(withCourse(text, 'recorded-stroke', { record, zeroAt: '4 mm' })).recordedStroke;
    expect(stroke?.times).toEqual([0, 0.01, 0.02]);
    stroke?.travels.forEach((travel, index) => {
      expect(travel).toBeCloseTo(travels[index] ?? Number.NaN, 12);
    });
    const both = withCourse(withCourse(text, 'recorded-stroke', { record }), 'recorded-ground', {
      record: heights,
    });
    expect(readParts(both).recordedGround?.values).toEqual([0, 0.005, -0.001]);
    expect(readParts(both).recordedStroke?.travels).toEqual([0, 0.001, 0.003]);
  });

  test('a second one takes the place of the first, and what else stands in the file stays', () => {
    const first = `${withCourse(smallFile, 'recorded-stroke', { record, zeroAt: '4 mm' })}tolerances: { bore: 0.01 mm } # a word\n`;
    const again = withCourse(first, 'recorded-stroke', { record: record.replace('0,02;3', '0,02;9') });
    expect(readParts(again).recordedStroke?.travels).toEqual([0, 0.001, 0.009]);
    expect(readParts(again).tolerances?.bore).toBeCloseTo(1e-5, 12);
    expect(again.match(/recorded-stroke/gu)).toHaveLength(1);
    expect(again).toContain('tolerances: { bore: 0.01 mm } # a word\n');
    expect(again.startsWith(smallFile.trimEnd())).toBe(true);
  });

  test('in a file, a fault is told at its record', () => {
    const bad = withCourse(smallFile, 'recorded-stroke', { record }).replace('0,01;1', '0,03;1');
    expect(() => readParts(bad)).toThrow(
      /recorded-stroke\.record: cannot be used: time must be above 0\.03 s, the time before it, in row 3/u,
    );
    expect(() => withCourse(smallFile, 'recorded-ground', { record })).toThrow('height (mm)');
    expect(() => readParts(withCourse(smallFile, 'recorded-stroke', { record, zeroAt: '4 N' }))).toThrow(
      'zero-at',
    );
  });
});
