import * as z from 'zod/mini';
import { type Dimension, parseQuantity, QuantityError } from '../../units/index.js';
import { quantityPattern } from '../../units/quantity-text.js';
import { mustBe, wrongKind } from '../source/wording.js';
import { fieldHelp } from './field-help.js';
import { report } from './schema-issue.js';

/** What a quantity may be: texts with units, as the file itself has them. */
export interface QuantityRange {
  readonly dimension: Dimension;
  readonly from: string;
  readonly to: string;
  readonly example: string;
  readonly description: string;
}

/** Slack for the last digit, so that "4 cm" is within a limit of "40 mm". */
const rounding = 1e-12;

/** What is nearer to nothing than this part of the largest value is a slip of the pen or of a program: nothing measures it, and laws that divide by it fail. */
const nothing = 1e-9;

/** A quantity as text with its unit, read into SI. */
export function quantityField(range: QuantityRange) {
  const low = parseQuantity(range.from, range.dimension);
  const high = parseQuantity(range.to, range.dimension);
  const wanted = `text with a unit such as "${range.example}"`;
  const text = z
    .string({
      error: ({ input }) =>
        typeof input === 'number'
          ? `needs a unit, for example "${range.example}", got ${input}`
          : wrongKind(input, wanted),
    })
    .register(fieldHelp, {
      description: `${range.description} (${range.from} to ${range.to}).`,
      examples: [range.example],
      pattern: quantityPattern(range.dimension),
    });
  return z.pipe(
    text,
    z.transform((written: string, payload): number => {
      const value = read(written, range.dimension, payload);
      if (value === undefined) return z.NEVER;
      const fault = outside(value, low, high, range);
      if (fault !== undefined) report(payload, [], mustBe(fault, written));
      return value;
    }),
  );
}

function read(written: string, dimension: Dimension, payload: z.core.ParsePayload): number | undefined {
  try {
    return parseQuantity(written, dimension);
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
    report(payload, [], error.message);
    return undefined;
  }
}

function outside(value: number, low: number, high: number, range: QuantityRange): string | undefined {
  if (range.dimension === 'temperature' && value <= 0) return 'above absolute zero, −273.15 °C';
  if (range.dimension !== 'temperature' && low > 0 && value <= 0)
    return `greater than 0 ${range.from.replace(/^\S+\s*/u, '')}`;
  if (low === 0 && value > 0 && value < nothing * high)
    return `${range.from}, or more than a billionth of ${range.to}`;
  const inside = value >= low - rounding * Math.abs(low) && value <= high + rounding * Math.abs(high);
  return inside ? undefined : `${range.from} to ${range.to}`;
}
