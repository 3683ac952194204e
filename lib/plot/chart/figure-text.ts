import { InputError } from '../../base/input-error.js';

/**
 * What every figure says of itself in words.
 *
 * @public
 */
export interface FigureText {
  /** File name and anchor: small letters, digits and hyphens. */
  readonly id: string;
  /** A few words: what is shown against what. */
  readonly title: string;
  /** One sentence with the key numbers, for those who do not see the picture and as its caption. */
  readonly alt: string;
}

/**
 * Checks the words of a figure.
 *
 * @throws InputError for an id that is no file name, an empty title, or an empty alternative text
 */
export function requireFigureText({ id, title, alt }: FigureText): void {
  requireId(id);
  if (title.trim() === '')
    throw new InputError({ field: `title of figure ${id}`, value: title, accepted: 'a few words' });
  if (alt.trim() === '')
    throw new InputError({
      field: `alt of figure ${id}`,
      value: alt,
      accepted: 'one sentence with the key numbers',
    });
}

/** Checks an id that becomes a file name and an anchor. */
export function requireId(id: string): void {
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/u.test(id))
    throw new InputError({ field: 'id', value: id, accepted: 'small letters, digits and single hyphens' });
}
