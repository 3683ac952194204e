import type { Notebook } from '../../page/notebook.js';
import { type PartsFile, partsFile } from '../../parts/parts-file.js';
import { type Case, caseOf } from './case.js';
import { fragmentOf, type Settings } from './settings.js';
import { readStart } from './start.js';

/** All that changes while a page is read. */
export interface Session {
  readonly notebook: Notebook;
  /** The case that the page came with. */
  readonly first: Case;
  /** The case that others are compared with; another one once a parts file is opened. */
  start: Case;
  /** The case on the screen. */
  now: Case;
  /** What the reader asks for; it may not be possible. */
  wanted: { readonly file: PartsFile; readonly settings: Settings };
  /** Whether the address asks for it, and not a control. */
  fromAddress: boolean;
}

/** Begins with the case that the page carries. */
export function openSession(notebook: Notebook): Session {
  const { partsName, partsText, given } = readStart();
  const first = caseOf(notebook, partsFile(partsName, partsText), given);
  return { notebook, first, start: first, now: first, wanted: first, fromAddress: false };
}

/**
 * The case that the reader asks for.
 *
 * @throws ParameterError, InputError, ConvergenceError where it is not possible
 */
export function caseWanted({ notebook, start, wanted }: Session): Case {
  const same = wanted.file === start.file && fragmentOf(wanted.settings, start.settings) === '';
  return same ? start : caseOf(notebook, wanted.file, wanted.settings);
}
