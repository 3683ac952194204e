import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };

const repository = fileURLToPath(new URL('../..', import.meta.url));
const entries = Object.keys(manifest.exports)
  .filter((entry) => !entry.endsWith('.json'))
  .map((entry) => entry.replace(/^\./u, 'dashpot'));

const consumer = `
import { damperForce, damperModel, valveOpenings, type Damper } from 'dashpot';
import { blendViscosity } from 'dashpot/fluid';
import { readParts, type Parts } from 'dashpot/parts';
import { lineChart, type Figure } from 'dashpot/plot';
import { defineNotebook, type Page } from 'dashpot/page';
export const used = [blendViscosity, valveOpenings, damperForce, damperModel, readParts, lineChart, defineNotebook];
export type Used = Damper | Parts | Figure | Page;
// @ts-expect-error a damper is no number
damperModel(1, { kinematicViscosity: 1e-4, density: 970 });
`;

let project = '';

beforeAll(() => {
  project = mkdtempSync(join(tmpdir(), 'dashpot-consumer-'));
  const run = (command: string, args: readonly string[], cwd: string) =>
    execFileSync(command, args, { cwd, stdio: ['ignore', 'pipe', 'pipe'] });
  run('npm', ['pack', '--silent', '--pack-destination', project], repository);
  const tarball = readdirSync(project).find((name) => name.endsWith('.tgz')) ?? '';
  writeFileSync(join(project, 'package.json'), '{ "name": "consumer", "private": true, "type": "module" }');
  run('npm', ['install', '--silent', '--no-audit', '--no-fund', '--prefer-offline', `./${tarball}`], project);
});

afterAll(() => {
  if (project !== '') rmSync(project, { recursive: true });
});

describe('the packed tarball in an empty project', () => {
  test('names the entries', () => {
    expect(entries).toEqual(
      expect.arrayContaining(['dashpot', 'dashpot/fluid', 'dashpot/parts', 'dashpot/plot', 'dashpot/page']),
    );
  });

  test('holds nothing but the build, the manifest, the readme and the licence', () => {
    const packed = readdirSync(join(project, 'node_modules/dashpot')).sort();
    expect(packed).toEqual(['README.md', 'dist', 'docs', 'package.json']);
  });

  test.each(entries)('%s is imported by Node', (entry) => {
    const names = execFileSync(
      'node',
      ['--input-type=module', '-e', `console.log(Object.keys(await import('${entry}')).length)`],
      { cwd: project, encoding: 'utf8' },
    );
    expect(Number(names)).toBeGreaterThan(0);
  });

  test.each(entries.filter((entry) => !/decisions|workers/u.test(entry)))(
    '%s is bundled for a browser',
    async (entry) => {
      mkdirSync(join(project, 'src'), { recursive: true });
      const source = join(project, 'src', `${entry.replace('/', '-')}.js`);
      writeFileSync(source, `import * as all from '${entry}'; globalThis.all = all;`);
      const result = await build({
        entryPoints: [source],
        bundle: true,
        platform: 'browser',
        write: false,
        logLevel: 'silent',
      });
      expect(result.errors).toEqual([]);
      expect(result.outputFiles).toHaveLength(1);
    },
  );

  test('has types that a strict consumer can use', () => {
    writeFileSync(join(project, 'consumer.ts'), consumer);
    const args = ['--noEmit', '--strict', '--exactOptionalPropertyTypes', '--skipLibCheck', 'false'];
    const resolution = ['--module', 'nodenext', '--target', 'es2022', '--types', '', '--lib', 'es2023,dom'];
    const compiler = join(repository, 'node_modules/typescript/bin/tsc');
    expect(() =>
      execFileSync('node', [compiler, ...args, ...resolution, 'consumer.ts'], {
        cwd: project,
        stdio: 'pipe',
      }),
    ).not.toThrow();
  });
});
