import * as z from 'zod/mini';
import { unknownName, wrongKind } from '../source/wording.js';
import { type FieldHelp, fieldHelp } from './field-help.js';

/** The most entries a list may have. */
const mostEntries = 1000;

/** A group of keys, none of them unknown; `moved` says of keys that were once accepted where they went. */
export function record<Shape extends z.core.$ZodLooseShape>(
  shape: Shape,
  help: FieldHelp,
  moved: Readonly<Record<string, string>> = {},
) {
  const known = Object.keys(shape).filter((key) => !key.startsWith('$'));
  const wanted = `keys and values (${known.slice(0, 3).join(', ')}${known.length > 3 ? ', …' : ''})`;
  return z
    .strictObject(shape, {
      error: (issue) =>
        issue.code === 'unrecognized_keys'
          ? issue.keys
              .map((key) => (Object.hasOwn(moved, key) && moved[key]) || unknownKey(key, known))
              .join('\n')
          : wrongKind(issue.input, wanted),
    })
    .register(fieldHelp, help);
}

function unknownKey(key: string, known: readonly string[]): string {
  return unknownName('unknown key', key, known, 'accepted are');
}

/** A list of such things. */
export function list<Item extends z.core.$ZodType>(
  item: Item,
  help: FieldHelp,
  length: { readonly from: number; readonly to: number } = { from: 0, to: mostEntries },
) {
  const count = `must have ${length.from === 0 ? 'at most' : `${length.from} to`} ${length.to} entries`;
  const wrongLength = {
    error: ({ input }: { readonly input?: unknown }) => `${count}, got ${lengthOf(input)}`,
  };
  return z
    .array(item, {
      error: (issue) => wrongKind(issue.input, 'a list, each entry on a line that starts with "- "'),
    })
    .check(z.minLength(length.from, wrongLength), z.maxLength(length.to, wrongLength))
    .register(fieldHelp, help);
}

function lengthOf(value: unknown): number {
  return Array.isArray(value) ? value.length : 0;
}
