/**
 * Width of a text [px], estimated on the wide side from classes of letters, so that the layout is the same on every
 * machine and has room for a substitute font.
 */
export function textWidth(text: string, fontSize: number): number {
  let width = 0;
  for (const letter of text) width += letterWidth(letter);
  return width * fontSize;
}

/** Shortens a text to a width in its middle, where names differ least. */
export function shortened(text: string, fontSize: number, limit: number): string {
  if (textWidth(text, fontSize) <= limit) return text;
  const letters = [...text];
  // No letter is narrower than a pixel: of a long text only so many can stay.
  for (let kept = Math.min(letters.length - 1, Math.ceil(limit)); kept > 2; kept--) {
    const tail = Math.floor(kept / 3);
    const shorter = `${letters
      .slice(0, kept - tail)
      .join('')
      .trimEnd()}…${letters.slice(-tail).join('').trimStart()}`;
    if (textWidth(shorter, fontSize) <= limit) return shorter;
  }
  return '…';
}

/** Breaks a text at spaces into lines no wider than the limit, but not between a number and its unit; a single longer word is shortened. */
export function wrapped(text: string, fontSize: number, limit: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/(?<!\d)\s+/u)) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, fontSize) <= limit)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(shortened(word, fontSize, limit));
  }
  return lines;
}

/** The widths of ASCII, looked up: a picture asks for thousands of letters each time that it is drawn. */
const asciiWidths: readonly number[] = Array.from({ length: 128 }, (_, code) =>
  widthOfClass(String.fromCharCode(code)),
);

function letterWidth(letter: string): number {
  return asciiWidths[letter.charCodeAt(0)] ?? widthOfClass(letter);
}

/** Advance in widths of an em: about the widest of each class in Inter, semi-bold. */
function widthOfClass(letter: string): number {
  if (letter === ' ') return 0.28;
  if (/[fijlrtI.,:;'’|!()[\]·]/u.test(letter)) return 0.37;
  if (/[mwMW@%—…]/u.test(letter)) return 0.96;
  if (/[A-Z&+=<>−]/u.test(letter)) return 0.72;
  // Full-width letters start with the CJK blocks; emoji lie above them.
  return (letter.codePointAt(0) ?? 0) >= 0x2e80 ? 1.1 : 0.61;
}
