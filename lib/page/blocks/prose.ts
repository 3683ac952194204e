import { unitTable } from '../../units/unit-table.js';

const symbols = Object.values(unitTable)
  .flat()
  .map(({ symbol }) =>
    symbol.replaceAll(/[^\p{L}\p{N}]/gu, (sign) => `\\u{${sign.codePointAt(0)?.toString(16)}}`),
  )
  .filter((symbol) => symbol !== '');

const numberBeforeUnit = new RegExp(
  `(\\d) (?=(?:${[...new Set(symbols)].join('|')})(?![\\p{L}\\p{N}]))`,
  'gu',
);

/** A sentence whose numbers stay on one line with their units. */
export function prose(text: string): string {
  return text.replaceAll(numberBeforeUnit, '$1\u00a0');
}
