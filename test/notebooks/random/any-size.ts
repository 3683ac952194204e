import fc from 'fast-check';

/** A range that is usual, and the range that the parts file accepts. */
interface Span {
  readonly usual: readonly [number, number];
  readonly accepted: readonly [number, number];
}

/** Mostly what happens, one in five from the whole range, and its very ends. */
export function number({ usual, accepted }: Span): fc.Arbitrary<number> {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const within = ([low, high]: readonly [number, number]) =>
    share.map((part) => {
      const value = low > 0 ? low * (high / low) ** part : low + (high - low) * part;
      return Number(value.toPrecision(4));
    });
  return fc.oneof(
    { weight: 16, arbitrary: within(usual) },
    { weight: 4, arbitrary: within(accepted) },
    { weight: 1, arbitrary: fc.constantFrom(...accepted) },
  );
}

export const size = (
  unit: string,
  usual: readonly [number, number],
  accepted: readonly [number, number],
): fc.Arbitrary<string> => number({ usual, accepted }).map((value) => `${value} ${unit}`);

export const temperature = size('°C', [5, 35], [-30, 80]);
