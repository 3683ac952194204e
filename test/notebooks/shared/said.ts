/** What a page says of a quantity: between two numbers, as far as its rounding tells. */
export interface Said {
  readonly quantity: string;
  readonly page: string;
  readonly low: number;
  readonly high: number;
}

export const exact = (quantity: string, page: string, value: unknown): readonly Said[] =>
  typeof value === 'number'
    ? [{ quantity, page, low: value - 1e-9 * Math.abs(value), high: value + 1e-9 * Math.abs(value) }]
    : [];

/** A number of a text in a unit (`scale` of it in SI), rounded to a step. */
export function rounded(
  quantity: string,
  page: string,
  text: unknown,
  scale: number,
  step: (value: number) => number,
): readonly Said[] {
  const found = /[−-]?\d+(?:\.\d+)?/u.exec(String(text))?.[0];
  if (found === undefined) return [];
  const value = Number(found.replace('−', '-'));
  const half = 0.5001 * step(value);
  return [{ quantity, page, low: scale * (value - half), high: scale * (value + half) }];
}

/** Three significant digits; one gram; a hundredth of a millilitre. */
export const threeDigits = (value: number): number =>
  10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) - 2);
export const whole = (): number => 1;
export const hundredth = (): number => 0.01;

export function byQuantityOf(said: readonly Said[]): ReadonlyMap<string, readonly Said[]> {
  const found = new Map<string, Said[]>();
  for (const one of said) found.set(one.quantity, [...(found.get(one.quantity) ?? []), one]);
  return found;
}

/** The quantities of which no one number fits what all pages say. */
export function disagreements(said: readonly Said[]): readonly string[] {
  const byQuantity = byQuantityOf(said);
  return [...byQuantity].flatMap(([quantity, all]) => {
    const low = Math.max(...all.map((one) => one.low));
    const high = Math.min(...all.map((one) => one.high));
    if (low <= high) return [];
    return [
      `${quantity}: ${all.map((one) => `${one.page} ${((one.low + one.high) / 2).toPrecision(5)}`).join(', ')}`,
    ];
  });
}
