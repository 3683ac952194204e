import { figuresIn, type Page } from '../../page/blocks/page.js';
import type { BodyContent } from '../../page/html/page-body.js';
import type { Notebook } from '../../page/notebook.js';
import {
  type ParameterTexts,
  partsAround,
  readParameterValues,
} from '../../page/parameters/read-parameters.js';
import { runNotebook } from '../../page/run-notebook.js';
import { unansweredPage } from '../../page/unanswered.js';
import type { PartsFile } from '../../parts/parts-file.js';
import type { Figure } from '../../plot/chart/figure.js';
import { besideStart } from '../../plot/figure/beside-start.js';
import { expectedFailure } from './failure.js';
import { type Settings, settingsOf } from './settings.js';

/** What a page shows: a parts file, settings, and what the notebook makes of them. */
export interface Case {
  readonly file: PartsFile;
  readonly settings: Settings;
  readonly page: Page;
  readonly body: BodyContent;
  /** Whether the parts file says enough for the notebook. */
  readonly answered: boolean;
}

/**
 * Runs a notebook.
 *
 * @param notebook - the notebook
 * @param file - the parts
 * @param texts - what is given for its parameters
 * @param build - the build that the rest begins at; the first of the file unless given
 * @throws ParameterError, InputError, ConvergenceError for settings that cannot be used
 */
export function caseOf(notebook: Notebook, file: PartsFile, texts: ParameterTexts, build?: string): Case {
  const { page, values, parameters } = runNotebook(notebook, file.parts, texts, build);
  return caseWith(file, page, settingsOf(notebook.parameters, values), parameters, true);
}

/** The settings of a notebook where these are given, in words that can be given again. */
export function settingsWith(
  notebook: Notebook,
  { parts }: PartsFile,
  texts: ParameterTexts,
  build?: string,
): Settings {
  const { parameters } = notebook;
  return settingsOf(parameters, readParameterValues(parameters, texts, partsAround(parts, build)));
}

/** Runs a notebook from what it begins with; where the file does not say enough, the case is a page that says what it needs. */
export function startOf(notebook: Notebook, file: PartsFile, texts: ParameterTexts): Case {
  try {
    return caseOf(notebook, file, texts);
  } catch (error) {
    if (!expectedFailure(error)) throw error;
    return caseWith(file, unansweredPage(error, file.parts), {}, [], false);
  }
}

/** The figures of a case, each with that of the start behind it where the two cases differ. */
export function figuresOf(now: Case, start: Case): readonly Figure[] {
  const figures = figuresIn(now.page);
  if (now === start) return figures;
  const before = new Map(figuresIn(start.page).map((figure) => [figure.id, figure]));
  return figures.map((figure) => {
    const other = before.get(figure.id);
    return other === undefined ? figure : besideStart(figure, other);
  });
}

function caseWith(
  file: PartsFile,
  page: Page,
  settings: Settings,
  parameters: BodyContent['parameters'],
  answered: boolean,
): Case {
  const pictures = new Map(figuresIn(page).map(({ id }) => [id, { wide: '', narrow: '' }]));
  return { file, settings, page, answered, body: { page, about: file.parts.about, parameters, pictures } };
}
