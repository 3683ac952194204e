import { describe, expect, test } from 'vitest';
import type { Notebook } from '../../lib/page/index.js';
import { CommandError } from '../../lib/runner/command/command-error.js';
import { readCommandLine } from '../../lib/runner/command/command-line.js';

const named = (name: string, parameters: object) => ({ name, parameters }) as unknown as Notebook;
const landing = named('landing', { dropHeight: {}, oil: {} });
const notebooks = [landing, named('spread', {})];
const read = (...args: readonly string[]) => readCommandLine(args, notebooks);
const bare = { help: false, asMeasured: false, courses: [], parameters: {} };

describe('what a command line asks for', () => {
  test('nothing: all notebooks as they are', () => expect(read()).toEqual(bare));

  test('a notebook, its settings as often as they are given, files and a folder', () => {
    expect(
      read(
        'landing',
        '--drop-height',
        '20 cm',
        '--oil',
        'thin',
        '--oil=thick',
        '--parts',
        'my.yaml',
        '--out',
        'o',
      ),
    ).toEqual({
      ...bare,
      notebook: landing,
      partsFile: 'my.yaml',
      outFolder: 'o',
      parameters: { 'drop-height': ['20 cm'], oil: ['thin', 'thick'] },
    });
    expect(read('--new', 'first.yaml')).toEqual({ ...bare, newFile: 'first.yaml' });
  });

  test.each([['--help'], ['-h'], ['landing', '--help']])('help: %s %s', (...args) => {
    expect(read(...args).help).toBe(true);
  });

  test('builds as measured, or as stated', () => {
    expect(read('--use', 'measured').asMeasured).toBe(true);
    expect(read('--use', 'stated').asMeasured).toBe(false);
  });

  test('a dyno file with what is said of it, and nothing that is not said', () => {
    const least = { file: 'd.csv', temperature: '22 °C' };
    expect(read('--dyno', 'd.csv', '--dyno-temperature', '22 °C').dyno).toEqual(least);
    const rest = ['--dyno-build', 'front', '--dyno-shock', '2', '--dyno-zero-at', '14 mm'];
    expect(read('--dyno', 'd.csv', '--dyno-temperature', '22 °C', ...rest).dyno).toEqual({
      ...least,
      build: 'front',
      shock: '2',
      zeroAt: '14 mm',
    });
  });

  test('recordings of a stroke and of the ground, each under its key', () => {
    expect(read('--stroke', 's.csv', '--ground', 'g.csv').courses).toEqual([
      { key: 'recorded-stroke', file: 's.csv' },
      { key: 'recorded-ground', file: 'g.csv' },
    ]);
    expect(read('--stroke', 's.csv', '--stroke-zero-at', '3 mm').courses).toEqual([
      { key: 'recorded-stroke', file: 's.csv', zeroAt: '3 mm' },
    ]);
  });
});

describe('what it cannot mean is refused with what would do', () => {
  test.each([
    [['landin'], /no notebook "landin".*landing/su],
    [['landing', '--drop-hight', '1 m'], /no option --drop-hight.*--drop-height/su],
    [['--drop-height', '1 m'], /no option --drop-height[\s\S]*Parameters come after the name of a notebook/u],
    [['-x'], /no option -x/u],
    [['--use', 'both'], '--use takes measured or stated, not "both"'],
    [['--parts'], '--parts needs a value, as in --parts "…"'],
    [['--parts='], '--parts needs a value'],
    [['--parts', '--out'], '--parts needs a value'],
    [['--parts', 'a', '--parts', 'b'], '--parts is given more than once'],
    [
      ['landing', '--drop-height', '20', 'cm'],
      '"cm" belongs to no option; write a value with spaces in quotes, as in --temperature "12 °C"',
    ],
    [['--parts', 'a', 'landing'], 'write the notebook first: landing --…'],
    [['landing', 'spread'], '"spread" belongs to no option'],
    [['--dyno-build', 'front'], '--dyno-build says something of a dyno file; name it, as in --dyno FILE'],
    [['--dyno', 'd.csv'], '--dyno needs the oil temperature with it, as in --dyno-temperature "22 °C"'],
    [
      ['--stroke-zero-at', '3 mm'],
      '--stroke-zero-at says something of a recording; name it, as in --stroke FILE',
    ],
  ])('%j', (args, words) => {
    expect(() => read(...args)).toThrow(CommandError);
    expect(() => read(...args)).toThrow(words);
  });
});
