import { runInNewContext } from 'node:vm';
import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packedText, unpack } from '../../lib/page/html/packed-text.js';

const unpacked = (text: string): Uint8Array =>
  Uint8Array.from(runInNewContext(`(${unpack})(${JSON.stringify(text)})`) as Uint8Array);

/** Bytes of bits, written as noughts and ones and filled with noughts; blanks are for the reader. */
const ofBits = (bits: string): Uint8Array => {
  const whole = bits.replaceAll(' ', '');
  const filled = whole.padEnd(8 * Math.ceil(whole.length / 8), '0');
  return Uint8Array.from(filled.match(/.{8}/gu) ?? [], (byte) => Number.parseInt(byte, 2));
};

describe('bytes as text in a page', () => {
  it('come back as they were, whatever they are', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
        expect(unpacked(packedText(bytes))).toEqual(bytes);
      }),
    );
    for (const size of [0, 1, 2, 3, 4, 5, 50_000]) {
      for (const byte of [0, 0xc0, 0xf9, 0xfa, 0xff]) {
        const bytes = new Uint8Array(size).fill(byte);
        expect(unpacked(packedText(bytes))).toEqual(bytes);
      }
    }
  });

  it('take the characters that the first seven bits and those after them say', () => {
    // Worked by hand. One byte: tab, line feed, space, `;`, `=` in the place of `<`, `~`.
    const one = ofBits('0000000 0000001 0000010 0011101 0011110 1011111 0000000 0000000');
    expect(packedText(one)).toBe('0\t\n ;=~\t\t');
    // Two bytes: the first, U+00C0, and the last, U+07FF. With the seven of the space these are 33 bits; seven noughts fill the fifth byte and make a tab.
    expect(packedText(ofBits('1100000 000000 1111100 111111 0000010'))).toBe('0\u00C0\u07FF \t');
    // Three bytes: the first, U+1000, and the last, U+CFFF.
    const three = `1111101${'0'.repeat(14)} 1111111${'1'.repeat(14)}`.replaceAll(' ', '').padEnd(48, '0');
    expect(packedText(ofBits(three))).toBe('0\u1000\uCFFF\t');
  });

  it('say how many bytes only fill the last character', () => {
    // Eight ones are seven and one more, with thirteen that fill: one whole byte of them. In the second case 1 and six noughts are 64, which is 34 after `=`.
    expect(packedText(ofBits('11111111'))).toBe(`1${String.fromCharCode(0x1000 + 2 * 0x4000 + 0x2000)}`);
    expect(packedText(ofBits('0000000 1'))).toBe('0\t_');
  });

  it('can neither end a script nor be changed on the way, and are all characters that HTML admits', () => {
    // HTML, Preprocessing the input stream: a carriage return becomes a line feed; surrogates, noncharacters and controls but white space are errors.
    const bytes = Uint8Array.from({ length: 200_000 }, (_byte, index) => (index * 2654435761) >>> 13);
    const text = packedText(bytes);
    expect(text).toMatch(/^[\t\n -;=-~\u{c0}-\u{7ff}\u{1000}-\u{cfff}]*$/u);
    expect(text).not.toMatch(/[<\r\p{Surrogate}\p{Noncharacter_Code_Point}]/u);
    expect(new TextDecoder().decode(new TextEncoder().encode(text))).toBe(text);
  });

  it('hold 6.8 bits in a byte of UTF-8', () => {
    // RFC 3629, section 3, has the lengths 1, 2 and 3. Bits a character: (96 · 7 + 29 · 13 + 3 · 21) / 128; bytes: (96 + 2 · 29 + 3 · 3) / 128.
    const even = Math.log2(128);
    const expected = (96 * even + 29 * (even + 6) + 3 * (even + 14)) / (96 + 2 * 29 + 3 * 3);
    const noise = Array.from({ length: 20_000 }, (_text, index) => Math.sin(index * index).toString(36)).join(
      '',
    );
    const bytes = deflateRawSync(noise);
    const size = new TextEncoder().encode(packedText(bytes)).length;
    expect((8 * bytes.length) / size).toBeCloseTo(expected, 1);
    expect(expected).toBeCloseTo(6.82, 2);
  });
});
