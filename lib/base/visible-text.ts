/** Control signs but line end and tab, and signs that turn the direction of writing: a terminal obeys the first, a reader is misled by the second. */
const unseen =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu;

/** A text with such signs written out, as in `\u202e`. */
export function visibleText(text: string): string {
  return text.replaceAll(unseen, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
