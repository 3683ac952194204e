import path from 'node:path';
import { InputError } from '../base/input-error.js';
import { visibleText } from '../base/visible-text.js';
import { FitError } from '../numeric/least-squares/fit-error.js';
import { ConvergenceError } from '../numeric/root-finding.js';
import {
  type IndexEntry,
  type Notebook,
  ParameterError,
  pagePassed,
  readParameterValues,
} from '../page/index.js';
import { withCourse } from '../parts/course-entry.js';
import { withDyno } from '../parts/dyno-entry.js';
import { PartsFileError, readParts } from '../parts/index.js';
import type { PartsFile } from '../parts/parts-file.js';
import { fittedBuilds, useMeasured } from '../parts/use-measured.js';
import { QuantityError } from '../units/index.js';
import { askFirstFile } from './ask-first-file.js';
import { loadOwnNotebook, namesFile } from './build/own-notebook.js';
import type { OwnNotebook, Workshop } from './build/workshop.js';
import { writeFiles } from './build/write-files.js';
import { checkParts } from './command/check-parts.js';
import { CommandError } from './command/command-error.js';
import { type Command, readCommandLine } from './command/command-line.js';
import { fileError } from './command/file-error.js';
import { readTextFile } from './command/read-text-file.js';
import { requireWritable } from './command/require-writable.js';
import { tableText } from './command/table-command.js';
import { generalHelp, notebookHelp } from './help.js';
import { summary } from './summary.js';

/** Where a run finds and leaves things, and where it speaks. */
export interface Surroundings {
  /** Folder that paths of the user start from. */
  readonly workingFolder: string;
  readonly workshop: Workshop;
  readonly demoParts: string;
  /** Folder for the pages unless the user names one. */
  readonly outFolder: string;
  /** The next line that the user types; nothing once the input has ended. Where it is not given, nobody can be asked. */
  readonly nextLine?: () => Promise<string | undefined>;
  readonly print: (line: string) => void;
  readonly printError: (line: string) => void;
}

/** 0 all well, 1 a check of a page failed or the parts do not say enough for a page, 2 the user gave something that cannot be used. */
export type ExitCode = 0 | 1 | 2;

/** Runs the command with its arguments: `render` before them is understood and may be left out. */
export async function runWith(given: readonly string[], where: Surroundings): Promise<ExitCode> {
  // Names of files and parts are told to a terminal, which must not obey them.
  const around: Surroundings = {
    ...where,
    print: (line) => where.print(visibleText(line)),
    printError: (line) => where.printError(visibleText(line)),
  };
  const args = given[0] === 'render' ? given.slice(1) : given;
  const [first = '', ...rest] = args;
  const { workshop, workingFolder, demoParts } = around;
  const { calledAs } = workshop;
  try {
    if (first === 'check') {
      const { lines, exitCode } = await checkParts(rest, workingFolder);
      for (const line of lines) around.print(line);
      return exitCode;
    }
    if (first === 'table') {
      around.print((await tableText(rest, workingFolder, demoParts)).replaceAll('\r', '').trimEnd());
      return 0;
    }
    const own = namesFile(first) ? await loadOwnNotebook(first, workingFolder, workshop) : undefined;
    const notebooks = own === undefined ? await workshop.notebooks() : [own.notebook];
    const command = readCommandLine(own === undefined ? args : [own.notebook.name, ...rest], notebooks);
    if (command.help) {
      around.print(
        command.notebook === undefined
          ? generalHelp(notebooks, calledAs)
          : notebookHelp(command.notebook, `${calledAs} ${first}`),
      );
      return 0;
    }
    if (command.newFile !== undefined) {
      const { nextLine = async () => undefined } = around;
      await askFirstFile(command.newFile, { ...around, calledAs, nextLine });
      return 0;
    }
    return await renderAll(
      command.notebook === undefined ? notebooks : [command.notebook],
      command,
      around,
      own,
    );
  } catch (error) {
    if (!isForUser(error)) throw error;
    around.printError(error.message);
    return 2;
  }
}

