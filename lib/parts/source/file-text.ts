import { PartsFileError } from './parts-file-error.js';

/** The marks that a file may begin with, and what they say of it (Unicode 15, section 23.8). */
const marks: readonly (readonly [bytes: readonly number[], encoding: string])[] = [
  [[0xef, 0xbb, 0xbf], 'utf-8'],
  [[0xff, 0xfe], 'utf-16le'],
  [[0xfe, 0xff], 'utf-16be'],
];

/**
 * The text of a file that a user wrote: UTF-8, or UTF-16 in either order, with or without a mark.
 *
 * A file of single bytes with a sign beyond ASCII is refused: which sign it is depends on where it was written.
 *
 * @param bytes - the file
 * @param fileName - its name, for the error
 * @throws PartsFileError for bytes that are neither
 */
export function fileText(bytes: Uint8Array, fileName: string): string {
  const encoding = encodingOf(bytes);
  const text = decoded(bytes, encoding);
  if (text !== undefined) return withLineFeeds(text);
  const message =
    encoding === 'utf-8'
      ? 'this line holds a sign, such as ° or µ, that is not in UTF-8; open the file in a text editor, save it in the encoding UTF-8, and look whether the sign is right'
      : 'the file begins as UTF-16 and is damaged further on; open it in a text editor and save it in the encoding UTF-8';
  const line = encoding === 'utf-8' ? firstLineNotInUtf8(bytes) : 1;
  throw new PartsFileError(fileName, [{ line, column: 1, path: '', message }]);
}

/** A text whose lines end as YAML reads them: a lone carriage return ends a line too (YAML 1.2.2, section 5.4). */
export function withLineFeeds(text: string): string {
  return text.replace(/\r(?!\n)/gu, '\n');
}

function encodingOf(bytes: Uint8Array): string {
  const marked = marks.find(([mark]) => mark.every((byte, index) => bytes[index] === byte));
  if (marked !== undefined) return marked[1];
  // The first sign of a parts file is ASCII, and no text holds the sign zero.
  const [first, second] = bytes;
  if (first !== undefined && second !== undefined && (first === 0) !== (second === 0))
    return first === 0 ? 'utf-16be' : 'utf-16le';
  return 'utf-8';
}

function decoded(bytes: Uint8Array, encoding: string): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch (error) {
    if (error instanceof TypeError) return undefined;
    throw error;
  }
}

function firstLineNotInUtf8(bytes: Uint8Array): number {
  let [line, start] = [1, 0];
  for (const [index, byte] of bytes.entries()) {
    if (byte !== 0x0a && (byte !== 0x0d || bytes[index + 1] === 0x0a)) continue;
    if (decoded(bytes.subarray(start, index), 'utf-8') === undefined) return line;
    [line, start] = [line + 1, index + 1];
  }
  return line;
}
