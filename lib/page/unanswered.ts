import { requireRecord } from '../base/checks.js';
import { InputError } from '../base/input-error.js';
import type { Parts } from '../parts/parts.js';
import type { Block } from './blocks/block.js';
import type { Page } from './blocks/page.js';
import { type Missing, missingLines } from './missing-lines.js';
import { ParameterError } from './parameters/parameter-error.js';

/**
 * The page of a notebook that the parts file does not say enough for.
 *
 * @param reason - what the notebook was refused with
 * @param parts - the parts file
 * @throws InputError where either is none
 * @returns a page that says what is missing, and shows lines to copy where lines of the file would help
 *
 * @public
 */
export function unansweredPage(reason: Error, parts: Parts): Page {
  if (!(reason instanceof Error))
    throw new InputError({ field: 'reason', value: reason, accepted: 'an Error' });
  requireRecord(parts, 'parts');
  return {
    answer: 'These parts do not say enough to answer this yet.',
    blocks: [
      ...reason.message.split('\n').map((text) => ({ kind: 'text', text }) as const),
      ...missingOf(reason).flatMap((missing): Block[] => {
        const { advice, lines } = missingLines(missing, parts);
        return [
          { kind: 'text', text: advice },
          { kind: 'lines', text: lines },
        ];
      }),
    ],
    sources: [],
  };
}

/** Lists of a parts file by the field that a notebook is refused with; a spring is a key of the build first. */
const byField: ReadonlyMap<string, Missing> = new Map([
  ['spring', 'springs'],
  ['shop', 'shop'],
  ['timed', 'timed'],
  ['measurements', 'measurements'],
]);

const inOrder: readonly Missing[] = ['builds', 'oils', 'pistons', 'shocks', 'springs'];

/** What of a parts file the page was refused for, in the order in which it stands in a file. */
function missingOf(reason: Error): readonly Missing[] {
  if (reason instanceof ParameterError)
    return inOrder.filter((list) => reason.emptyLists.some((one) => one === list));
  const missing = reason instanceof InputError ? byField.get(reason.field) : undefined;
  return missing === undefined ? [] : [missing];
}
