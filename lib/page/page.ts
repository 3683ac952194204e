import { InputError } from '../base/input-error.js';
import { type Figure, requireId } from '../plot/chart/figure.js';
import type { Table } from '../plot/chart/table.js';
import type { ChecklistBlock } from './blocks/checklist.js';
import type { RevealBlock } from './blocks/reveal.js';

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

/**
 * A heading between blocks.
 *
 * @public
 */
export interface HeadingBlock {
  readonly kind: 'heading';
  readonly text: string;
}

/**
 * One paragraph.
 *
 * @public
 */
export interface TextBlock {
  readonly kind: 'text';
  readonly text: string;
}

/**
 * Short items under each other.
 *
 * @public
 */
export interface ListBlock {
  readonly kind: 'list';
  readonly items: readonly string[];
}

/**
 * A figure; its alternative text is its caption, and its table stands behind it.
 *
 * @public
 */
export interface FigureBlock {
  readonly kind: 'figure';
  readonly figure: Figure;
}

/**
 * A table in full view.
 *
 * @public
 */
export interface TableBlock {
  readonly kind: 'table';
  /** File name and anchor: small letters, digits and hyphens; differs from the ids of the figures. */
  readonly id: string;
  readonly title: string;
  readonly table: Table;
  /** One sentence on how to read it. */
  readonly note?: string;
}

/**
 * A claim that the page checks on its own numbers.
 *
 * @public
 */
export interface CheckBlock {
  readonly kind: 'check';
  readonly claim: string;
  readonly passed: boolean;
  /** The numbers compared. */
  readonly detail: string;
}

/**
 * What a reader must mind before acting on the page.
 *
 * @public
 */
export interface CautionBlock {
  readonly kind: 'caution';
  readonly text: string;
}

/**
 * What the numbers rest on.
 *
 * @public
 */
export interface AssumptionsBlock {
  readonly kind: 'assumptions';
  readonly items: readonly string[];
}

/**
 * The result of a notebook, as plain data: the same parts and parameters give the same page.
 *
 * @public
 */
export interface Page {
  /** One sentence that answers the question of the notebook; the first thing read. */
  readonly answer: string;
  readonly blocks: readonly Block[];
  /** Published sources of the laws used, one citation each. */
  readonly sources: readonly string[];
}

/**
 * The blocks of a page in reading order, with those that stand behind a disclosure after it.
 *
 * @public
 */
export function allBlocks({ blocks }: Page): readonly Block[] {
  return blocks.flatMap((block): readonly Block[] =>
    block.kind === 'reveal' ? [block, ...block.blocks] : [block],
  );
}

/**
 * True where every check of the page passed.
 *
 * @public
 */
export function pagePassed(page: Page): boolean {
  return allBlocks(page).every((block) => block.kind !== 'check' || block.passed);
}

/**
 * The figures of a page in reading order.
 *
 * @public
 */
export function pageFigures(page: Page): readonly Figure[] {
  return allBlocks(page).flatMap((block) => (block.kind === 'figure' ? [block.figure] : []));
}

/**
 * Checks that each figure and table has an id of its own, fit for a file name.
 *
 * @throws InputError for an id that is no file name or that two blocks have
 */
export function requirePageIds(page: Page): void {
  // The place of the controls is named already.
  const seen = new Set<string>(['controls']);
  for (const block of allBlocks(page)) {
    const id = block.kind === 'figure' ? block.figure.id : 'id' in block ? block.id : undefined;
    if (id === undefined) continue;
    requireId(id);
    if (seen.has(id))
      throw new InputError({
        field: 'id',
        value: id,
        accepted: 'that of one block only',
      });
    seen.add(id);
  }
}
