import { requireEach, requireKind, requireRecord } from '../../base/checks.js';
import type { Block } from './block.js';

/**
 * Blocks of a page that are made when they are first asked for, and once.
 *
 * @public
 */
export interface Later {
  readonly kind: 'later';
  /** Whether they are made already. */
  readonly made: boolean;
  readonly blocks: readonly Block[];
}

/**
 * What a page is made of: a block, or blocks that are made when somebody looks at them.
 *
 * @public
 */
export type Piece = Block | Later;

/**
 * Blocks that can wait: a page in a browser makes them when they are in the window, or as soon as the reader pauses.
 *
 * @param make - makes them; called once, or again where it threw
 * @throws InputError for anything but a function, and when they are made for anything but blocks
 * @public
 */
export function later(make: () => Block | readonly Block[]): Later {
  requireKind(make, 'function', 'make');
  const blocks = once((): readonly Block[] => {
    const all = [make()].flat();
    requireEach(all, 'make()', requireRecord);
    return all;
  });
  let made = false;
  return {
    kind: 'later',
    get made() {
      return made;
    },
    get blocks() {
      const all = blocks();
      made = true;
      return all;
    },
  };
}

/**
 * A value that is worked out when it is first asked for: what several pieces of a page share.
 *
 * @param make - works it out; called once, or again where it threw
 * @throws InputError for anything but a function
 * @public
 */
export function once<Value>(make: () => Value): () => Value {
  requireKind(make, 'function', 'make');
  let made: { readonly value: Value } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** The blocks of a piece, made now where they were not. */
export function blocksOfPiece(piece: Piece): readonly Block[] {
  return piece.kind === 'later' ? piece.blocks : [piece];
}
