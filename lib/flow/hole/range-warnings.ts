import { noWarnings, type Warning } from '../../base/warning.js';
import type { WarningCode } from '../../base/warning-codes.js';

/** Range over which a hole law was shown to hold. */
export interface HoleLawRange {
  readonly law: string;
  readonly lengthRatio: { readonly low: number; readonly high: number };
  readonly reynoldsNumber: { readonly low: number; readonly high: number };
}

/** Range of the default law of straight sharp holes. */
export const sharpHoleRange: HoleLawRange = {
  law: 'sharp hole',
  lengthRatio: { low: 0.3, high: 6 },
  reynoldsNumber: { low: 0, high: 800 },
};

/** Says where a value is outside the range in which a law was checked. */
export function outside(
  code:
    | 'hole-edge-angle'
    | 'hole-edge-depth'
    | 'hole-length-ratio'
    | 'hole-reynolds-number'
    | 'hole-step'
    | 'hole-taper',
  what: string,
  value: number,
  range: { readonly low: number; readonly high: number },
  law: string,
): Warning | undefined {
  if (value >= range.low && value <= range.high) return undefined;
  const low = value < range.low;
  const limit = low ? range.low : range.high;
  return {
    // A depth has no lower end, and a taper none below straight, so that not every pair of the two happens.
    code: `${code}-${low ? 'low' : 'high'}` as WarningCode,
    message: `${what} ${Number(value.toPrecision(3))} is ${low ? 'below' : 'above'} ${limit}, the end of the range of the ${law} law`,
    value,
    limit,
  };
}

/** Warnings for a hole outside the range of its law. */
export function holeRangeWarnings(
  range: HoleLawRange,
  lengthRatio: number,
  reynoldsNumber: number,
): readonly Warning[] {
  const length = outside(
    'hole-length-ratio',
    'Hole length/diameter',
    lengthRatio,
    range.lengthRatio,
    range.law,
  );
  const reynolds = outside(
    'hole-reynolds-number',
    'Hole Reynolds number',
    reynoldsNumber,
    range.reynoldsNumber,
    range.law,
  );
  if (length === undefined && reynolds === undefined) return noWarnings;
  return [length, reynolds].filter((warning) => warning !== undefined);
}
