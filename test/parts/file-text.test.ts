import { describe, expect, it } from 'vitest';
import { PartsFileError, readParts } from '../../lib/parts/index.js';
import { fileText } from '../../lib/parts/source/file-text.js';
import { smallFile } from './small-file.js';

/** Node's own encoder, an implementation apart from the decoder under test. */
function encoded(text: string, order: 'little' | 'big', mark: boolean): Uint8Array {
  const bytes = Buffer.from(mark ? `\uFEFF${text}` : text, 'utf16le');
  return order === 'little' ? bytes : bytes.swap16();
}

function refused(bytes: Uint8Array): string {
  try {
    fileText(bytes, 'my.yaml');
  } catch (error) {
    if (error instanceof PartsFileError) return error.message;
    throw error;
  }
  return 'accepted';
}

describe('the bytes of a parts file', () => {
  it.each([
    ['little', true],
    ['little', false],
    ['big', true],
    ['big', false],
  ] as const)('are read as UTF-16, %s end first, mark: %s', (order, mark) => {
    expect(fileText(encoded(smallFile, order, mark), 'my.yaml')).toBe(smallFile);
  });

  it('are read as UTF-8 with and without a mark', () => {
    expect(fileText(Buffer.from(smallFile), 'my.yaml')).toBe(smallFile);
    expect(fileText(Buffer.from(`\uFEFF${smallFile}`), 'my.yaml')).toBe(smallFile);
  });

  it.each(['\n', '\r\n', '\r'])(
    'are refused as Latin-1 at the line of the first such sign, lines ending in %j',
    (end) => {
      // "at: 25 °C" is the seventh line of the small file, the only one beyond ASCII.
      expect(refused(Buffer.from(smallFile.replaceAll('\n', end), 'latin1'))).toBe(
        'my.yaml:7:1 this line holds a sign, such as ° or µ, that is not in UTF-8; open the file in a text editor, save it in the encoding UTF-8, and look whether the sign is right',
      );
    },
  );

  it('are refused as UTF-16 that breaks off', () => {
    expect(refused(encoded(smallFile, 'little', true).subarray(0, 101))).toMatch(
      /^my\.yaml:1:1 the file begins as UTF-16 and is damaged further on; open it in a text editor and save it in/u,
    );
  });

  it('are an empty file where there are none', () => {
    expect(() => readParts(fileText(new Uint8Array(), 'my.yaml'), 'my.yaml')).toThrow('the file is empty');
  });
});

describe('line ends', () => {
  it.each(['\r\n', '\r'])('of %j give the same parts, and the same places of faults', (end) => {
    const same = (text: string): unknown => {
      try {
        return readParts(text, 'my.yaml');
      } catch (error) {
        return (error as Error).message;
      }
    };
    expect(same(smallFile.replaceAll('\n', end))).toEqual(readParts(smallFile));
    const wrong = smallFile.replace('bore: 12 mm', 'bore: 12 cSt');
    expect(same(wrong.replaceAll('\n', end))).toBe(same(wrong));
    expect(same(wrong)).toMatch(/^my\.yaml:22:11 /u);
  });
});
