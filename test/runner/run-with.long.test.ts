import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { defineNotebook } from '../../lib/page/index.js';
import { smallFile } from '../parts/small-file.js';
import { facts, madeUpWorkshop, telling } from './made-up-workshop.js';
import { notebook as refusing } from './notebooks/refusing.js';

const both = madeUpWorkshop([telling, refusing]);
const alone = madeUpWorkshop([telling], { ...facts, remarks: ['something is not installed'] });
const broken = madeUpWorkshop([
  defineNotebook({
    ...refusing,
    name: 'broken',
    run: () => {
      throw new TypeError('a fault of ours');
    },
  }),
]);
afterAll(() => {
  for (const { remove } of [both, alone, broken]) remove();
});
const { folder, run } = both;
const write = (name: string, text: string): void => writeFileSync(path.join(folder, name), text);

describe('one page', () => {
  test('is written into a folder of its name, and said', async () => {
    const { exitCode, printed, errors, asked } = await run('telling', '--out', 'one');
    const out = path.join(folder, 'one');
    expect([exitCode, errors, asked]).toEqual([0, [], ['telling']]);
    expect(readdirSync(out, { recursive: true }).sort()).toEqual([
      'telling',
      'telling/telling.html',
      'telling/telling.json',
    ]);
    expect(printed).toEqual([
      'telling: 0 figures, 1 of 1 checks passed',
      path.join(out, 'telling/telling.html'),
    ]);
  });

  test('may be asked for with a word before it', async () => {
    expect((await run('render', 'telling', '--out', 'one')).printed[0]).toBe(
      'telling: 0 figures, 1 of 1 checks passed',
    );
    expect((await run('telling', 'render')).exitCode).toBe(2);
  });

  test('with a check that fails is written, and ends with 1', async () => {
    const { exitCode, printed } = await run('telling', '--temperature', '60 °C', '--out', 'hot');
    expect(exitCode).toBe(1);
    expect(printed[0]).toContain('check failed: It is cool');
    expect(existsSync(path.join(folder, 'hot/telling/telling.html'))).toBe(true);
  });

  test('that the file cannot answer is not written where it was asked for, and ends with 2', async () => {
    const { exitCode, printed, errors } = await run('refusing', '--out', 'refused');
    expect([exitCode, printed]).toEqual([2, []]);
    expect(errors).toHaveLength(1);
    expect(existsSync(path.join(folder, 'refused'))).toBe(false);
  });

  test('with a setting out of its range is refused before anything is bundled', async () => {
    const { exitCode, errors, asked } = await run('telling', '--temperature', '61 °C');
    expect([exitCode, asked]).toEqual([2, []]);
    expect(errors[0]).toContain('out of range');
  });
});

describe('all pages', () => {
  test('are written with an index and as one file; one without an answer says so, and the run ends with 1', async () => {
    const { exitCode, printed, errors, asked } = await run('--out', 'all');
    const out = path.join(folder, 'all');
    expect([exitCode, errors, asked]).toEqual([1, [], ['telling', 'refusing']]);
    expect(printed.slice(2)).toEqual(
      ['telling/telling.html', 'refusing/refusing.html', 'index.html', 'dashpot.html'].map((name) =>
        path.join(out, name),
      ),
    );
    expect(printed[0]).toBe('telling: 0 figures, 1 of 1 checks passed');
    expect(printed[1]).toMatch(/^refusing: not answered, since /u);
    expect(readFileSync(path.join(out, 'index.html'), 'utf8')).toContain('Builds: front.');
    expect(readFileSync(path.join(out, 'dashpot.html'), 'utf8')).toContain('A refusal');
  });

  test('that are all well end with 0, and what is not installed is said at last', async () => {
    const { exitCode, errors, printed } = await alone.run();
    expect([exitCode, errors]).toEqual([0, ['something is not installed']]);
    expect(printed.at(-1)).toBe(path.join(alone.folder, 'out/dashpot.html'));
  });

  test('of which one check failed end with 1, and a fault of ours is no answer', async () => {
    const hot = madeUpWorkshop([
      defineNotebook({ ...telling, run: (parts) => telling.run(parts, { temperature: 333 }) }),
    ]);
    expect((await hot.run()).exitCode).toBe(1);
    hot.remove();
    await expect(broken.run()).rejects.toThrow('a fault of ours');
    await expect(broken.run('broken')).rejects.toThrow('a fault of ours');
  });
});

