import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { accuracyPage, comparisons, withAccuracyTable } from './accuracy-page.js';
import { accuracyTable, type Comparison, largest, percent } from './comparison.js';

const file = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');

/** Prose without its line breaks and comment stars. */
const prose = (text: string) => text.replaceAll(/\s+(?:\* )?/gu, ' ');

const worst = (wanted: (comparison: Comparison) => boolean) =>
  percent(largest(comparisons.filter(wanted).flatMap(({ heldOut }) => heldOut)));

const shapes = (span: string) => (comparison: Comparison) =>
  comparison.test.endsWith('shape-law.test.ts') &&
  comparison.quantity.startsWith('pressure drop') &&
  comparison.range.includes(span);

describe('docs/accuracy.md', () => {
  test('has the table of the tests; npm run accuracy renews it', () => {
    const page = readFileSync(accuracyPage, 'utf8');
    expect(page).toBe(withAccuracyTable(page));
  });

  test('names a test that exists for each line', () => {
    for (const { test: path } of comparisons) expect(file(path).length).toBeGreaterThan(100);
  });
});

describe('what is quoted elsewhere is the error of held-out rows', () => {
  const [slow, fast, jet] = [
    worst(shapes('Re to 30')),
    worst(shapes('Re 30 to 800')),
    worst(shapes('jet off')),
  ];
  const force = worst(({ quantity }) => quantity.startsWith('force on the piston, law'));

  test('in the README', () => {
    const text = prose(file('README.md'));
    expect(text).toContain(`is within ${slow} up to Reynolds 30 and within ${fast} up to 800 (${jet} where`);
    expect(text).toContain(`the force within ${force}.`);
  });

  test('in the comment of the default law', () => {
    const sharp = (span: string) => (comparison: Comparison) =>
      shapes(span)(comparison) && comparison.quantity.endsWith('sharp');
    expect(prose(file('lib/flow/hole/sharp-hole.ts'))).toContain(
      `within ${worst(sharp('Re to 30'))} of held-out solutions to Re 30 and within ${worst(sharp('Re 30'))} to Re 800`,
    );
  });
});

describe('the table', () => {
  const line: Comparison = {
    quantity: 'q',
    range: 'r',
    source: 's',
    obtained: 'read',
    test: 't',
    fitted: [],
    heldOut: [0.03, -0.04],
  };

  test('counts the rows, their largest error whatever its sign, and the root of the mean square', () => {
    expect(accuracyTable([line]).split('\n')[2]).toBe('| q | r | | | | 2 | 4 % | 3.5 % | s | read | `t` |');
  });

  test('has as many cells in each line', () => {
    const counts = accuracyTable(comparisons)
      .split('\n')
      .map((text) => text.split('|').length);
    expect(new Set(counts).size).toBe(1);
  });
});
