import { access } from 'node:fs/promises';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Plugin } from 'esbuild';
import type { Notebook } from '../../page/index.js';
import { CommandError } from '../command/command-error.js';
import { fileError } from '../command/file-error.js';
import type { OwnNotebook, Workshop } from './workshop.js';

/** Whether a word of the command line names a file and no notebook of the library. */
export function namesFile(word: string): boolean {
  return !word.startsWith('-') && /[./\\]/u.test(word);
}

/** The bundler, where it is installed; without it no page of a notebook of the user can be live, and a notebook must be what Node itself reads. */
export async function bundler(): Promise<typeof import('esbuild') | undefined> {
  try {
    return await import('esbuild');
  } catch (error) {
    if (isLost(error, 'esbuild')) return undefined;
    throw error;
  }
}

/**
 * Loads a notebook of the user. With esbuild it may be TypeScript, and `dashpot` in it is this very library.
 *
 * @param name - path as the user wrote it
 * @param folder - where the path starts
 * @throws CommandError for a file that cannot be read, does not run, or holds no notebook of its own name
 */
export async function loadOwnNotebook(
  name: string,
  folder: string,
  { entryFile }: Pick<Workshop, 'entryFile'>,
): Promise<OwnNotebook> {
  const file = path.resolve(folder, name);
  await access(file).catch((error: unknown) => {
    throw fileError(`cannot read ${name}`, error);
  });
  const esbuild = await bundler();
  const module = await (esbuild === undefined
    ? asItStands(file, name)
    : bundled(esbuild, file, entryFile)
  ).catch((error: unknown) => {
    throw error instanceof CommandError ? error : new CommandError(`${name}: ${messageOf(error)}`);
  });
  return { notebook: notebookOf(module, file, name), file };
}

/** What a file exports. */
type Module = Readonly<Record<string, unknown>>;

async function bundled(
  { build }: typeof import('esbuild'),
  file: string,
  entryFile: Workshop['entryFile'],
): Promise<Module> {
  const { outputFiles } = await build({
    entryPoints: [file],
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'es2022',
    write: false,
    logLevel: 'silent',
    plugins: [libraryOutside(entryFile)],
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0]!.contents).toString('base64')}`);
}

/** The library stays outside, by its whole address: its errors must be known by what runs the notebook. */
function libraryOutside(entryFile: Workshop['entryFile']): Plugin {
  return {
    name: 'library-outside',
    setup({ onResolve }) {
      onResolve({ filter: /^dashpot(?:\/|$)/ }, ({ path: name }) => {
        const found = entryFile(name);
        return found === undefined ? undefined : { path: pathToFileURL(found).href, external: true };
      });
    },
  };
}

async function asItStands(file: string, name: string): Promise<Module> {
  try {
    return await import(pathToFileURL(file).href);
  } catch (error) {
    if (!hasCode(error, 'ERR_UNKNOWN_FILE_EXTENSION')) throw error;
    throw new CommandError(
      `${name}: this Node reads no TypeScript; install esbuild beside dashpot: npm install esbuild`,
    );
  }
}

function notebookOf({ notebook }: Module, file: string, name: string): Notebook {
  if (!isNotebook(notebook))
    throw new CommandError(
      `${name} exports no "notebook"; write: export const notebook = defineNotebook({ … })`,
    );
  const wanted = path.parse(file).name;
  if (notebook.name !== wanted)
    throw new CommandError(
      `${name} holds the notebook "${notebook.name}"; its name must be "${wanted}", that of the file`,
    );
  return notebook;
}

function isNotebook(value: unknown): value is Notebook {
  return (
    typeof value === 'object' && value !== null && 'run' in value && 'parameters' in value && 'name' in value
  );
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

function hasCode(error: unknown, code: string): boolean {
  return error instanceof Error && 'code' in error && error.code === code;
}

/** Whether an import failed since a package is not installed. */
export function isLost(error: unknown, name: string): boolean {
  return hasCode(error, 'ERR_MODULE_NOT_FOUND') && messageOf(error).includes(`'${name}'`);
}
