import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { Notebook } from '../../lib/page/index.js';
import { readCommandLine } from '../../lib/runner/command/command-line.js';
import { runCommand } from '../../lib/runner/run-command.js';
import { smallFile } from '../parts/small-file.js';
import { removeFolders, run } from './sample-run.js';

afterAll(removeFolders);

const csv = 'speed (mm/s);force (N)\n10;1,2\n20;2,3\n-10;-1,1\n-20;-2,2\n';
const none: readonly Notebook[] = [];
const refusal =
  (...args: readonly string[]) =>
  () =>
    readCommandLine(args, none);

describe('a dyno file on the command line', () => {
  it('is read with what is said of it, under names that no parameter has', () => {
    const args = [
      '--dyno',
      'a.csv',
      '--dyno-temperature',
      '22 °C',
      '--dyno-build',
      'front',
      '--dyno-zero-at',
      '4 mm',
    ];
    const { dyno, parameters } = readCommandLine(args, none);
    expect(dyno).toEqual({ file: 'a.csv', temperature: '22 °C', build: 'front', zeroAt: '4 mm' });
    expect(parameters).toEqual({});
  });

  it('needs the oil temperature; what is said of none is refused', () => {
    expect(refusal('--dyno', 'a.csv')).toThrow('as in --dyno-temperature "22 °C"');
    expect(refusal('--dyno-build', 'front')).toThrow('--dyno-build says something of a dyno file; name it');
    expect(refusal('--dyno', 'a', '--dyno', 'b', '--dyno-temperature', '1 °C')).toThrow(
      'given more than once',
    );
  });

  it('becomes part of the parts that the page carries, and the page answers with it', async () => {
    const { folder } = await run('--help');
    writeFileSync(path.join(folder, 'parts.yaml'), smallFile);
    writeFileSync(path.join(folder, 'run.csv'), csv);
    const errors: string[] = [];
    const args = [
      'what-you-have',
      '--parts',
      'parts.yaml',
      '--dyno',
      'run.csv',
      '--dyno-temperature',
      '22 °C',
    ];
    const exitCode = await runCommand(args, {
      workingFolder: folder,
      notebookFolder: path.resolve(import.meta.dirname, '../../notebooks'),
      demoParts: path.join(folder, 'parts.yaml'),
      outFolder: path.join(folder, 'out'),
      version: '1.2.3',
      print: () => undefined,
      printError: (line) => errors.push(line),
    });
    expect(errors).toEqual([]);
    expect(exitCode).toBeLessThan(2);
    const html = readFileSync(path.join(folder, 'out/what-you-have/what-you-have.html'), 'utf8');
    expect(html).toContain('What the dyno shows, against the fitted shock');
    expect(html).toContain('20;2,3');
    // What the user keeps stays as it was.
    expect(readFileSync(path.join(folder, 'parts.yaml'), 'utf8')).toBe(smallFile);
  });

  it('is refused under its own name', async () => {
    const { folder } = await run('--help');
    writeFileSync(path.join(folder, 'run.csv'), csv);
    writeFileSync(path.join(folder, 'bad.csv'), csv.replace('2,3', ''));
    const said: string[] = [];
    const command = (...args: readonly string[]) =>
      runCommand(args, {
        workingFolder: folder,
        notebookFolder: path.resolve(import.meta.dirname, 'notebooks'),
        demoParts: path.join(folder, 'parts.json'),
        outFolder: path.join(folder, 'out'),
        version: '1.2.3',
        print: () => undefined,
        printError: (line) => said.push(line),
      });
    const warm = ['--dyno-temperature', '22 °C'];
    expect(await command('sample', '--dyno', 'run.csv', ...warm, '--dyno-build', 'mine')).toBe(2);
    expect(said.pop()).toContain('parts.json with run.csv');
    expect(await command('sample', '--dyno', 'bad.csv', ...warm)).toBe(2);
    expect(said.pop()).toBe('bad.csv: force must be a number in row 2, got ""');
    expect(await command('sample', '--dyno', 'lost.csv', ...warm)).toBe(2);
    expect(said.pop()).toBe('cannot read lost.csv: there is no such file');
  });
});

describe('the shocks as measured', () => {
  it('is said with one of two words', () => {
    expect(readCommandLine([], none).asMeasured).toBe(false);
    expect(readCommandLine(['--use', 'measured'], none).asMeasured).toBe(true);
    expect(refusal('--use', 'fitted')).toThrow('--use takes measured or stated, not "fitted"');
  });

  it('is refused where nothing was measured', async () => {
    const { exitCode, errors } = await run('sample', '--use', 'measured');
    expect(exitCode).toBe(2);
    expect(errors).toContain('no "measurements"');
  });
});