describe('another word', () => {
  test('checks a file', async () => {
    expect(await run('check', 'parts.yaml')).toMatchObject({
      exitCode: 0,
      printed: ['parts.yaml: can be read'],
    });
    write('wrong.yaml', 'dashpot: 2\n');
    expect(await run('check', 'wrong.yaml')).toMatchObject({ exitCode: 2, errors: [] });
  });

  test('writes a table of forces, one line a row', async () => {
    const { exitCode, printed } = await run('table', '--temperature', '20 °C');
    expect(exitCode).toBe(0);
    expect(printed).toHaveLength(1);
    expect(printed[0]).not.toMatch(/\r|\s$/u);
    expect(printed[0]?.split('\n').length).toBeGreaterThan(20);
  });

  test('tells of the command, or of a page', async () => {
    const all = await run('--help');
    expect([all.exitCode, all.asked]).toEqual([0, []]);
    expect(all.printed[0]).toContain('What is in the file?');
    expect(all.printed[0]).toContain('What does it say?');
    const one = await run('telling', '--help');
    expect(one.exitCode).toBe(0);
    expect(one.printed[0]).toContain('call telling');
    expect(one.printed[0]).toContain('--temperature');
  });

  test('asks for a first file, where somebody types', async () => {
    const { exitCode, errors } = await run('--new', 'mine.yaml');
    expect(exitCode).toBe(2);
    expect(errors[0]).toMatch(/^the input ended before/u);
    expect(existsSync(path.join(folder, 'mine.yaml'))).toBe(false);
  });
});

test('a notebook of the user is found by its path, and is the only page', async () => {
  write(
    'mine.ts',
    "export const notebook = { name: 'mine', order: 1, title: 'Mine', question: 'Why?', parameters: {}, run: () => ({ answer: 'So.', blocks: [], sources: [] }) };",
  );
  const { exitCode, printed, errors, asked } = await run('./mine.ts', '--out', 'own');
  expect([exitCode, errors, asked]).toEqual([0, [], [path.join(folder, 'mine.ts')]]);
  expect(printed.at(-1)).toBe(path.join(folder, 'own/mine/mine.html'));
  expect(existsSync(path.join(folder, 'own/index.html'))).toBe(false);
  expect((await run('./mine.ts', '--help')).printed[0]).toContain('call ./mine.ts');
});

describe('recorded files', () => {
  const dyno = 'speed (mm/s);force (N)\n10;1,2\n20;2,3\n-10;-1,1\n-20;-2,2\n';
  const stroke = `time (s);travel (mm)\n${Array.from({ length: 21 }, (_, row) => `${row / 10};${12 - 6 * Math.cos(row)}`).join('\n')}\n`;
  const textOf = (out: string): string =>
    readFileSync(path.join(folder, out, 'telling/telling.html'), 'utf8');

  test('are taken into the parts that the page carries, and the file of the user stays', async () => {
    write('run.csv', dyno);
    write('ride.csv', stroke);
    expect((await run('telling', '--out', 'plain')).exitCode).toBe(0);
    expect(textOf('plain')).not.toContain('20;2,3');
    const { exitCode, errors } = await run(
      'telling',
      '--dyno',
      'run.csv',
      '--dyno-temperature',
      '22 °C',
      '--out',
      'dyno',
    );
    expect([exitCode, errors]).toEqual([0, []]);
    expect(textOf('dyno')).toContain('20;2,3');
    expect((await run('telling', '--stroke', 'ride.csv', '--out', 'stroke')).errors).toEqual([]);
    expect(textOf('stroke')).toContain('0.1;');
    expect(textOf('stroke')).not.toContain('20;2,3');
    expect(readFileSync(path.join(folder, 'parts.yaml'), 'utf8')).toBe(smallFile);
  });

  test('are refused by their own name', async () => {
    write('bad.csv', dyno.replace('2,3', ''));
    const { exitCode, errors } = await run('telling', '--dyno', 'bad.csv', '--dyno-temperature', '22 °C');
    expect(exitCode).toBe(2);
    expect(errors[0]).toMatch(/^bad\.csv: /u);
  });

  test('that make the parts unusable are told with both names', async () => {
    write('run.csv', dyno);
    const { exitCode, errors } = await run('telling', '--dyno', 'run.csv', '--dyno-temperature', '900 °C');
    expect(exitCode).toBe(2);
    expect(errors[0]).toMatch(/parts\.yaml with run\.csv:\d+:\d+ .*900 °C/u);
  });

  test('are needed where the page shall take the shocks as measured', async () => {
    const { exitCode, errors } = await run('telling', '--use', 'measured');
    expect([exitCode, errors]).toEqual([
      2,
      ['use must be stated where the parts file has no "measurements", got measured'],
    ]);
  });
});
