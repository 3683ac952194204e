import { type Page, pageFigures, requirePageIds } from '../../page/blocks/page.js';
import type { BodyContent } from '../../page/html/page-body.js';
import type { Notebook } from '../../page/notebook.js';
import { parameterTexts } from '../../page/parameters/parameter-text.js';
import { type ParameterTexts, readParameterValues } from '../../page/parameters/read-parameters.js';
import type { Parts } from '../../parts/parts.js';
import { readParts } from '../../parts/read-parts.js';
import type { Figure } from '../../plot/chart/figure.js';
import { besideStart } from '../../plot/figure/beside-start.js';
import { type Settings, settingsOf } from './settings.js';

/** A parts file with its text. */
export interface PartsFile {
  readonly name: string;
  readonly text: string;
  readonly parts: Parts;
}

/** What a page shows: a parts file, settings, and what the notebook makes of them. */
export interface Case {
  readonly file: PartsFile;
  readonly settings: Settings;
  readonly page: Page;
  readonly body: BodyContent;
}

/**
 * Reads a parts file.
 *
 * @throws PartsFileError
 */
export function partsFile(name: string, text: string): PartsFile {
  return { name, text, parts: readParts(text, name) };
}

/**
 * Runs a notebook.
 *
 * @throws ParameterError, InputError, ConvergenceError for settings that cannot be used
 */
export function caseOf(notebook: Notebook, file: PartsFile, texts: ParameterTexts): Case {
  const { parts } = file;
  const values = readParameterValues(notebook.parameters, texts, parts);
  const page = notebook.run(parts, values);
  requirePageIds(page);
  const parameters = parameterTexts(notebook.parameters, values);
  const places = new Map(pageFigures(page).map(({ id }) => [id, { wide: '', narrow: '' }]));
  return {
    file,
    settings: settingsOf(notebook.parameters, values),
    page,
    body: { page, about: parts.about, parameters, pictures: places },
  };
}

/** The figures of a case, each with that of the start behind it where the two cases differ. */
export function figuresOf(now: Case, start: Case): readonly Figure[] {
  const figures = pageFigures(now.page);
  if (now === start) return figures;
  const before = new Map(pageFigures(start.page).map((figure) => [figure.id, figure]));
  return figures.map((figure) => {
    const other = before.get(figure.id);
    return other === undefined ? figure : besideStart(figure, other);
  });
}
