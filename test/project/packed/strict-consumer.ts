import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { repository } from './project.js';

const consumer = `
import { damperForce, damperModel, valveOpenings, type Damper } from 'dashpot';
import { readParts, type Parts } from 'dashpot/parts';
import { lineChart, type Figure } from 'dashpot/plot';
import { defineNotebook, type Page } from 'dashpot/page';
export const used = [valveOpenings, damperForce, damperModel, readParts, lineChart, defineNotebook];
export type Used = Damper | Parts | Figure | Page;
// @ts-expect-error a damper is no number
damperModel(1, { kinematicViscosity: 1e-4, density: 970 });
`;

/**
 * Checks a program that imports every entry, declarations of all packages included.
 *
 * @returns what the compiler says; nothing where all is well
 */
export function strictConsumer(folder: string, entries: readonly string[]): string {
  const imports = entries.map((entry, at) => `export * as entry${at} from '${entry}';`);
  writeFileSync(join(folder, 'consumer.ts'), `${imports.join('\n')}\n${consumer}`);
  const args = ['--noEmit', '--strict', '--exactOptionalPropertyTypes', '--skipLibCheck', 'false'];
  const resolution = ['--module', 'nodenext', '--target', 'es2022', '--types', '', '--lib', 'es2023,dom'];
  const compiler = join(repository, 'node_modules/typescript/bin/tsc');
  try {
    execFileSync('node', [compiler, ...args, ...resolution, 'consumer.ts'], { cwd: folder, stdio: 'pipe' });
    return '';
  } catch (error) {
    return String((error as { readonly stdout: Buffer }).stdout);
  }
}
