/**
 * Bytes as text that can stand in a script of a page and is short in UTF-8, where a character takes one, two or three bytes: each begins with seven bits,
 * which are a number from 0 to 127. Up to 95 it is one of the characters of one byte, the printed ones, tab and line feed without `<`, which could end the script. Up to 124
 * it is, with six bits more, one of two bytes; above, with fourteen bits more, one of three. That is 6.8 bits a byte, where base 64 holds 6 and base 94 6.55.
 * The first character tells how many bytes at the end only fill the last one.
 */
export function packedText(bytes: Uint8Array): string {
  const text: string[] = [];
  const all = 8 * bytes.length;
  let at = 0;
  const take = (count: number): number => {
    let value = 0;
    for (const end = at + count; at < end; at++) {
      value = 2 * value + (((bytes[at >> 3] ?? 0) >> (7 - (at & 7))) & 1);
    }
    return value;
  };
  while (at < all) {
    const begin = take(7);
    text.push(
      String.fromCharCode(
        begin < ofOneByte
          ? oneByte(begin)
          : begin < ofThreeBytes
            ? 0xc0 + 64 * (begin - ofOneByte) + take(6)
            : 0x1000 + 0x4000 * (begin - ofThreeBytes) + take(14),
      ),
    );
  }
  return Math.floor((at - all) / 8) + text.join('');
}

/** Beginnings of seven bits from here on are of characters of two bytes, from U+00C0 to U+07FF. */
const ofOneByte = 96;
/** From here on they are of three, from U+1000 to U+CFFF. */
const ofThreeBytes = 125;

/** The characters of one byte: tab, line feed, space to `;`, `=` to `~`. */
function oneByte(value: number): number {
  if (value < 2) return 9 + value;
  return value < 30 ? 30 + value : 31 + value;
}

/** The function that a page gets the bytes back with, as the text of a script: it runs before the program is there. */
export const unpack = `(text) => {
  const bytes = new Uint8Array(3 * text.length);
  let size = 0;
  let held = 0;
  let bits = 0;
  for (let at = 1; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < 128) {
      held = (held << 7) | (code < 32 ? code - 9 : code < 60 ? code - 30 : code - 31);
      bits += 7;
    } else if (code < 2048) {
      held = (held << 13) | (code + 5952);
      bits += 13;
    } else {
      held = (held << 21) | (code + 2043904);
      bits += 21;
    }
    while (bits >= 8) bytes[size++] = held >>> (bits -= 8);
  }
  return bytes.subarray(0, size - text[0]);
}`;
