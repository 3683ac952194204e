import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** What reading a parts file needs, and what pages need besides. */
const forParts = ['yaml', 'zod'];
const forPages = [...forParts, 'vega', 'vega-lite', 'vega-interpreter'];

/**
 * The packages beside this one that a command needs.
 *
 * @param args - the command line
 */
export function neededPeers(args: readonly string[]): readonly string[] {
  if (args[0] === 'check' || args[0] === 'table') return forParts;
  return args.some((word) => word.endsWith('.ts')) ? [...forPages, 'esbuild'] : forPages;
}

/** Those of some packages that are not installed, as words for `npm install`. */
export function missingPeers(needed: readonly string[]): readonly string[] {
  const manifest: { readonly peerDependencies: Readonly<Record<string, string>> } = JSON.parse(
    readFileSync(createRequire(import.meta.url).resolve('dashpot/package.json'), 'utf8'),
  );
  return needed
    .filter((name) => !isThere(name))
    .map((name) => `"${name}@${manifest.peerDependencies[name]}"`);
}

function isThere(name: string): boolean {
  try {
    import.meta.resolve(name);
    return true;
  } catch {
    return false;
  }
}
