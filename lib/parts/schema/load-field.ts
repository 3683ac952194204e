import * as z from 'zod/mini';
import { standardGravity } from '../../base/constants.js';
import { parseQuantity, QuantityError } from '../../units/index.js';
import { quantityPattern } from '../../units/quantity-text.js';
import { mustBe, wrongKind } from '../source/wording.js';
import { fieldHelp } from './field-help.js';
import { report } from './schema-issue.js';

/** The largest load that a scale on a bench shows [N]. */
const largest = 50;

/** What a scale shows: a force, or grams, which stand for the weight of such a mass. Read into newton. */
export function loadField(description: string, example: string) {
  const text = z
    .string({
      error: ({ input }) =>
        typeof input === 'number'
          ? `needs a unit, for example "${example}", got ${input}`
          : wrongKind(input, `text with a unit such as "${example}"`),
    })
    .register(fieldHelp, {
      description: `${description} (-50 N to 50 N, or in grams).`,
      examples: [example],
      pattern: `${quantityPattern('force')}|${quantityPattern('mass')}`,
    });
  return z.pipe(
    text,
    z.transform((written: string, payload): number => {
      const force = read(written);
      if (typeof force === 'string') {
        report(payload, [], force);
        return z.NEVER;
      }
      if (Math.abs(force) > largest)
        report(payload, [], mustBe('-50 N to 50 N, or as much in grams', written));
      return force;
    }),
  );
}

/** The force, or what is wrong with the text. */
function read(written: string): number | string {
  try {
    return parseQuantity(written, 'mass') * standardGravity;
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
  }
  try {
    return parseQuantity(written, 'force');
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
    return error.message;
  }
}
