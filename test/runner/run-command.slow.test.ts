import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { Resvg } from '@resvg/resvg-js';
import { afterAll, describe, expect, it } from 'vitest';
import { removeFolders, run } from './sample-run.js';

afterAll(removeFolders);

describe('a word for something else than a page', () => {
  it('checks a parts file and ends as it says', async () => {
    const good = await run('check', 'parts.json');
    expect([good.exitCode, good.printed, good.errors]).toEqual([0, 'parts.json: can be read', '']);
    expect((await run('check', 'gone.yaml')).exitCode).not.toBe(0);
  });

  it('has no table of forces where there is no build', async () => {
    const { exitCode, printed, errors } = await run('table');
    expect([exitCode, printed, errors]).toEqual([2, '', 'the parts file has no build']);
  });

  it('asks for no first file where nobody types', async () => {
    const { exitCode, errors } = await run('--new', 'mine.yaml');
    expect(exitCode).toBe(2);
    expect(errors).toMatch(/^the input ended before ".*" was answered; nothing is written$/u);
  });

  it('looks for a notebook of the user where its path says', async () => {
    const { exitCode, errors } = await run('./gone.ts');
    expect([exitCode, errors]).toEqual([2, 'cannot read ./gone.ts: there is no such file']);
  });

  it('may say that a page is to be rendered', async () => {
    const { printed } = await run('render', 'sample', '--temperature', '12 °C');
    expect(printed.split('\n')[0]).toBe('sample: 1 figure, 1 of 1 checks passed');
  });
});

describe('a run', () => {
  it('writes page, data and pictures, and says where', async () => {
    const { exitCode, printed, errors, folder } = await run(
      'sample',
      '--temperature',
      '12 °C',
      '--oils',
      'thick',
    );
    expect(errors).toBe('');
    expect(exitCode).toBe(0);
    const out = path.join(folder, 'out', 'sample');
    expect(readdirSync(out).sort()).toEqual([
      'force.csv',
      'force.png',
      'force.svg',
      'names.csv',
      'sample.html',
      'sample.json',
    ]);
    expect(printed.split('\n')).toEqual([
      'sample: 1 figure, 1 of 1 checks passed',
      path.join(out, 'sample.html'),
    ]);
    const html = readFileSync(path.join(out, 'sample.html'), 'utf8');
    expect(html).toContain('<dt>Oil temperature</dt><dd>12\u00a0°C</dd>');
    expect(html).toContain('<dt>Oils</dt><dd>thick</dd>');
    expect(html).toContain('SIL OPEN FONT LICENSE');
    expect(html.length).toBeLessThan(600_000);
  });

  it('reads a parts file and fills a folder from where the user stands', async () => {
    const { exitCode, folder } = await run('sample', '--parts', 'parts.json', '--out', 'elsewhere');
    expect(exitCode).toBe(0);
    expect(existsSync(path.join(folder, 'elsewhere', 'sample', 'sample.html'))).toBe(true);
    expect(existsSync(path.join(folder, 'out'))).toBe(false);
  });

  it('says at once where a folder cannot be made, before anything is drawn', async () => {
    const { exitCode, printed, errors } = await run('sample', '--out', 'parts.json/below');
    expect(exitCode).toBe(2);
    expect(printed).toBe('');
    expect(errors).toMatch(/^cannot write into [^\n]*below: a part of the path is not a folder$/u);
  });

  it('leaves no sign in an error that a terminal would obey', async () => {
    const { exitCode, errors } = await run('sample', '--parts', 'a\u001b[2Jb\u202ec.yaml');
    expect(exitCode).toBe(2);
    expect(errors).toContain('a\\u001b[2Jb\\u202ec.yaml: there is no such file');
  });

  it('nor in one of the watching command', () => {
    const root = fileURLToPath(new URL('../..', import.meta.url));
    const { status, stderr } = spawnSync(
      process.execPath,
      ['--import', 'tsx', 'lib/runner/watch/watch-main.ts', 'a\u001b[2Jb\u202ec'],
      { cwd: root, encoding: 'utf8' },
    );
    expect(status).toBe(2);
    expect(stderr).toContain('a\\u001b[2Jb\\u202ec');
  });

  it('ends with 1 where a check of a page fails, and writes the page that says so', async () => {
    const { exitCode, printed, folder } = await run('sample', '--temperature', '60 °C');
    expect(exitCode).toBe(1);
    expect(printed).toContain('check failed: It holds');
    expect(readFileSync(path.join(folder, 'out', 'sample', 'sample.html'), 'utf8')).toContain(
      'Check failed.',
    );
  });

  it('of all notebooks tells which one this parts file cannot answer and why, in the index too, and ends with 1', async () => {
    const { exitCode, printed, errors, folder } = await run('--parts', 'parts.json');
    expect(errors).toBe('');
    expect(exitCode).toBe(1);
    const out = path.join(folder, 'out');
    expect(printed.split('\n')).toEqual([
      'sample: 1 figure, 1 of 1 checks passed',
      'refusing: not answered, since builds must be of parts through which the oil flows at the speeds that the page looks at: larger holes, thinner oil, or lower speeds in its settings, got what the parts file says',
      path.join(out, 'sample', 'sample.html'),
      path.join(out, 'refusing', 'refusing.html'),
      path.join(out, 'index.html'),
      path.join(out, 'dashpot.html'),
    ]);
    expect(readdirSync(out).sort()).toEqual(['dashpot.html', 'index.html', 'refusing', 'sample']);
    for (const file of ['index.html', 'dashpot.html']) {
      const text = readFileSync(path.join(out, file), 'utf8');
      expect(text).toContain('A refusal');
      expect(text).toContain('do not say enough to answer this yet');
    }
    const page = readFileSync(path.join(out, 'refusing', 'refusing.html'), 'utf8').replaceAll('\u00a0', ' ');
    expect(page).toContain('builds must be of parts through which the oil flows');
  });

  it('draws letters into the PNG: without a font there is less ink', async () => {
    const { folder } = await run('sample');
    const out = path.join(folder, 'out', 'sample');
    const svg = readFileSync(path.join(out, 'force.svg'), 'utf8');
    const silent = new Resvg(svg, {
      background: '#ffffff',
      fitTo: { mode: 'zoom', value: 2 },
      font: { loadSystemFonts: false },
    });
    const drawn = readFileSync(path.join(out, 'force.png'));
    // Width in the header chunk of PNG (ISO/IEC 15948, 11.2.2): twice the wide layout.
    expect(drawn.readUInt32BE(16)).toBe(2 * 680);
    expect(drawn.length).toBeGreaterThan(1.2 * silent.render().asPng().length);
  });
});

