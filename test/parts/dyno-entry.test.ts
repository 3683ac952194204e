import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { InputError } from '../../lib/base/input-error.js';
import { type DynoEntry, withDyno } from '../../lib/parts/dyno-entry.js';
import { readParts } from '../../lib/parts/read-parts.js';
import { PartsFileError } from '../../lib/parts/source/parts-file-error.js';
import { smallFile } from './small-file.js';

const record = '\uFEFFtime (s);travel (mm);force (N)\r\n0;0;1\r\n 0,01;1;2\r\n\r\n0,02;2;2,5\r\n0,03;3;2,6';
const entry: DynoEntry = { record, temperature: '22 °C', zeroAt: '4 mm' };
const first =
  'measurements:\n  - { temperature: 22 °C, cup: { cup: Ford 4, time: 46 s } }\n# a word at the end\n';
const taken = {
  record: { time: [0, 0.01, 0.02, 0.03], travel: [0, 0.001, 0.002, 0.003], force: [1, 2, 2.5, 2.6] },
  setup: { temperature: 295.15, position: 0.004, uncertainty: 0.1, relativeUncertainty: 0.01 },
};

describe('a dyno file becomes the last of the measurements', () => {
  test.each([
    ['without measurements', smallFile],
    ['without a line end', smallFile.trimEnd()],
    ['after others', `${smallFile}\n${first}`],
    ['after others at the margin', `${smallFile}\n${first.replace('  - ', '- ')}`],
    [
      'in a list in brackets',
      `${smallFile}\nmeasurements: [{ hole: { diameter: 1.31 mm, by: pin gauge } }]\n`,
    ],
    ['as JSON', JSON.stringify(parse(smallFile))],
  ])('%s', (_, text) => {
    const { measurements = [] } = readParts(withDyno(text, entry));
    expect(measurements.at(-1)?.dyno).toEqual(taken);
    expect(measurements).toHaveLength(text.includes('measurements') ? 2 : 1);
  });

  test('what stands in the file stays as it is', () => {
    const whole = withDyno(`${smallFile}\n${first}`, entry);
    const at = whole.indexOf('  - temperature: "22 °C"');
    const after = whole.indexOf('# a word at the end');
    expect(whole.slice(0, at) + whole.slice(after)).toBe(`${smallFile}\n${first}`);
  });

  test('build and shock by their names, in quotes of any kind', () => {
    const named = withDyno(smallFile.replaceAll('name: ', 'name: '), { ...entry, shock: 'left: "the" one' });
    expect(readParts(named).measurements?.[0]?.shock).toBe('left: "the" one');
  });

  test('without travel the forces were read in the middle of the stroke, without a zero the travel begins fully out', () => {
    const bare = { record, temperature: '22 °C' };
    expect(readParts(withDyno(smallFile, bare)).measurements?.[0]?.dyno?.setup.position).toBe(0);
    const speeds = { ...bare, record: 'speed (mm/s),force (N)\n10,1\n20,2\n-10,-1\n-20,-2\n' };
    const { measurements = [] } = readParts(withDyno(smallFile, speeds));
    const [{ build, dyno } = {}] = measurements;
    expect(dyno?.setup.position).toBeCloseTo((build?.shock.stroke ?? 0) / 2, 12);
  });
});

describe('what is refused', () => {
  test.each([
    [
      'an empty cell, by its row',
      'speed (mm/s),force (N)\n10,1\n20,\n30,3\n40,4',
      'force must be a number in row 2',
    ],
    ['time that runs back', 'time (s),travel (mm),force (N)\n0,1,1\n1,2,1\n0.5,3,1\n2,4,1', 'in row 3'],
    [
      'a decimal comma between commas',
      'speed (mm/s),force (N)\n10,1\n20,5,2\n30,3\n40,4',
      'with ; between the columns',
    ],
    ['a column without a unit', 'time,travel (mm),force (N)\n0,1,1', 'headed with a unit (s, ms'],
    ['a picture', '\u0089PNG', 'two or more columns'],
  ])('%s', (_, text, said) => {
    expect(() => withDyno(smallFile, { ...entry, record: text })).toThrow(InputError);
    expect(() => withDyno(smallFile, { ...entry, record: text })).toThrow(said);
    const written = `${smallFile}\nmeasurements:\n  - temperature: 22 °C\n    dyno: { record: ${JSON.stringify(text)} }\n`;
    expect(() => readParts(written)).toThrow(`measurements[0].dyno.record`);
    expect(() => readParts(written)).toThrow(said);
  });

  test.each([
    [
      'a travel beyond the stroke',
      { zeroAt: '150 mm' },
      'zero-at: must be such that the travel of the record, which would go from 150 mm to 153 mm in',
    ],
    ['a temperature without a unit', { temperature: '22' }, 'measurements[0].temperature'],
    ['a build that is not there', { build: 'nowhere' }, 'measurements[0].build'],
  ])('%s', (_, change, said) => {
    const attempt = () => readParts(withDyno(smallFile, { ...entry, ...change }));
    expect(attempt).toThrow(PartsFileError);
    expect(attempt).toThrow(said);
  });

  test('a dyno without a temperature, and one that is a drop too', () => {
    const text = (rest: string) =>
      `${smallFile}\nmeasurements:\n  - { dyno: { record: "speed (mm/s),force (N)\\n1,1\\n2,2\\n3,3\\n4,4" }${rest} }\n`;
    expect(() => readParts(text(''))).toThrow('write the temperature of the oil');
    expect(() => readParts(text(', temperature: 20 °C, cup: { cup: Ford 4, time: 46 s }'))).toThrow(
      'is cup and dyno at once',
    );
  });
});
