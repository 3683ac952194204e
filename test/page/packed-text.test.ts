import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packedText, unpack } from '../../lib/page/html/packed-text.js';

const unpacked = (text: string): Uint8Array =>
  Uint8Array.from(runInNewContext(`(${unpack})(${JSON.stringify(text)})`) as Uint8Array);

describe('bytes as text in a page', () => {
  it('come back as they were, whatever they are', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
        expect(unpacked(packedText(bytes))).toEqual(bytes);
      }),
    );
  });

  it('take five characters for four, none of which could end a script or be changed on the way', () => {
    const bytes = Uint8Array.from({ length: 4096 }, (_byte, index) => (index * 2654435761) >>> 24);
    const text = packedText(bytes);
    expect(text.length).toBe(5120);
    expect(text).toMatch(/^[#-;=-x]*$/u);
  });

  it('are those of the published encoding, with other characters', () => {
    // ZeroMQ RFC 32, "Z85": the bytes of its example are "HelloWorld" in its alphabet, whose digits these are.
    const z85 = '0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ.-:+=^!/*?&<>()[]{}@%$#';
    const digits = [...'HelloWorld'].map((sign) => z85.indexOf(sign));
    const expected = digits.map((digit) => (digit === 25 ? 'x' : String.fromCharCode(35 + digit))).join('');
    const bytes = Uint8Array.of(0x86, 0x4f, 0xd2, 0x6f, 0xb5, 0x59, 0xf7, 0x5b);
    expect(packedText(bytes)).toBe(expected);
  });
});
