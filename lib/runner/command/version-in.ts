import { readFileSync } from 'node:fs';

/** The version that a manifest states. */
export function versionIn(file: string): string {
  const { version }: { readonly version: string } = JSON.parse(readFileSync(file, 'utf8'));
  return version;
}
