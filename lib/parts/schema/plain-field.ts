import * as z from 'zod/mini';
import { mustBe, wrongKind } from '../source/wording.js';
import { type FieldHelp, fieldHelp } from './field-help.js';
import { report } from './schema-issue.js';

const longestName = 80;
const longestNote = 2000;

/** The name of a part, or of the part a build refers to: any text of one line, never interpreted. */
export function nameField(help: FieldHelp) {
  return z
    .string({ error: ({ input }) => wrongKind(input, 'a name as text, in quotes if it is a number') })
    .check(
      z.check((payload) => {
        const fault = nameFault(payload.value);
        if (fault !== undefined) report(payload, [], mustBe(fault, payload.value));
      }),
    )
    .register(fieldHelp, { ...help, minLength: 1, maxLength: longestName });
}

function nameFault(name: string): string | undefined {
  if (name.trim() === '') return 'a name of at least one letter';
  if (name.length > longestName) return `a name of at most ${longestName} letters`;
  if (name !== name.trim()) return 'a name without spaces around it';
  // Control characters, lone surrogates and the signs that turn the reading direction.
  if (/[\p{Cc}\p{Cs}\p{Bidi_C}\u2028\u2029]/u.test(name))
    return 'a name on one line, without control characters';
  return undefined;
}

/** A note for people. */
export function noteField(help: FieldHelp) {
  return z
    .string({ error: ({ input }) => wrongKind(input, 'text') })
    .check(
      z.check((payload) => {
        if (payload.value.length > longestNote)
          report(payload, [], `must be text of at most ${longestNote} letters, got ${payload.value.length}`);
      }),
    )
    .register(fieldHelp, { ...help, maxLength: longestNote });
}

/** A plain number without unit, within limits. */
export function numberField(range: { readonly from: number; readonly to: number }, help: FieldHelp) {
  const wanted = `a number from ${range.from} to ${range.to}, without quotes`;
  return z
    .number({ error: ({ input }) => wrongKind(input, wanted) })
    .check(
      z.check((payload) => {
        if (!(payload.value >= range.from && payload.value <= range.to))
          report(payload, [], mustBe(`a number from ${range.from} to ${range.to}`, payload.value));
      }),
    )
    .register(fieldHelp, { ...help, minimum: range.from, maximum: range.to });
}

/** A count of things, from 1. */
export function countField(most: number, help: FieldHelp) {
  const wanted = `a whole number from 1 to ${most}`;
  return z
    .number({ error: ({ input }) => wrongKind(input, `${wanted}, without quotes`) })
    .check(
      z.check((payload) => {
        const count = payload.value;
        if (!(Number.isInteger(count) && count >= 1 && count <= most))
          report(payload, [], mustBe(wanted, count));
      }),
    )
    .register(fieldHelp, { ...help, type: 'integer', minimum: 1, maximum: most });
}

/** One word of a short list. */
export function choiceField<const Word extends string>(words: readonly Word[], help: FieldHelp) {
  const wanted = words.join(' or ');
  return z.enum(words, { error: ({ input }) => wrongKind(input, wanted) }).register(fieldHelp, help);
}
