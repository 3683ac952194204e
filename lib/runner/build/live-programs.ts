import { deflateRawSync } from 'node:zlib';
import { packedText } from '../../page/html/packed-text.js';
import type { Notice } from '../../page/index.js';
import { sharedNotices } from './licences.js';

/** A program in the form in which a page carries it, and the licences of what is in it. */
export interface LiveProgram {
  readonly script: string;
  /** The script in pieces, each as raw DEFLATE in the characters of `packedText`; the first is the same in all pages. */
  readonly packed: readonly string[];
  readonly notices: readonly Notice[];
}

/** The programs of all pages. */
export interface LivePrograms {
  /** That of the page of one notebook. */
  page(notebook: string): LiveProgram;
  /** That of the file of all notebooks, where it was asked for. */
  readonly file?: LiveProgram;
}

/** What programs are put together from; plain data, so that a package can hold it ready-made. */
export interface ProgramTexts {
  /** Modules by their names, each with the packages that are in it. */
  readonly modules: Readonly<Record<string, { readonly text: string; readonly packages: readonly string[] }>>;
  /** The modules that an entry needs, each after those that it imports itself; a notebook is an entry. */
  readonly needed: Readonly<Record<string, readonly string[]>>;
  /** The licence of each package. */
  readonly licences: Readonly<Record<string, string>>;
}

/** The entries that start the page of one notebook, and the file of all. */
export const [pageEntry, fileEntry] = ['start-page', 'start-file'] as const;

/** Gives the modules a place, and begins; all of a program is one function. */
const opening = '(()=>{const modules={},require=(name)=>modules[name];\n';

/** Puts the programs of pages together. */
export function livePrograms({ modules, needed, licences }: ProgramTexts): LivePrograms {
  const neededBy = (entry: string): readonly string[] => needed[entry]!;
  const text = (names: readonly string[]): string => names.map((name) => modules[name]!.text).join('');
  const common = neededBy(pageEntry);
  const first = opening + text(common);
  const packedFirst = packed(first);
  const program = (all: readonly string[], start: string): LiveProgram => {
    const own = all.filter((name) => !common.includes(name));
    const second = `${text(own)}${start}})();`;
    const packages = [...common, ...own].flatMap((name) => modules[name]!.packages);
    return {
      script: first + second,
      packed: [packedFirst, packed(second)],
      notices: sharedNotices([...new Set(packages)].sort().map((name) => [name, licences[name]!])),
    };
  };
  const notebooks = Object.keys(needed).filter((name) => name !== pageEntry && name !== fileEntry);
  return {
    page: (notebook) =>
      program(neededBy(notebook), `${required(pageEntry)}.start(${required(notebook)}.notebook);`),
    ...(needed[fileEntry] === undefined
      ? {}
      : {
          file: program(
            [...new Set([fileEntry, ...notebooks].flatMap(neededBy))],
            `${required(fileEntry)}.start([${notebooks.map((name) => `${required(name)}.notebook`).join()}]);`,
          ),
        }),
  };
}

function packed(text: string): string {
  return packedText(deflateRawSync(text, { level: 9 }));
}

function required(name: string): string {
  return `require(${JSON.stringify(`./${name}.js`)})`;
}
