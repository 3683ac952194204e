import { readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readCommandLine } from '../../lib/runner/command/command-line.js';
import { runCommand } from '../../lib/runner/run-command.js';
import { demoParts, realNotebooks } from '../live/notebook-folders.js';
import { removeFolders, run } from './sample-run.js';

afterAll(removeFolders);

/** Two seconds of a motion that begins at rest, as a logger writes it. */
const long = [
  'time (s),travel (mm)',
  ...Array.from(
    { length: 1000 },
    (_, row) => `${(row / 500).toFixed(3)},${(12 - 6 * Math.cos((2 * Math.PI * 3 * row) / 500)).toFixed(3)}`,
  ),
].join('\n');

describe('a recording on the command line', () => {
  it('is read with where its travel is 0, under names that no parameter has', () => {
    const { courses, parameters } = readCommandLine(
      ['--stroke', 'a.csv', '--stroke-zero-at', '4 mm', '--ground', 'b.csv'],
      [],
    );
    expect(courses).toEqual([
      { key: 'recorded-stroke', file: 'a.csv', zeroAt: '4 mm' },
      { key: 'recorded-ground', file: 'b.csv' },
    ]);
    expect(parameters).toEqual({});
    expect(readCommandLine([], []).courses).toEqual([]);
    expect(() => readCommandLine(['--stroke-zero-at', '4 mm'], [])).toThrow('as in --stroke FILE');
  });

  it('leads the answer of a page that stays below its limit, and a fault is told by file and row', async () => {
    const { folder } = await run('--help');
    writeFileSync(path.join(folder, 'ride.csv'), long);
    writeFileSync(path.join(folder, 'ground.csv'), 'time (s);height (mm)\n0;0\n0,1;20\n0,2;0\n');
    writeFileSync(path.join(folder, 'bad.csv'), 'time (s);height (mm)\n0;0\n0,2;20\n0,1;0\n');
    const errors: string[] = [];
    const command = (...args: readonly string[]) =>
      runCommand(args, {
        workingFolder: folder,
        notebookFolder: realNotebooks,
        demoParts,
        outFolder: folder,
        version: '1.2.3',
        print: () => undefined,
        printError: (line) => errors.push(line),
      });
    expect(await command('bench-stroke', '--stroke', 'ride.csv')).toBe(0);
    const answerOf = (name: string): string =>
      JSON.parse(readFileSync(path.join(folder, name, `${name}.json`), 'utf8')).answer;
    // 2 π · 3 Hz · 6 mm = 113 mm/s.
    expect(answerOf('bench-stroke')).toMatch(
      /^Moved as recorded, 2 s long, 6 mm to 18 mm in, up to 113 mm\/s in/u,
    );
    expect(statSync(path.join(folder, 'bench-stroke', 'bench-stroke.html')).size).toBeLessThan(450_000);
    expect(await command('landing', '--ground', 'ground.csv')).toBe(0);
    expect(answerOf('landing')).toMatch(/^Over the recorded ground, 0\.2 s long and 20 mm/u);
    expect(await command('landing', '--ground', 'bad.csv')).toBe(2);
    expect(errors.pop()).toBe('bad.csv: time must be above 0.2 s, the time before it, in row 3, got 0.1 s');
    expect(await command('bench-stroke', '--stroke', 'ground.csv')).toBe(2);
    expect(errors.pop()).toContain('ground.csv: travel must be a column such as "travel (mm)"');
  });
});
