import { blocksOfPiece, type Piece } from '../../page/blocks/later.js';
import { figuresIn, type Page, pageInPieces } from '../../page/blocks/page.js';
import type { BodyContent } from '../../page/html/page-body.js';
import type { Notebook } from '../../page/notebook.js';
import {
  type ParameterTexts,
  partsAround,
  readParameterValues,
} from '../../page/parameters/read-parameters.js';
import { runInPieces } from '../../page/run-notebook.js';
import { unansweredPage } from '../../page/unanswered.js';
import type { PartsFile } from '../../parts/parts-file.js';
import type { Figure } from '../../plot/chart/figure.js';
import { withStart } from '../../plot/figure/beside-start.js';
import { expectedFailure } from './failure.js';
import { type Settings, settingsOf } from './settings.js';

/** What a page shows: a parts file, settings, and what the notebook makes of them. */
export interface Case {
  readonly file: PartsFile;
  readonly settings: Settings;
  readonly page: Page;
  /** All of the page; asking for it makes what is not made yet. */
  readonly body: BodyContent;
  readonly parameters: BodyContent['parameters'];
  /** Whether the parts file says enough for the notebook. */
  readonly answered: boolean;
}

/**
 * Runs a notebook; what it makes later is not made yet.
 *
 * @param notebook - the notebook
 * @param file - the parts
 * @param texts - what is given for its parameters
 * @param build - the build that the rest begins at; the first of the file unless given
 * @throws ParameterError, InputError, ConvergenceError for settings that cannot be used
 */
export function caseOf(notebook: Notebook, file: PartsFile, texts: ParameterTexts, build?: string): Case {
  const { page, values, parameters } = runInPieces(notebook, file.parts, texts, build);
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
    const start = caseOf(notebook, file, texts);
    // All of it is made, or refused.
    void start.page.blocks;
    return start;
  } catch (error) {
    if (!expectedFailure(error)) throw error;
    return caseWith(file, unansweredPage(error, file.parts), {}, [], false);
  }
}

/**
 * A case as it can be shown at once: what is in the window is made, what is not made yet stays as it was in the case shown before. Where the two are not put together from
 * the same pieces all is made.
 *
 * @param isSeen - whether blocks are in the window, by the places that they have in the case shown before
 */
export function caseInSight(next: Case, before: Case, isSeen: (from: number, to: number) => boolean): Case {
  const [pieces, shown] = [next.page.pieces, before.page.pieces];
  if (pieces === undefined || shown === undefined || pieces.length !== shown.length) return next;
  let place = 0;
  const mixed = pieces.map((piece, index): Piece => {
    const old = shown[index]!;
    const from = place;
    place += blocksOfPiece(old).length;
    if (piece.kind !== 'later' || piece.made || isSeen(from, place)) {
      blocksOfPiece(piece);
      return piece;
    }
    return old;
  });
  const { answer, sources } = next.page;
  const page = pageInPieces({ answer, pieces: mixed, sources });
  return caseWith(next.file, page, next.settings, next.parameters, next.answered);
}

/** A figure of a case with that of the start behind it, where the two cases differ. */
export function besideItsStart(figure: Figure, start: Case): Figure {
  const other = figuresIn(start.page).find(({ id }) => id === figure.id);
  return other === undefined || other === figure ? figure : withStart(figure, other);
}

function caseWith(
  file: PartsFile,
  page: Page,
  settings: Settings,
  parameters: BodyContent['parameters'],
  answered: boolean,
): Case {
  return {
    file,
    settings,
    page,
    answered,
    get body() {
      const pictures = new Map(figuresIn(page).map(({ id }) => [id, { wide: '', narrow: '' }]));
      return { page, about: file.parts.about, parameters, pictures };
    },
    parameters,
  };
}
