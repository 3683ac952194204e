import { PartsFileError, readParts } from '../../lib/parts/index.js';

/** The error's own text, without the file name that begins each of its lines. */
export function refusal(text: string): string {
  try {
    readParts(text, 'my.yaml');
  } catch (error) {
    if (error instanceof PartsFileError) return error.message.replaceAll('my.yaml:', '');
    throw error;
  }
  return 'accepted';
}

/** What is wrong, by which change of the small file, and what is said of it. */
export type Row = readonly [what: string, from: string, to: string, message: string];

export const lengths = 'write a length such as "1.5 mm" (mm, µm, um, cm, m, in)';
export const volumes = 'write a volume such as "1.5 ml" (ml, mL, l, L, mm³, mm3, cm³, cm3, m³)';
