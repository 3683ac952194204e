import fc from 'fast-check';
import { type Parts, PartsFileError, readParts } from '../../../lib/parts/index.js';
import { extremeFile } from './extreme-file.js';

/** A file that the reader of parts files takes. */
export interface AcceptedFile {
  readonly text: string;
  readonly parts: Parts;
}

/** As many accepted files as asked for, the same for the same seed, and how many had to be tried. */
export function acceptedFiles(
  count: number,
  seed: number,
): { readonly files: readonly AcceptedFile[]; readonly tried: number } {
  const files: AcceptedFile[] = [];
  let tried = 0;
  while (files.length < count) {
    for (const file of fc.sample(extremeFile, { seed: seed + tried, numRuns: 50 })) {
      if (files.length >= count) break;
      tried += 1;
      const text = JSON.stringify(file, undefined, 1);
      try {
        files.push({ text, parts: readParts(text) });
      } catch (error) {
        if (!(error instanceof PartsFileError)) throw error;
      }
    }
  }
  return { files, tried };
}
