import type { Parameters } from '../../page/parameters/parameters.js';
import type { ParameterTexts } from '../../page/parameters/read-parameters.js';
import { type PartsFile, partsFile } from '../../parts/parts-file.js';
import { type Choices, choicesFor } from './choices.js';
import type { FirstDraft } from './first-draft.js';
import type { Start } from './start.js';

/** What all pages of a document work on: the parts, and what the reader chose. */
export interface Bench {
  /** The parameters of all pages. */
  readonly declarations: readonly Parameters[];
  /** What the command was given. */
  readonly given: ParameterTexts;
  /** The parts that the document came with. */
  readonly origin: PartsFile;
  /** The parts that others are compared with; other ones once a file is opened. */
  start: PartsFile;
  /** The parts as the reader has changed them. */
  file: PartsFile;
  choices: Choices;
  /** What was typed into the form of a first file; nothing before it is begun. */
  first: FirstDraft | undefined;
}

/** Begins with what the document came with. */
export function openBench(
  { partsName, partsText, given }: Start,
  declarations: readonly Parameters[],
): Bench {
  const origin = partsFile(partsName, partsText);
  return { declarations, given, origin, start: origin, file: origin, choices: {}, first: undefined };
}

/** Goes on with another parts file; with one that the reader opened, others are compared from now on. */
export function takeFile(bench: Bench, file: PartsFile, opened: boolean): void {
  bench.file = file;
  if (opened) bench.start = file;
  bench.choices = choicesFor(file.parts, bench.declarations, bench.choices);
}
