import type { Parameters } from '../../page/parameters/parameters.js';
import type { ParameterTexts } from '../../page/parameters/read-parameters.js';
import { type PartsFile, partsFile } from '../../parts/parts-file.js';
import { choicesFor, useChoice } from './choices.js';
import type { FirstDraft } from './first-draft.js';
import { fileInUse, type MeasuredBench } from './measured-use.js';
import type { Start } from './start.js';

/** What all pages of a document work on: the parts, and what the reader chose. */
export interface Bench extends MeasuredBench {
  /** The parameters of all pages. */
  readonly declarations: readonly Parameters[];
  /** What the command was given. */
  readonly texts: ParameterTexts;
  /** The parts that others are compared with; other ones once a file is opened. */
  start: PartsFile;
  /** What was typed into the form of a first file; nothing before it is begun. */
  first: FirstDraft | undefined;
}

/** Begins with what the document came with. */
export function openBench(
  { partsName, partsText, texts, fitted = [] }: Start,
  declarations: readonly Parameters[],
): Bench {
  const origin = partsFile(partsName, partsText);
  return {
    declarations,
    texts,
    origin,
    start: origin,
    file: origin,
    choices: {},
    fitted,
    measured: undefined,
    first: undefined,
  };
}

/** Whether all is as the document came: the answers and pictures in it hold. */
export function asItCame({ origin, start, file, choices }: Bench): boolean {
  return file === origin && start === origin && Object.keys(choices).length === 0;
}

/** Goes on with another parts file; with one that the reader opened, others are compared from now on. */
export function takeFile(bench: Bench, file: PartsFile, opened: boolean): void {
  bench.file = file;
  if (opened) bench.start = file;
  keepPossible(bench);
}

/** Takes the shocks as measured from now on, or as stated. */
export function takeMeasured(bench: Bench, measured: boolean): void {
  const { [useChoice]: _before, ...others } = bench.choices;
  bench.choices = measured ? { ...others, [useChoice]: 'measured' } : others;
  keepPossible(bench);
}

/** Leaves open what the reader chose among parts that are there no more. */
function keepPossible(bench: Bench): void {
  const { parts } = fileInUse(bench, bench.choices);
  bench.choices = choicesFor(parts, bench.declarations, bench.choices);
}
