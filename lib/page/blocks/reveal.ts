import { byKind, listOf, oneOf, type Shape, someText } from '../../base/shape.js';
import type { CheckBlock, FigureBlock, ListBlock, TableBlock, TextBlock } from './plain-blocks.js';
import {
  checkBlockShape,
  figureBlockShape,
  listBlockShape,
  tableBlockShape,
  textBlockShape,
} from './plain-blocks.js';

/**
 * A question to predict, and what happens, behind a disclosure. Paper keeps the question alone while the disclosure is closed.
 *
 * @public
 */
export interface RevealBlock {
  readonly kind: 'reveal';
  /** Anchor: small letters, digits and hyphens; differs from all other ids of the page. */
  readonly id: string;
  readonly question: string;
  /** What could happen; one of them does. */
  readonly choices: readonly string[];
  /** What happens. */
  readonly blocks: readonly RevealedBlock[];
}

/**
 * What can stand behind a disclosure.
 *
 * @public
 */
export type RevealedBlock = TextBlock | ListBlock | FigureBlock | TableBlock | CheckBlock;

/** Form of {@link RevealedBlock}. */
export const revealedBlockShape: Shape = byKind({
  text: textBlockShape,
  list: listBlockShape,
  figure: figureBlockShape,
  table: tableBlockShape,
  check: checkBlockShape,
});

/** Form of {@link RevealBlock}. */
export const revealBlockShape: Shape = {
  kind: oneOf('reveal'),
  id: someText,
  question: someText,
  choices: listOf(someText),
  blocks: listOf(revealedBlockShape),
};
