import { clean } from './literal.js';

/** Steps from the top of the file to a field: keys and list positions. */
export type FieldPath = readonly PropertyKey[];

/** A problem with the place in the file's tree, before line and column are looked up. */
export interface Finding {
  readonly path: FieldPath;
  readonly message: string;
  /** Point at the key and not at its value, for a key that does not belong there. */
  readonly atKey?: boolean;
}

/** Writes a path as a person would: `oils[0].viscosity-index`. */
export function pathText(path: FieldPath): string {
  return path
    .map((step, index) => {
      if (typeof step === 'number') return `[${step}]`;
      const key = String(step);
      // A key that no parts file has is quoted, whatever it holds.
      if (!/^[\w$-]{1,40}$/u.test(key)) return `[${JSON.stringify(clean(key))}]`;
      return index === 0 ? key : `.${key}`;
    })
    .join('');
}
