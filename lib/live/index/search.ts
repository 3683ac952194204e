/** What a search finds in the sentences of a page. */
export interface Found {
  /** A sentence with one of the words, the first that is not shown in the list anyway. */
  readonly sentence?: string;
}

/**
 * Looks for words in sentences: each word must stand somewhere, also as a part of another, whatever its case.
 *
 * @param asked - the words, with spaces between them
 * @param shown - sentences that the list shows anyway
 * @param others - the other sentences of the page
 * @returns what was found; nothing where a word is missing
 */
export function find(asked: string, shown: readonly string[], others: readonly string[]): Found | undefined {
  const words = folded(asked)
    .split(/\s+/u)
    .filter((word) => word !== '');
  const inShown = folded(shown.join(' '));
  const inAll = `${inShown} ${folded(others.join(' '))}`;
  if (!words.every((word) => inAll.includes(word))) return undefined;
  const hidden = words.filter((word) => !inShown.includes(word));
  if (hidden.length === 0) return {};
  const sentence = others.find((one) => hidden.every((word) => folded(one).includes(word)));
  const first = sentence ?? others.find((one) => hidden.some((word) => folded(one).includes(word)));
  return first === undefined ? {} : { sentence: first };
}

/** Small letters without accents, with plain spaces. */
function folded(text: string): string {
  return text.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();
}
