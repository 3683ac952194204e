import { unitTable } from '../../units/unit-table.js';

/** Units of results, which nobody writes into a parts file. */
const unitsOfResults = ['J', 'mJ', 'W', 'N·s/m'];

const symbols = [
  ...Object.values(unitTable).flatMap((units) => units.map(({ symbol }) => symbol)),
  ...unitsOfResults,
]
  .map((symbol) =>
    symbol.replaceAll(/[^\p{L}\p{N}]/gu, (sign) => `\\u{${sign.codePointAt(0)?.toString(16)}}`),
  )
  .filter((symbol) => symbol !== '');

const numberBeforeUnit = new RegExp(
  `(\\d) (?=(?:${[...new Set(symbols)].join('|')})(?![\\p{L}\\p{N}]))`,
  'gu',
);

/** The same text with its first letter large. */
export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** A sentence whose numbers stay on one line with their units. */
export function prose(text: string): string {
  return text.replaceAll(numberBeforeUnit, '$1\u00a0');
}
