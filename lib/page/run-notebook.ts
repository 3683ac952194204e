import type { Parts } from '../parts/parts.js';
import type { Block } from './blocks/block.js';
import { requirePageIds } from './blocks/checked-page.js';
import { later } from './blocks/later.js';
import { type Page, pageInPieces } from './blocks/page.js';
import { sayingMeasured } from './measured-builds.js';
import type { Notebook } from './notebook.js';
import { type ParameterText, parameterTexts } from './parameters/parameter-text.js';
import type { Parameters, ParameterValues } from './parameters/parameters.js';
import { type ParameterTexts, partsAround, readParameterValues } from './parameters/read-parameters.js';
import { inKeysOfTheFile } from './refusal.js';

/** What a notebook makes of parts and settings, with the settings as they were read and as a page shows them. */
export interface NotebookRun {
  readonly page: Page;
  readonly values: ParameterValues<Parameters>;
  readonly parameters: readonly ParameterText[];
}

/**
 * Runs a notebook.
 *
 * @param texts - what the user gave, by name of parameter
 * @param build - the build that all else begins at; the first of the file unless given
 * @throws ParameterError, InputError for settings that cannot be used
 */
export function runNotebook(
  notebook: Notebook,
  parts: Parts,
  texts: ParameterTexts,
  build?: string,
): NotebookRun {
  const run = runInPieces(notebook, parts, texts, build);
  // This makes all of its blocks.
  requirePageIds(run.page);
  return run;
}

/**
 * The same with those pieces not made yet that the notebook makes later.
 *
 * @throws ParameterError, InputError for settings that cannot be used; so may a piece when it is made
 */
export function runInPieces(
  notebook: Notebook,
  parts: Parts,
  texts: ParameterTexts,
  build?: string,
): NotebookRun {
  const { parameters } = notebook;
  const inItsKeys = <Result>(make: () => Result): Result => {
    try {
      return make();
    } catch (error) {
      throw inKeysOfTheFile(error, parameters);
    }
  };
  // What a setting begins at is asked of the laws too.
  const values = inItsKeys(() => readParameterValues(parameters, texts, partsAround(parts, build)));
  const made = inItsKeys(() => notebook.run(parts, values));
  const page = sayingMeasured(withPieces(made, inItsKeys), parts, parameters, values);
  return { page, values, parameters: parameterTexts(parameters, values) };
}

/** A page of which each piece is made with something around it. */
function withPieces(page: Page, around: (make: () => readonly Block[]) => readonly Block[]): Page {
  const { answer, sources, pieces } = page;
  if (pieces === undefined) return page;
  return pageInPieces({
    answer,
    sources,
    pieces: pieces.map((piece) => (piece.kind === 'later' ? later(() => around(() => piece.blocks)) : piece)),
  });
}
