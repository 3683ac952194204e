import { fileURLToPath } from 'node:url';
import { accuracyTable } from './comparison.js';
import { holeComparisons } from './hole-comparisons.js';
import { publishedComparisons } from './published-comparisons.js';

export const accuracyPage = fileURLToPath(new URL('../../docs/accuracy.md', import.meta.url));

/** Every comparison of the page; a new one joins here. */
export const comparisons = [...holeComparisons, ...publishedComparisons];

const begin = '<!-- written by npm run accuracy -->';
const end = '<!-- end of what npm run accuracy writes -->';

/** The text of the page with its table as the tests now have it. */
export function withAccuracyTable(page: string): string {
  const [before, after] = [page.indexOf(begin), page.indexOf(end)];
  if (before < 0 || after < before) throw new Error(`docs/accuracy.md needs the lines ${begin} and ${end}`);
  return `${page.slice(0, before + begin.length)}\n\n${accuracyTable(comparisons)}\n\n${page.slice(after)}`;
}
