import path from 'node:path';
import { build, type Metafile, type Plugin, transform } from 'esbuild';
import { leanPackages } from './lean-packages.js';

/** Programs that share what they have in common. */
export interface ProgramModules {
  /** The names of the modules that an entry needs, each after those that it imports itself. */
  needed(entry: string): readonly string[];
  /** The text of a module: it takes others from `modules` and puts itself there. */
  text(name: string): string;
  /** Paths of the files in a module. */
  files(name: string): readonly string[];
}

/** How all programs are bundled for a browser, those of built pages and that of one being written. */
export function browserOptions(folder: string) {
  return {
    bundle: true,
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    outdir: folder,
    write: false,
    logLevel: 'silent',
  } as const;
}

/**
 * Bundles entries for a browser: what several of them reach becomes a module of its own, the same for all of them.
 *
 * @param folder - where the entries are resolved from
 * @param entries - names of the entries
 * @param plugins - what makes the entries
 */
export async function programModules(
  folder: string,
  entries: readonly { readonly in: string; readonly out: string }[],
  plugins: readonly Plugin[],
): Promise<ProgramModules> {
  const { outputFiles, metafile } = await build({
    ...browserOptions(folder),
    format: 'esm',
    splitting: true,
    minify: true,
    metafile: true,
    plugins: [...plugins, leanPackages],
    entryPoints: [...entries],
  });
  const outputs = byName(metafile);
  const texts = new Map(
    await Promise.all(
      outputFiles.map(async (file) => {
        const name = path.basename(file.path);
        return [name, await moduleText(name, file.text)] as const;
      }),
    ),
  );
  return {
    needed: (entry) => [...inOrder(`${entry}.js`, outputs, new Set())],
    text: (name) => texts.get(name) ?? '',
    files: (name) =>
      Object.entries(outputs.get(name)?.inputs ?? {})
        .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
        .map(([file]) => file),
  };
}

type Outputs = ReadonlyMap<string, Metafile['outputs'][string]>;

function byName({ outputs }: Metafile): Outputs {
  return new Map(Object.entries(outputs).map(([file, output]) => [path.basename(file), output]));
}

function inOrder(name: string, outputs: Outputs, seen: Set<string>): ReadonlySet<string> {
  if (seen.has(name)) return seen;
  for (const { path: file, external } of outputs.get(name)?.imports ?? [])
    if (external !== true) inOrder(path.basename(file), outputs, seen);
  return seen.add(name);
}

/** A page cannot load modules, so each becomes a function that is called at its place. */
async function moduleText(name: string, text: string): Promise<string> {
  const { code } = await transform(text, { format: 'cjs', minify: true, charset: 'utf8', target: 'es2022' });
  return `modules[${JSON.stringify(`./${name}`)}]=((module)=>{${code}
return module.exports})({exports:{}});
`;
}
