import type { Parts } from '../parts/parts.js';
import { type Page, requirePageIds } from './blocks/page.js';
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
  const { parameters } = notebook;
  const values = readParameterValues(parameters, texts, partsAround(parts, build));
  const page = sayingMeasured(answered(notebook, parts, values), parts, parameters, values);
  requirePageIds(page);
  return { page, values, parameters: parameterTexts(parameters, values) };
}

function answered(notebook: Notebook, parts: Parts, values: ParameterValues<Parameters>): Page {
  try {
    return notebook.run(parts, values);
  } catch (error) {
    throw inKeysOfTheFile(error, notebook.parameters);
  }
}
