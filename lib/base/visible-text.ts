/** Control signs but line end and tab, and signs that turn the direction of writing: a terminal obeys the first, a reader is misled by the second. */
const unseen = /(?![\n\t])[\p{Cc}\p{Bidi_C}\u2028\u2029]/gu;

/** A text with such signs written out, as in `\u202e`. */
export function visibleText(text: string): string {
  return text.replaceAll(unseen, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
