import { unitTable } from '../../units/unit-table.js';
import { type Html, html } from './html.js';

/** Units of results, which nobody writes into a parts file. */
const unitsOfResults = ['J', 'mJ', 'W', 'N·s/m'];

const symbols = [
  ...new Set([
    ...Object.values(unitTable).flatMap((units) => units.map(({ symbol }) => symbol)),
    ...unitsOfResults,
  ]),
].filter((symbol) => symbol !== '');

const anyOf = (texts: readonly string[]): string =>
  texts
    .map((text) => text.replaceAll(/[^\p{L}\p{N}]/gu, (sign) => `\\u{${sign.codePointAt(0)?.toString(16)}}`))
    .join('|');

const numberBeforeUnit = new RegExp(`(\\d) (?=(?:${anyOf(symbols)})(?![\\p{L}\\p{N}]))`, 'gu');

const withSlash = new RegExp(
  `(?<![\\p{L}\\p{N}/·])(${anyOf(symbols.filter((symbol) => symbol.includes('/')))})(?![\\p{L}\\p{N}/])`,
  'gu',
);

/** A text whose numbers stay on one line with their units. */
export function besideUnits(text: string): string {
  return text.replaceAll(numberBeforeUnit, '$1\u00a0');
}

/**
 * A sentence whose numbers stay on one line with their units, and whose units stay whole: a browser may break a line after a slash (Unicode Standard Annex
 * 14, class SY).
 */
export function prose(text: string): Html {
  const parts = besideUnits(text).split(withSlash);
  if (parts.length === 1) return { nodes: text === '' ? [] : parts };
  return html`${parts.map((part, place) => (place % 2 === 0 ? part : html`<span class="unit">${part}</span>`))}`;
}
