import { byKind, type Shape } from '../../base/shape.js';
import type { ChecklistBlock } from './checklist.js';
import { checklistBlockShape } from './checklist.js';
import { type MotionBlock, motionBlockShape } from './motion.js';
import type {
  AssumptionsBlock,
  CautionBlock,
  CheckBlock,
  FigureBlock,
  HeadingBlock,
  LinesBlock,
  ListBlock,
  TableBlock,
  TextBlock,
} from './plain-blocks.js';
import {
  assumptionsBlockShape,
  cautionBlockShape,
  checkBlockShape,
  figureBlockShape,
  headingBlockShape,
  linesBlockShape,
  listBlockShape,
  tableBlockShape,
  textBlockShape,
} from './plain-blocks.js';
import type { RevealBlock } from './reveal.js';
import { revealBlockShape } from './reveal.js';

/**
 * One piece of a page, as plain data. All texts are plain text, never markup.
 *
 * @public
 */
export type Block =
  | HeadingBlock
  | TextBlock
  | LinesBlock
  | ListBlock
  | FigureBlock
  | TableBlock
  | CheckBlock
  | CautionBlock
  | AssumptionsBlock
  | ChecklistBlock
  | MotionBlock
  | RevealBlock;

/** Form of {@link Block}. */
export const blockShape: Shape = byKind({
  heading: headingBlockShape,
  text: textBlockShape,
  lines: linesBlockShape,
  list: listBlockShape,
  figure: figureBlockShape,
  table: tableBlockShape,
  check: checkBlockShape,
  caution: cautionBlockShape,
  assumptions: assumptionsBlockShape,
  checklist: checklistBlockShape,
  motion: motionBlockShape,
  reveal: revealBlockShape,
});
