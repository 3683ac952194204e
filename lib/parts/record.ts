import * as z from 'zod/mini';
import { type FieldHelp, fieldHelp } from './field-help.js';
import { mostEntries } from './source-faults.js';
import { unknownName, wrongKind } from './wording.js';

/** A group of keys, none of them unknown. */
export function record<Shape extends z.core.$ZodLooseShape>(shape: Shape, help: FieldHelp) {
  const known = Object.keys(shape);
  const wanted = `keys and values (${known.slice(0, 3).join(', ')}${known.length > 3 ? ', …' : ''})`;
  return z
    .strictObject(shape, {
      error: (issue) =>
        issue.code === 'unrecognized_keys'
          ? issue.keys.map((key) => unknownName('unknown key', key, known, 'accepted are')).join('\n')
          : wrongKind(issue.input, wanted),
    })
    .register(fieldHelp, help);
}

/** A list of such things. */
export function list<Item extends z.core.$ZodType>(
  item: Item,
  help: FieldHelp,
  length: { readonly from: number; readonly to: number } = { from: 0, to: mostEntries },
) {
  return z
    .array(item, {
      error: (issue) => wrongKind(issue.input, 'a list, each entry on a line that starts with "- "'),
    })
    .check(
      z.check((payload) => {
        const count = payload.value.length;
        if (count < length.from || count > length.to)
          payload.issues.push({
            code: 'custom',
            message: `must have ${length.from} to ${length.to} entries, got ${count}`,
            input: payload.value,
          });
      }),
    )
    .register(fieldHelp, { ...help, minItems: length.from, maxItems: length.to });
}
