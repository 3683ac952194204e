import { type CourseEntry, type CourseKey, withCourse } from '../../parts/course-entry.js';
import { type DynoEntry, withDyno } from '../../parts/dyno-entry.js';
import { type PartsFile, partsFile } from '../../parts/parts-file.js';
import { located } from '../../parts/source/field-place.js';
import { PartsFileError } from '../../parts/source/parts-file-error.js';
import { sourceTree } from '../../parts/source/source-tree.js';
import { withCopy, withoutPart } from './part-entries.js';
import type { PartPlace } from './part-place.js';
import { type PartField, withField } from './parts-text.js';

/**
 * A parts file with one value written anew.
 *
 * @throws PartsFileError where the value is not accepted
 */
export function fieldWritten({ name, text }: PartsFile, path: PartField['path'], value: string): PartsFile {
  return partsFile(name, withField(text, path, value));
}

/**
 * A parts file with a copy of a part.
 *
 * @throws PartsFileError for a name that is taken or empty
 */
export function partCopied({ name, text }: PartsFile, place: PartPlace, copy: string): PartsFile {
  return partsFile(name, withCopy(text, place, copy));
}

/**
 * A parts file without one part.
 *
 * @throws PartsFileError for the last part of its list, and for one that something else in the file names
 */
export function partRemoved({ name, text, parts }: PartsFile, place: PartPlace): PartsFile {
  const refusal = (message: string): PartsFileError =>
    new PartsFileError(name, [located(sourceTree(text), { path: [place.list, place.index], message })]);
  if (parts[place.list].length === 1) throw refusal('must stay: it is the only one of its list');
  try {
    return partsFile(name, withoutPart(text, place));
  } catch (error) {
    if (!(error instanceof PartsFileError)) throw error;
    // The file was good before, so what is wrong now are the places that name the part.
    const places = error.problems.map(({ path }) => path);
    throw refusal(`must stay: ${places.join(', ')} ${places.length === 1 ? 'names' : 'name'} it`);
  }
}

/**
 * A parts file with a dyno file among its measurements.
 *
 * @throws InputError for a dyno file that cannot be read; PartsFileError for a build or a temperature that is not accepted
 */
export function dynoAdded({ name, text }: PartsFile, entry: DynoEntry): PartsFile {
  return partsFile(name, withDyno(text, entry));
}

/**
 * A parts file with a recording in it.
 *
 * @throws InputError for a recording that cannot be read; PartsFileError for a zero that is not accepted
 */
export function courseAdded({ name, text }: PartsFile, key: CourseKey, entry: CourseEntry): PartsFile {
  return partsFile(name, withCourse(text, key, entry));
}