describe('help', () => {
  it('lists the notebooks in their order', async () => {
    const { exitCode, printed } = await run('--help');
    expect(exitCode).toBe(0);
    expect(printed).toMatch(/sample {4}What does it show\?\n {2}refusing {2}What does it say\?/u);
  });

  it('lists the parameters of a notebook with units, ranges and what they are unless given', async () => {
    const { exitCode, printed } = await run('sample', '-h');
    expect(exitCode).toBe(0);
    expect(printed).toContain('--temperature  Oil temperature. Temperature of the oil.');
    expect(printed).toContain('−10 °C to 60 °C; 20 °C unless given');
    expect(printed).toContain('names of oils in the parts file, at most 4 (repeat the option for several)');
  });
});

describe('bad input', () => {
  it.each([
    [['sampel'], 'no notebook "sampel"; did you mean "sample"?'],
    [['nothing-like-it'], 'no notebook "nothing-like-it"; there are "sample", "refusing"'],
    [
      ['sample', '--temprature', '12 °C'],
      'no option --temprature; did you mean --temperature or --dyno-temperature?',
    ],
    [['--temperature', '12 °C'], 'Parameters come after the name of a notebook'],
    [['--out', 'x', 'sample'], 'write the notebook first: sample'],
    [['sample', '--temperature', '12', '°C'], '"°C" belongs to no option'],
    [['sample', '--temperature'], '--temperature needs a value'],
    [['sample', '--temperature', '--out', 'x'], '--temperature needs a value'],
    [
      ['sample', '--temperature', '-20 °C'],
      'temperature: "-20 °C" is out of range; accepted is −10 °C to 60 °C',
    ],
    [['sample', '--temperature', '12 °C', '--temperature', '13 °C'], 'temperature: is given more than once'],
    [['sample', '--parts', 'none.yaml'], 'cannot read none.yaml: there is no such file'],
    [['sample', '--parts', '.'], 'cannot read .: it is a folder'],
    [['sample', '--out', 'parts.json'], 'cannot write into'],
    [['refusing'], 'builds must be of parts through which the oil flows'],
  ])('%j ends with 2 and one message, and writes nothing', async (args, message) => {
    const { exitCode, printed, errors, folder } = await run(...args);
    expect(exitCode).toBe(2);
    expect(errors).toContain(message);
    expect(errors).not.toMatch(/\n\s+at /u);
    expect(printed).toBe('');
    expect(readdirSync(folder)).toEqual(['parts.json']);
  });

  it('in a parts file is told by its lines and nothing else', async () => {
    const { folder } = await run('--help');
    const file = path.join(folder, 'wrong.yaml');
    writeFileSync(file, 'dashpot: 1\nabout: Invented.\noils:\n  - name: thin\n    base: silicon\n');
    const { exitCode, printed, errors } = await run('sample', '--parts', file);
    expect(exitCode).toBe(2);
    expect(printed).toBe('');
    expect(errors.split('\n').length).toBeGreaterThan(0);
    for (const line of errors.split('\n')) expect(line.startsWith(`${file}:`)).toBe(true);
    expect(errors).toContain(`${file}:5:`);
  });
});
