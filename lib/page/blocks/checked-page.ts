import { InputError } from '../../base/input-error.js';
import { listOf, requireShape, type Shape, someText } from '../../base/shape.js';
import type { Figure } from '../../plot/chart/figure.js';
import { requireId } from '../../plot/chart/figure-text.js';
import type { Block } from './block.js';
import { blockShape } from './block.js';
import { blocksOf, figuresIn, type Page } from './page.js';

// What is made in a browser is not checked there: these stand by themselves, so that no page carries the forms of all blocks.

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
