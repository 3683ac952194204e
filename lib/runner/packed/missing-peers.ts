import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** What reading a parts file needs, and what pages need besides. */
const forParts = ['yaml', 'zod'];
const forPages = [...forParts, 'vega', 'vega-lite', 'vega-interpreter'];

/**
 * The packages that a command needs and that are not installed, as words for `npm install`.
 *
 * @param args - the command line
 */
export function missingPeers(args: readonly string[]): readonly string[] {
  const onlyParts = args[0] === 'check' || args[0] === 'table';
  const ownTypeScript = args.some((word) => word.endsWith('.ts'));
  const needed = onlyParts ? forParts : ownTypeScript ? [...forPages, 'esbuild'] : forPages;
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
