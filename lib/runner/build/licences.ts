import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Notice } from '../../page/index.js';

/** The folder of a package in the path of one of its files. */
export const packageFolder = /^(?<folder>.*node_modules\/(?<name>(?:@[^/]+\/)?[^/]+))\//u;

/** The packages that files belong to with their folders, this library itself left out, which says its licence elsewhere. */
export function packageFolders(files: readonly string[]): ReadonlyMap<string, string> {
  const folders = new Map<string, string>();
  for (const file of files) {
    const { folder, name } = packageFolder.exec(file)?.groups ?? {};
    if (folder !== undefined && name !== undefined && name !== 'dashpot') folders.set(name, folder);
  }
  return folders;
}

/** The licences of packages, which ask for their notice wherever they go. Packages under the very same text share one. */
export function sharedNotices(
  licences: readonly (readonly [name: string, text: string])[],
): readonly Notice[] {
  const names = new Map<string, string[]>();
  for (const [name, text] of licences) names.set(text, [...(names.get(text) ?? []), name]);
  return [...names].map(([text, sharing]) => ({ name: sharing.join(', '), text }));
}

/**
 * The licence of a package.
 *
 * @throws TypeError for a package without a licence file
 */
export function licenceText(name: string, folder: string): string {
  const file = readdirSync(folder).find((entry) => /^licen[cs]e(?:\.\w+)?$/iu.test(entry));
  if (file === undefined) throw new TypeError(`the package ${name} has no licence file`);
  return readFileSync(path.join(folder, file), 'utf8').trim();
}
