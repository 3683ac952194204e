import { parseArgs } from 'node:util';
import { type Notebook, optionName, type ParameterTexts } from '../../page/index.js';
import { unknownName } from '../../page/parameters/read-parameters.js';
import type { CourseKey } from '../../parts/course-entry.js';
import type { DynoEntry } from '../../parts/dyno-entry.js';
import { CommandError } from './command-error.js';

/** What the user asked for. */
export interface Command {
  /** The notebook named; all of them where none is. */
  readonly notebook?: Notebook;
  readonly help: boolean;
  /** Path of a first parts file to ask for. */
  readonly newFile?: string;
  /** Path of the parts file as written. */
  readonly partsFile?: string;
  /** Folder for the pages as written. */
  readonly outFolder?: string;
  /** Whether builds are taken as their measurements say. */
  readonly asMeasured: boolean;
  /** A dyno file that is taken into the parts. */
  readonly dyno?: DynoOption;
  /** Recordings that are taken into the parts. */
  readonly courses: readonly CourseOption[];
  readonly parameters: ParameterTexts;
}

/** A dyno file by its path, with what was said of it. */
export type DynoOption = Omit<DynoEntry, 'record'> & { readonly file: string };

/** A recording by its path, and the key under which it goes into the parts. */
export interface CourseOption {
  readonly key: CourseKey;
  readonly file: string;
  readonly zeroAt?: string;
}

const courseOptions = ['stroke', 'stroke-zero-at', 'ground'] as const;
const dynoOptions = ['dyno', 'dyno-build', 'dyno-shock', 'dyno-temperature', 'dyno-zero-at'] as const;
const ownOptions: readonly string[] = [
  'parts',
  'new',
  'use',
  'out',
  'help',
  ...dynoOptions,
  ...courseOptions,
];

/**
 * Reads the command line: `[notebook] [--parts FILE] [--dyno FILE …] [--stroke FILE] [--ground FILE] [--use measured] [--out DIR] [--help] [--parameter value]…`.
 *
 * @throws CommandError for an unknown notebook or option (with near ones), an option without a value, or more than
 * one notebook
 */
export function readCommandLine(args: readonly string[], notebooks: readonly Notebook[]): Command {
  const [first] = args;
  const notebook = first === undefined || first.startsWith('-') ? undefined : notebookNamed(first, notebooks);
  const known = [...ownOptions, ...Object.keys(notebook?.parameters ?? {}).map(optionName)];
  const { tokens } = parseArgs({
    args: args.slice(notebook === undefined ? 0 : 1),
    options: Object.fromEntries(known.map((name) => [name, optionOf(name)])),
    strict: false,
    tokens: true,
  });
  const options = new Map<string, string[]>();
  for (const token of tokens) {
    if (token.kind === 'positional') throw new CommandError(strayText(token.value, notebook, notebooks));
    if (token.kind !== 'option') continue;
    if (!known.includes(token.name)) throw new CommandError(unknownOption(token.name, known, notebook));
    options.set(token.name, [...(options.get(token.name) ?? []), optionValue(token.name, token.value)]);
  }
  const [partsFile, newFile, outFolder] = [
    once('parts', options),
    once('new', options),
    once('out', options),
  ];
  return {
    ...(notebook === undefined ? {} : { notebook }),
    help: options.has('help'),
    ...(partsFile === undefined ? {} : { partsFile }),
    ...(newFile === undefined ? {} : { newFile }),
    ...(outFolder === undefined ? {} : { outFolder }),
    asMeasured: asMeasured(once('use', options)),
    ...dynoOption(options),
    courses: courseOptionsOf(options),
    parameters: Object.fromEntries([...options].filter(([name]) => !ownOptions.includes(name))),
  };
}

function asMeasured(use = 'stated'): boolean {
  if (use === 'measured' || use === 'stated') return use === 'measured';
  throw new CommandError(`--use takes measured or stated, not "${use}"`);
}

/** The dyno file with what was said of it, where one is named. */
function dynoOption(options: ReadonlyMap<string, string[]>): Pick<Command, 'dyno'> {
  const [file, build, shock, temperature, zeroAt] = dynoOptions.map((name) => once(name, options));
  if (file === undefined) {
    const stray = dynoOptions.find((name) => options.has(name));
    if (stray !== undefined)
      throw new CommandError(`--${stray} says something of a dyno file; name it, as in --dyno FILE`);
    return {};
  }
  if (temperature === undefined) {
    throw new CommandError('--dyno needs the oil temperature with it, as in --dyno-temperature "22 °C"');
  }
  const said = (name: string, value: string | undefined) => (value === undefined ? {} : { [name]: value });
  return {
    dyno: { file, temperature, ...said('build', build), ...said('shock', shock), ...said('zeroAt', zeroAt) },
  };
}

/** The recordings that are named. */
function courseOptionsOf(given: ReadonlyMap<string, string[]>): readonly CourseOption[] {
  const [stroke, zeroAt, ground] = courseOptions.map((name) => once(name, given));
  if (stroke === undefined && zeroAt !== undefined)
    throw new CommandError('--stroke-zero-at says something of a recording; name it, as in --stroke FILE');
  return [
    ...(stroke === undefined
      ? []
      : [{ key: 'recorded-stroke', file: stroke, ...(zeroAt === undefined ? {} : { zeroAt }) } as const]),
    ...(ground === undefined ? [] : [{ key: 'recorded-ground', file: ground } as const]),
  ];
}

function optionOf(
  name: string,
): { readonly type: 'boolean'; readonly short: string } | { readonly type: 'string' } {
  return name === 'help' ? { type: 'boolean', short: 'h' } : { type: 'string' };
}

function optionValue(name: string, value: string | undefined): string {
  if (name === 'help') return '';
  if (value === undefined || value === '' || value.startsWith('--'))
    throw new CommandError(`--${name} needs a value, as in --${name} "…"`);
  return value;
}

function once(name: string, options: ReadonlyMap<string, readonly string[]>): string | undefined {
  const values = options.get(name) ?? [];
  if (values.length > 1) throw new CommandError(`--${name} is given more than once`);
  return values[0];
}

function notebookNamed(name: string, notebooks: readonly Notebook[]): Notebook {
  const found = notebooks.find((notebook) => notebook.name === name);
  if (found !== undefined) return found;
  throw new CommandError(
    unknownName(
      `no notebook "${name}"`,
      name,
      notebooks.map((notebook) => notebook.name),
    ),
  );
}

function unknownOption(name: string, known: readonly string[], notebook: Notebook | undefined): string {
  const options = known.map((one) => `--${one}`);
  const dashes = name.length === 1 ? '-' : '--';
  const sentence = unknownName(`no option ${dashes}${name}`, `--${name}`, options).replaceAll('"', '');
  return notebook === undefined
    ? `${sentence}\nParameters come after the name of a notebook; see --help.`
    : sentence;
}

function strayText(text: string, notebook: Notebook | undefined, notebooks: readonly Notebook[]): string {
  if (notebook === undefined && notebooks.some(({ name }) => name === text))
    return `write the notebook first: ${text} --…`;
  return `"${text}" belongs to no option; write a value with spaces in quotes, as in --temperature "12 °C"`;
}