async function renderAll(
  notebooks: readonly Notebook[],
  command: Command,
  around: Surroundings,
  own: OwnNotebook | undefined,
): Promise<ExitCode> {
  const partsFile = await readPartsFile(command, around);
  const out = path.resolve(around.workingFolder, command.outFolder ?? around.outFolder);
  // What cannot be used is told at once, before programs are bundled.
  if (command.notebook !== undefined)
    readParameterValues(command.notebook.parameters, command.parameters, partsFile.parts);
  await requireWritable(out);
  // Loaded once there is something to draw, so that help and errors come at once.
  const { renderNotebook, renderUnanswered } = await import('./build/render-notebook.js');
  const { indexEntry, indexPage, oneFile } = await import('./build/index-page.js');
  const { workshop } = around;
  const known = await (own === undefined
    ? workshop.facts(notebooks.map(({ name }) => name))
    : workshop.ownFacts(own));
  const facts = { ...known, fitted: fittedBuilds(partsFile.parts) };
  const write = (folder: string, files: ReadonlyMap<string, string | Uint8Array>): Promise<void> =>
    writeFiles(folder, files).catch((error: unknown) => {
      throw fileError(`cannot write into ${out}`, error);
    });
  let passed = true;
  const entries: IndexEntry[] = [];
  const said: string[] = [];
  for (const notebook of notebooks) {
    const rendered = await renderNotebook(notebook, partsFile, command.parameters, facts).catch(
      (error: unknown) => renderUnanswered(notebook, partsFile, reasonFor(error, command), facts),
    );
    await write(path.join(out, notebook.name), rendered.files);
    passed &&= rendered.unanswered === undefined && pagePassed(rendered.page);
    entries.push(indexEntry(notebook, rendered));
    said.push(JSON.stringify(rendered.page));
    around.print(`${notebook.name}: ${summary(rendered)}`);
  }
  const pages = entries.map(({ name }) => path.join(name, `${name}.html`));
  if (command.notebook === undefined) {
    const index = await indexPage(entries, partsFile, facts);
    const file = await oneFile(entries, partsFile, facts, said.join(''));
    await write(
      out,
      new Map([
        ['index.html', index],
        ['dashpot.html', file],
      ]),
    );
    pages.push('index.html', 'dashpot.html');
  }
  for (const page of pages) around.print(path.join(out, page));
  for (const remark of facts.remarks ?? []) around.printError(remark);
  return passed ? 0 : 1;
}

/** Of many notebooks those that the file can answer are worth having, and the others say what they need; where one was asked for, its error is the answer. */
function reasonFor(error: unknown, { notebook }: Command): Error {
  if (notebook !== undefined || !isForUser(error)) throw error;
  return error;
}

async function readPartsFile(command: Command, around: Surroundings): Promise<PartsFile> {
  const read = (name: string): Promise<string> => readTextFile(around.workingFolder, name);
  const name = command.partsFile ?? around.demoParts;
  const text = await read(name);
  // Faults of the parts are told before a dyno file moves its lines.
  const parts = readParts(text, name);
  const { dyno, courses, asMeasured } = command;
  if (dyno === undefined && courses.length === 0 && !asMeasured)
    return { name: visibleText(path.basename(name)), text, parts };
  let recorded = text;
  for (const { file, key, ...entry } of courses) {
    const record = await read(file);
    recorded = underItsName(file, () => withCourse(recorded, key, { ...entry, record }));
  }
  if (dyno !== undefined) {
    const { file, ...entry } = dyno;
    const record = await read(file);
    recorded = underItsName(file, () => withDyno(recorded, { ...entry, record }));
  }
  const whole = asMeasured ? useMeasured(recorded, name) : recorded;
  const files = [...courses, ...(dyno === undefined ? [] : [dyno])].map(({ file }) => file);
  const said = files.length === 0 ? name : `${name} with ${files.join(' and ')}`;
  return { name: visibleText(path.basename(name)), text: whole, parts: readParts(whole, said) };
}

/** A recorded file is refused under its own name and rows. */
function underItsName(file: string, taken: () => string): string {
  try {
    return taken();
  } catch (error) {
    if (error instanceof InputError) throw new CommandError(`${file}: ${error.message}`);
    throw error;
  }
}

function isForUser(error: unknown): error is Error {
  const kinds = [
    CommandError,
    ParameterError,
    PartsFileError,
    InputError,
    QuantityError,
    ConvergenceError,
    FitError,
  ];
  return kinds.some((kind) => error instanceof kind);
}
