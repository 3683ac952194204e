import type { ChecklistBlock } from './checklist.js';
import type {
  AssumptionsBlock,
  CautionBlock,
  CheckBlock,
  FigureBlock,
  HeadingBlock,
  ListBlock,
  TableBlock,
  TextBlock,
} from './plain-blocks.js';
import type { RevealBlock } from './reveal.js';

/**
 * One piece of a page, as plain data. All texts are plain text, never markup.
 *
 * @public
 */
export type Block =
  | HeadingBlock
  | TextBlock
  | ListBlock
  | FigureBlock
  | TableBlock
  | CheckBlock
  | CautionBlock
  | AssumptionsBlock
  | ChecklistBlock
  | RevealBlock;
