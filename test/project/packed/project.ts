import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import manifest from '../../../package.json' with { type: 'json' };

export const repository = fileURLToPath(new URL('../../..', import.meta.url));

/** Entries as they are imported. */
export const entries = Object.keys(manifest.exports)
  .filter((entry) => !entry.endsWith('.json'))
  .map((entry) => entry.replace(/^\./u, 'dashpot'));

/** Entries that run in Node only. */
export const onlyNode = ['dashpot/workers', 'dashpot/render'];

/** Runs a program in a folder and returns what it prints. */
export function run(folder: string, command: string, ...args: readonly string[]): string {
  return execFileSync(command, args, { cwd: folder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
}

/** Packs the package, which builds it, and returns the path of the file. */
export function packed(): string {
  const folder = mkdtempSync(join(tmpdir(), 'dashpot-packed-'));
  run(repository, 'npm', 'pack', '--silent', '--pack-destination', folder);
  return join(folder, `dashpot-${manifest.version}.tgz`);
}

/** An empty project with the package and nothing else installed. */
export function emptyProject(tarball: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'dashpot-project-'));
  writeFileSync(join(folder, 'package.json'), '{ "name": "user", "private": true, "type": "module" }');
  run(folder, 'npm', 'install', '--silent', '--no-audit', '--no-fund', '--offline', tarball);
  return folder;
}

/** What npm would put beside a peer. */
const withVega = ['vega-dataflow', 'vega-encode', 'vega-transforms', 'vega-view', 'vega-view-transforms'];

/** Puts packages of the repository beside the package, as installing them would; a network is not needed. */
export function addPeers(folder: string, names: readonly string[]): void {
  for (const name of [...names, ...(names.includes('vega') ? withVega : [])]) {
    const place = join(folder, 'node_modules', name);
    mkdirSync(dirname(place), { recursive: true });
    symlinkSync(join(repository, 'node_modules', name), place);
  }
}

export const peers = Object.keys(manifest.peerDependencies);

/** The first block of code of a kind in a page of the documentation that holds a word. */
export function codeIn(page: string, kind: string, word: string): string {
  const text = readFileSync(join(repository, page), 'utf8');
  const blocks = [...text.matchAll(new RegExp(`\`\`\`${kind}\\n([\\s\\S]*?)\`\`\``, 'gu'))];
  const code = blocks.map(([, block = '']) => block).find((block) => block.includes(word));
  if (code === undefined) throw new TypeError(`${page} has no ${kind} with ${word}`);
  return code;
}
