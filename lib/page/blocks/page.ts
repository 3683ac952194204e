import { InputError } from '../../base/input-error.js';
import { listOf, requireShape, type Shape, someText } from '../../base/shape.js';
import type { Figure } from '../../plot/chart/figure.js';
import { requireId } from '../../plot/chart/figure-text.js';
import type { Block } from './block.js';
import { blockShape } from './block.js';

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

/** Form of {@link Page}. */
export const pageShape: Shape = { answer: someText, blocks: listOf(blockShape), sources: listOf(someText) };

/**
 * The blocks of a page in reading order, with those that stand behind a disclosure after it.
 *
 * @public
 */
export function allBlocks(input: Page): readonly Block[] {
  requireShape({ input }, { input: pageShape });
  return blocksOf(input);
}

/** The same for a page that was checked when it was made: a live page asks for them many times a redraw. */
export function blocksOf({ blocks }: Pick<Page, 'blocks'>): readonly Block[] {
  return blocks.flatMap((block): readonly Block[] =>
    block.kind === 'reveal' ? [block, ...block.blocks] : [block],
  );
}

/** Its figures, as {@link blocksOf}. */
export function figuresIn(page: Pick<Page, 'blocks'>): readonly Figure[] {
  return blocksOf(page).flatMap((block) => (block.kind === 'figure' ? [block.figure] : []));
}

/**
 * True where every check of the page passed.
 *
 * @public
 */
export function pagePassed(page: Page): boolean {
  requireShape({ page }, { page: pageShape });
  return blocksOf(page).every((block) => block.kind !== 'check' || block.passed);
}

/**
 * The figures of a page in reading order.
 *
 * @public
 */
export function pageFigures(page: Page): readonly Figure[] {
  requireShape({ page }, { page: pageShape });
  return figuresIn(page);
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
