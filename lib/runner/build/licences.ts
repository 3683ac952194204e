import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Notice } from '../../page/index.js';

/** The folder of a package in the path of one of its files. */
export const packageFolder = /^(?<folder>.*node_modules\/(?<name>(?:@[^/]+\/)?[^/]+))\//u;

/**
 * The licences of the packages that files belong to: these packages ask for their notice wherever they go. Packages under the very
 * same text share one.
 *
 * @param files - paths of the files, from the working folder
 * @throws TypeError for a package without a licence file
 */
export function licences(files: readonly string[]): readonly Notice[] {
  const folders = new Map<string, string>();
  for (const file of files) {
    const { folder, name } = packageFolder.exec(file)?.groups ?? {};
    if (folder !== undefined && name !== undefined) folders.set(name, folder);
  }
  const names = new Map<string, string[]>();
  for (const name of [...folders.keys()].sort()) {
    const text = licenceText(name, folders.get(name) ?? '');
    names.set(text, [...(names.get(text) ?? []), name]);
  }
  return [...names].map(([text, sharing]) => ({ name: sharing.join(', '), text }));
}

function licenceText(name: string, folder: string): string {
  const file = readdirSync(folder).find((entry) => /^licen[cs]e(?:\.\w+)?$/iu.test(entry));
  if (file === undefined) throw new TypeError(`the package ${name} has no licence file`);
  return readFileSync(path.join(folder, file), 'utf8').trim();
}
