import { computed } from '../published/flow-answers.js';
import checks from '../published/flow-checks.json' with { type: 'json' };
import { type PublishedRow, relativeError } from '../published/published-rows.js';
import type { Comparison } from './comparison.js';

interface Row extends PublishedRow {
  readonly group: string;
  readonly obtained: string;
}

const rows = checks.checks as unknown as readonly Row[];

function obtained({ obtained: how, source }: Row): Comparison['obtained'] {
  if (/^from memory|formula from memory/iu.test(how)) return 'from memory';
  if (/\bread\b/iu.test(how) && !/^own/iu.test(source)) return 'read';
  return 'computed here';
}

const groupNames: Readonly<Record<string, string>> = {
  creeping: 'creeping holes',
  inertia: 'inertia of a sharp hole',
  developing: 'developing profile of a tube, K(x⁺)',
  default_law: 'one-constant law',
  long_orifice: 'long orifice (Lichtarowicz, Idelchik)',
  transition: 'thin orifice from creeping to turbulent (Wu 2002)',
  cone: 'tapered holes',
  annulus: 'rim gap',
  dashpot: 'dashpot in a closed cylinder',
  textbook: 'pipe of a textbook',
};

function groupName({ group }: Row): string {
  const name = groupNames[group];
  if (name === undefined) throw new Error(`no name for the rows of ${group}`);
  return name;
}

/** Errors of every published flow row that something here computes, by group and by how the row was obtained. */
export const publishedComparisons: readonly Comparison[] = (() => {
  const lines = new Map<string, { row: Row; errors: number[] }>();
  for (const [ids, value] of computed) {
    for (const row of rows.filter(({ id }) => ids.includes(id))) {
      const key = `${row.group} ${obtained(row)}`;
      const line = lines.get(key) ?? { row, errors: [] };
      line.errors.push(relativeError(value(row), row.expected));
      lines.set(key, line);
    }
  }
  return [...lines.values()].map(({ row, errors }) => ({
    quantity: groupName(row),
    range: 'as the rows say',
    source: 'rows of `test/published/flow-checks.json`, each with its source',
    obtained: obtained(row),
    fitted: [],
    heldOut: errors,
    test: 'test/published/flow.test.ts',
  }));
})();
