import { literal } from './source/literal.js';
import { mostReported } from './source/parts-file-error.js';
import { unknownName } from './source/wording.js';

/** One list of the file: each entry where it is good, and every name, also of entries that are not. */
export interface PartList<Part> {
  readonly key: string;
  readonly entries: readonly (Part | undefined)[];
  readonly names: readonly (string | undefined)[];
}

/** Says that no part has a name, and which near ones have; `earlier` counts the problems found before. */
export function unknownReference(
  key: string,
  name: string,
  list: PartList<unknown>,
  earlier: number,
): string {
  // Looking for near names takes time, and only so many problems are literal.
  if (earlier >= mostReported) return `no ${key} is named ${literal(name)}`;
  const known = list.names.filter((candidate) => candidate !== undefined);
  if (known.length === 0) return `no ${key} is named ${literal(name)}: there are none under "${list.key}"`;
  return unknownName(`no ${key} is named ${literal(name)}`, name, known, `there are`);
}
