import { type Page, pageFigures } from '../../page/blocks/page.js';
import type { BodyContent } from '../../page/html/page-body.js';
import type { Notebook } from '../../page/notebook.js';
import type { ParameterTexts } from '../../page/parameters/read-parameters.js';
import { runNotebook } from '../../page/run-notebook.js';
import type { PartsFile } from '../../parts/parts-file.js';
import type { Figure } from '../../plot/chart/figure.js';
import { besideStart } from '../../plot/figure/beside-start.js';
import { type Settings, settingsOf } from './settings.js';

/** What a page shows: a parts file, settings, and what the notebook makes of them. */
export interface Case {
  readonly file: PartsFile;
  readonly settings: Settings;
  readonly page: Page;
  readonly body: BodyContent;
}

/**
 * Runs a notebook.
 *
 * @throws ParameterError, InputError, ConvergenceError for settings that cannot be used
 */
export function caseOf(notebook: Notebook, file: PartsFile, texts: ParameterTexts): Case {
  const { parts } = file;
  const { page, values, parameters } = runNotebook(notebook, parts, texts);
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
