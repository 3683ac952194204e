/** A number with the ends of what is open about it. */
export interface Span {
  readonly typical: number;
  readonly low: number;
  readonly high: number;
}

/** The first number is the likely one, the rest are what else is possible. */
export function spanOf(numbers: readonly number[]): Span {
  const [typical = Number.NaN] = numbers;
  return { typical, low: Math.min(...numbers), high: Math.max(...numbers) };
}

/** `3.1 N`, or `3.1 N (2.4 to 3.9)` where the ends print otherwise. */
export function spanText({ typical, low, high }: Span, shown: (value: number) => string): string {
  const [one, from, to] = [shown(typical), shown(low), shown(high)];
  if (from === to) return one;
  const bare = (text: string): string => text.replace(/ [^\d ]+$/u, '');
  return `${one} (${bare(from)} to ${bare(to)})`;
}
