import { describe, expect, it } from 'vitest';
import { PartsFileError, readParts } from '../../lib/parts/index.js';
import { refusal } from './refusal.js';
import { changed } from './small-file.js';

describe('the error', () => {
  it('reports all that is wrong, in the order of the file', () => {
    const text = changed('11.95 mm', '1195 mm')
      .replace('at: 25 °C', 'at: warm')
      .replace('oil: clear', 'oil: cleer');
    try {
      readParts(text, 'my-parts.yaml');
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(PartsFileError);
      if (!(error instanceof PartsFileError)) return;
      expect(error.fileName).toBe('my-parts.yaml');
      expect(error.problemCount).toBe(3);
      expect(error.problems.map(({ line, column, path }) => ({ line, column, path }))).toEqual([
        { line: 7, column: 9, path: 'oils[0].at' },
        { line: 16, column: 15, path: 'pistons[0].diameter' },
        { line: 33, column: 10, path: 'builds[0].oil' },
      ]);
      expect(error.message.split('\n')[1]).toBe(
        'my-parts.yaml:16:15 pistons[0].diameter: must be 3 mm to 40 mm, got "1195 mm"',
      );
    }
  });

  it('writes out 20 problems and counts the rest', () => {
    const lines = refusal(`dashpot: 1\nsprings:\n${'  - {}\n'.repeat(10)}`).split('\n');
    expect(lines).toHaveLength(21);
    expect(lines[20]).toBe('and 10 more');
  });

  it('finds its place in a file with Windows line ends and a byte order mark', () => {
    const text = `\uFEFF${changed('1.7 mm }', '-1 mm }').replaceAll('\n', '\r\n')}`;
    expect(refusal(text)).toBe('19:31 pistons[0].holes[0].diameter: must be greater than 0 mm, got "-1 mm"');
  });

  it('finds its place in JSON', () => {
    expect(refusal('{"dashpot": 1,\n "springs": [{"name": "s", "rate": 4, "free-length": "45 mm"}]}')).toBe(
      '2:36 springs[0].rate: needs a unit, for example "0.45 N/mm", got 4',
    );
  });
});
