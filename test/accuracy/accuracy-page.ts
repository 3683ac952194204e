import { fileURLToPath } from 'node:url';
import { accuracyTable } from './comparison.js';
import { discValveComparisons, discValveTable } from './disc-valve-table.js';
import { holeComparisons } from './hole-comparisons.js';
import { publishedComparisons } from './published-comparisons.js';
import { unsteadyTable } from './unsteady-table.js';

/** Every comparison of the page; a new one joins here. */
export const comparisons = [...holeComparisons, ...discValveComparisons, ...publishedComparisons];

const begin = '<!-- written by npm run accuracy -->';
const end = '<!-- end of what npm run accuracy writes -->';

const page = (name: string) => fileURLToPath(new URL(`../../docs/${name}`, import.meta.url));

/** Pages that hold a table written from the rows of the tests, each with what writes it. */
export const writtenPages: readonly { readonly path: string; readonly table: () => string }[] = [
  { path: page('accuracy.md'), table: () => accuracyTable(comparisons) },
  { path: page('hole-law.md'), table: unsteadyTable },
  { path: page('one-way-valve.md'), table: discValveTable },
];

/** The text of a page with its table as the tests now have it. */
export function withTable(text: string, table: string): string {
  const [before, after] = [text.indexOf(begin), text.indexOf(end)];
  if (before < 0 || after < before)
    throw new Error(`a page written by the tests needs the lines ${begin} and ${end}`);
  return `${text.slice(0, before + begin.length)}\n\n${table}\n\n${text.slice(after)}`;
}
