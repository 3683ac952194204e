const longestShown = 90;

/**
 * A value as an error shows it: quoted, cut to a line's length, and with nothing in it that could move a cursor
 * or turn the reading direction.
 */
export function literal(value: unknown): string {
  if (typeof value === 'string') return JSON.stringify(clean(value));
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'a group of keys';
  return value === null ? 'nothing' : String(value);
}

/** A text cut to a line's length, its control and direction characters spelled out. */
export function clean(text: string, longest = longestShown): string {
  const start = text.length > longest ? `${text.slice(0, longest)}…` : text;
  return start.replace(
    /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/gu,
    (sign) => `{U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}}`,
  );
}
