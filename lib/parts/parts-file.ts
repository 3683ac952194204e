import type { Parts } from './parts.js';
import { readParts } from './read-parts.js';

/** A parts file with its text. */
export interface PartsFile {
  /** Name of the file without its folder: a page names no path. */
  readonly name: string;
  readonly text: string;
  readonly parts: Parts;
}

/**
 * Reads a parts file.
 *
 * @throws PartsFileError
 */
export function partsFile(name: string, text: string): PartsFile {
  return { name, text, parts: readParts(text, name) };
}
