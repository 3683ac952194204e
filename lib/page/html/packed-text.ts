/**
 * Bytes as text that can stand in a script of a page: five characters for four bytes, where base 64 takes five and a third. The digits to base 85 are the
 * characters from `#` on, with `x` in the place of `<`, which could end the script. A last group of fewer bytes has one character more than bytes.
 */
export function packedText(bytes: Uint8Array): string {
  let text = '';
  for (let start = 0; start < bytes.length; start += 4) {
    let value = 0;
    for (let at = 0; at < 4; at++) value = 256 * value + (bytes[start + at] ?? 0);
    const digits = Array.from({ length: 5 }, (_digit, at) => Math.floor(value / 85 ** (4 - at)) % 85);
    const used = digits.slice(0, Math.min(4, bytes.length - start) + 1);
    text += used.map((digit) => (digit === 25 ? 'x' : String.fromCharCode(35 + digit))).join('');
  }
  return text;
}

/** The function that a page gets the bytes back with, as the text of a script: it runs before the program is there. */
export const unpack = `(text) => {
  const bytes = new Uint8Array(Math.floor((4 * text.length) / 5));
  for (let group = 0; 5 * group < text.length; group++) {
    let value = 0;
    for (let at = 0; at < 5; at++) {
      const code = text.charCodeAt(5 * group + at);
      value = 85 * value + (code === 120 ? 25 : code >= 35 ? code - 35 : 84);
    }
    for (let at = 0; at < 4; at++) bytes[4 * group + at] = value / 2 ** (24 - 8 * at);
  }
  return bytes;
}`;
