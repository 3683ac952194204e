import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Ajv } from 'ajv';
import { afterAll, describe, expect, test } from 'vitest';
import schema from '../../docs/check-result.schema.json' with { type: 'json' };
import { visibleText } from '../../lib/base/visible-text.js';
import { checkParts } from '../../lib/runner/command/check-parts.js';
import { readTextFile } from '../../lib/runner/command/read-text-file.js';
import { tableText } from '../../lib/runner/command/table-command.js';
import { combiTables } from '../parts/combi-tables.js';
import { smallFile } from '../parts/small-file.js';

const folder = mkdtempSync(path.join(tmpdir(), 'dashpot-check-'));
writeFileSync(path.join(folder, 'good.yaml'), smallFile);
writeFileSync(path.join(folder, 'bad.yaml'), smallFile.replace('mm', 'furlong'));
afterAll(() => rmSync(folder, { recursive: true }));

describe('check', () => {
  test('says that a file can be read, for a person and for a program', async () => {
    expect(await checkParts(['good.yaml'], folder)).toEqual({
      lines: ['good.yaml: can be read'],
      exitCode: 0,
    });
    const { lines } = await checkParts(['good.yaml', '--json'], folder);
    expect(JSON.parse(lines[0] ?? '')).toEqual({ file: 'good.yaml', ok: true, problems: [] });
  });

  test('says line, column and place of what is wrong, and ends with 2', async () => {
    const { lines, exitCode } = await checkParts(['--json', 'bad.yaml'], folder);
    const said = JSON.parse(lines[0] ?? '');
    expect(exitCode).toBe(2);
    expect(said.ok).toBe(false);
    const line = smallFile.slice(0, smallFile.indexOf('mm')).split('\n').length;
    expect(said.problems[0]).toMatchObject({ line, path: expect.any(String), column: expect.any(Number) });
    const plain = await checkParts(['bad.yaml'], folder);
    expect(plain.lines[0]).toMatch(new RegExp(`^bad\\.yaml:${line}:\\d+: `, 'u'));
  });

  test('says for a program what its published schema says', async () => {
    const follows = new Ajv({ strict: true }).compile(schema);
    for (const name of ['good.yaml', 'bad.yaml']) {
      const { lines } = await checkParts([name, '--json'], folder);
      const said = JSON.parse(lines.join('\n'));
      expect(follows(said), JSON.stringify(follows.errors)).toBe(true);
      expect(said.ok).toBe(name === 'good.yaml');
      expect(follows({ ...said, more: 1 })).toBe(false);
      expect(follows({ ...said, problems: [{ line: 0, column: 1, path: '', message: '' }] })).toBe(false);
    }
  });

  test('and the table read what any page reads: UTF-16 in either order, lines that end in a lone carriage return, a mark at the start', async () => {
    const bigEndian = Buffer.from(`\ufeff${smallFile}`, 'utf16le').swap16();
    const files = {
      'little.yaml': Buffer.from(`\ufeff${smallFile}`, 'utf16le'),
      'big.yaml': bigEndian,
      'returns.yaml': Buffer.from(smallFile.replaceAll('\n', '\r')),
      'marked.yaml': Buffer.from(`\ufeff${smallFile}`),
    };
    const table = await tableText(['--parts', 'good.yaml'], folder, '');
    for (const [name, bytes] of Object.entries(files)) {
      writeFileSync(path.join(folder, name), bytes);
      expect(await checkParts([name], folder)).toEqual({ lines: [`${name}: can be read`], exitCode: 0 });
      expect(await tableText(['--parts', name], folder, '')).toBe(table);
    }
  });

  test('tells the line of a sign in another encoding, in words', async () => {
    writeFileSync(path.join(folder, 'latin.yaml'), Buffer.from(`# 20 \u00b0C\n${smallFile}`, 'latin1'));
    const { lines, exitCode } = await checkParts(['latin.yaml'], folder);
    expect(lines[0]).toMatch(
      /^latin\.yaml:1:1: this line holds a sign, such as ° or µ, that is not in UTF-8/u,
    );
    expect(exitCode).toBe(2);
    await expect(tableText(['--parts', 'latin.yaml'], folder, '')).rejects.toThrow(/not in UTF-8/u);
  });

  test.each([[[]], [['good.yaml', 'bad.yaml']], [['--wrong']], [['none.yaml']]])(
    '%o is refused in one line',
    async (args) => {
      await expect(checkParts(args, folder)).rejects.toThrow(/^[^\n]+$/u);
    },
  );
});

describe('table', () => {
  test('writes each format of the first build', async () => {
    expect(await tableText([], folder, 'good.yaml')).toMatch(/^temperature \(°C\),/u);
    const json = JSON.parse(
      await tableText(['--format', 'json', '--temperature', '12 °C'], folder, 'good.yaml'),
    );
    expect(json.atTemperatures.map(({ temperature }: { temperature: number }) => temperature)).toEqual([
      285.15,
    ]);
    const tables = combiTables(
      await tableText(['--format', 'modelica', '--fastest', '0.2 m/s'], folder, 'good.yaml'),
    );
    expect([...tables.keys()]).toEqual(['force_278_15', 'force_293_15', 'force_313_15']);
    expect(tables.get('force_293_15')?.[1]?.[0]).toBe(-0.2);
  });

  test.each([
    [['--format', 'xml'], '--format is one of csv, json, modelica'],
    [['--build', 'none'], 'no build "none"'],
    [['--wrong'], 'wrong'],
    [['--temperature', '12'], '"12" has no unit'],
    [['--parts', 'none.yaml'], 'cannot read none.yaml: there is no such file'],
  ])('%o is refused', async (args, message) => {
    await expect(tableText(args, folder, 'good.yaml')).rejects.toThrow(message);
  });
});

describe('files and terminals', () => {
  test('an endless file is left after 4 MB', async () => {
    await expect(readTextFile('/', 'dev/zero')).rejects.toThrow(
      'cannot read dev/zero: it has more than 4 MB',
    );
  });

  test('signs that a terminal obeys or that turn the writing are written out, all others stay', () => {
    expect(visibleText('a\u001b[31mb\u202ec\u0007\u009b')).toBe('a\\u001b[31mb\\u202ec\\u0007\\u009b');
    expect(visibleText('12 °C, ü, 油\n\tend')).toBe('12 °C, ü, 油\n\tend');
  });
});
