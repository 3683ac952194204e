import { requireEach, requireKind, requireRecord } from '../../base/checks.js';
import type { Figure } from '../../plot/chart/figure.js';
import type { Block } from './block.js';
import { blocksOfPiece, once, type Piece } from './later.js';

/**
 * The result of a notebook, as plain data: the same parts and parameters give the same page.
 *
 * @public
 */
export interface Page {
  /** One sentence that answers the question of the notebook; the first thing read. */
  readonly answer: string;
  readonly blocks: readonly Block[];
  /** The same blocks in the pieces that they are made in, where the page was put together by `pageInPieces`. */
  readonly pieces?: readonly Piece[];
  /** Published sources of the laws used, one citation each. */
  readonly sources: readonly string[];
}

/**
 * A page of which only the answer is made at once. Whoever reads its `blocks` makes them all.
 *
 * @param page - answer and sources as those of {@link Page}; pieces, as many and in the same order whatever the settings: what there may be nothing of is a piece of no blocks
 * @throws InputError for another form; what stands in a block is looked at where a page is written
 * @public
 */
export function pageInPieces(
  page: Pick<Page, 'answer' | 'sources'> & { readonly pieces: readonly Piece[] },
): Page {
  requireRecord(page, 'page');
  const { answer, pieces, sources } = page;
  requireKind(answer, 'string', 'page.answer');
  requireEach(sources, 'page.sources', (source, field) => requireKind(source, 'string', field));
  requireEach(pieces, 'page.pieces', (piece, field) => {
    requireRecord(piece, field);
    requireKind(piece.kind, 'string', `${field}.kind`);
  });
  const blocks = once(() => pieces.flatMap(blocksOfPiece));
  return {
    answer,
    get blocks() {
      return blocks();
    },
    sources,
    pieces,
  };
}

/** The blocks of a page in reading order, with those that stand behind a disclosure after it. */
export function blocksOf({ blocks }: Pick<Page, 'blocks'>): readonly Block[] {
  return blocks.flatMap((block): readonly Block[] =>
    block.kind === 'reveal' ? [block, ...block.blocks] : [block],
  );
}

/** Its figures, as {@link blocksOf}. */
export function figuresIn(page: Pick<Page, 'blocks'>): readonly Figure[] {
  return blocksOf(page).flatMap((block) => (block.kind === 'figure' ? [block.figure] : []));
}
