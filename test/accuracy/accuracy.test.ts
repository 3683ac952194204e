import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { unsteadyFlowError } from '../../lib/flow/hole/apparent-mass.js';
import { holeReferenceRows } from '../reference/hole-reference.js';
import { lawOf } from '../reference/shape-law.js';
import { fittedShapes, heldOutShapes } from '../reference/shape-reference.js';
import { unsteadyRows } from '../reference/unsteady-rows.js';
import { comparisons, withTable, writtenPages } from './accuracy-page.js';
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

describe('pages with a table of the tests', () => {
  test.each(writtenPages)(
    '$path has the table of the tests; npm run accuracy renews it',
    ({ path, table }) => {
      const page = readFileSync(path, 'utf8');
      expect(page).toBe(withTable(page, table()));
    },
  );

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

  test('in the comment of the laws of shapes', () => {
    expect(prose(file('lib/flow/hole/shaped-hole.ts'))).toContain(
      `Within ${slow} of held-out solutions to Re 30, ${fast.replace(' %', '')} % to Re 800 and ${jet} where`,
    );
  });

  test('in docs/piston.md, with what was fitted', () => {
    const fitted = (quantity: string) =>
      percent(
        largest(comparisons.filter((one) => one.quantity.startsWith(quantity)).flatMap((one) => one.fitted)),
      );
    const recoil = worst(({ quantity }) => quantity.startsWith('recoil'));
    expect(prose(file('docs/piston.md'))).toContain(
      `recoil of every shape is within ${recoil} of the force on holes that were held out (${fitted('recoil')} on those fitted), ` +
        `and law and recoil together within ${force} (${fitted('force')})`,
    );
  });

  test('in the comment of the default law', () => {
    const sharp = (span: string) => (comparison: Comparison) =>
      shapes(span)(comparison) && comparison.quantity.endsWith('sharp');
    expect(prose(file('lib/flow/hole/sharp-hole.ts'))).toContain(
      `within ${worst(sharp('Re to 30'))} of held-out solutions to Re 30 and within ${worst(sharp('Re 30'))} to Re 800`,
    );
  });
});

describe('rows that come nearest to what is promised of all', () => {
  const text = prose(file('docs/hole-law.md'));
  const rows = [...fittedShapes, ...heldOutShapes].flatMap((hole) =>
    hole.points.map(({ reynoldsNumber, jetInside, ...row }) => {
      const { euler, recoil } = lawOf(hole, reynoldsNumber);
      const calm = reynoldsNumber <= 30 ? 0.01 : 0.02;
      return {
        name: `${hole.name} ${reynoldsNumber}`,
        heldOut: heldOutShapes.includes(hole),
        jetInside,
        drop: euler / row.euler - 1,
        bound: jetInside ? 0.05 : calm,
        // What is left after the recoil is too large: the recoil is too small.
        recoil: (row.euler - recoil) / row.force - 1,
      };
    }),
  );
  const share = ({ drop, bound }: (typeof rows)[number]) => Math.abs(drop) / bound;
  const nearest = (off: boolean) =>
    rows.filter(({ jetInside }) => jetInside === off).reduce((a, b) => (share(b) > share(a) ? b : a));
  const two = (part: number) => percent(Math.abs(part));

  test('are named with their errors and which way they go, and were fitted', () => {
    const [step, taper] = [nearest(false), nearest(true)];
    const hole = rows.reduce((a, b) => (Math.abs(b.recoil) > Math.abs(a.recoil) ? b : a));
    expect([step.name, taper.name, hole.name]).toEqual([
      'sw1.5-L3-0.75 80',
      'tw1.5-L0.6 320',
      's-L6-a0.16 320',
    ]);
    expect([step, taper, hole].filter(({ heldOut }) => heldOut)).toEqual([]);
    expect(Math.min(step.drop, taper.drop, hole.recoil)).toBeGreaterThan(0);
    expect(text).toContain(`3 d long in all: pressure drop ${two(step.drop)} high at Re 80`);
    expect(text).toContain(`within 0.6 d: ${two(taper.drop)} high at Re 320, jet off the wall`);
    expect(text).toContain(`16 % of the bore: recoil ${two(hole.recoil)} of the force too small at Re 320`);
  });

  test('and no row of a pressure drop is beyond', () => {
    expect(rows.filter((row) => share(row) >= 1 || Math.abs(row.recoil) >= 0.01)).toEqual([]);
    expect(text).toContain(`None of ${rows.length + holeReferenceRows().length} rows is missed`);
  });
});

describe('what the comment of unsteady flow says of its own numbers', () => {
  const fluid = { density: 970, kinematicViscosity: 3.5e-4 };

  test('alone within 0.1 % of the swing up to ω d²/ν 3 and 5 % above', () => {
    const misses = (holds: (number: number) => boolean) =>
      Math.max(
        ...unsteadyRows()
          .filter(({ frequencyNumber }) => holds(frequencyNumber))
          .map(({ lengthRatio, frequencyNumber, steadyLaw }) => {
            const hole = { diameter: 1.3e-3, length: lengthRatio * 1.3e-3 };
            const frequency =
              (frequencyNumber * fluid.kinematicViscosity) / (2 * Math.PI * hole.diameter ** 2);
            return Math.abs(unsteadyFlowError(hole, fluid, frequency).steadyLaw - steadyLaw);
          }),
      );
    expect(misses((number) => number <= 3)).toBeLessThan(0.0015);
    expect(misses((number) => number > 3)).toBeLessThan(0.055);
    expect(prose(file('lib/flow/hole/apparent-mass.ts'))).toContain(
      'within 0.1 % of the swing up to W 3 and 5 % above',
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
