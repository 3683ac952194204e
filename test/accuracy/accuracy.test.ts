import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { unsteadyFlowError } from '../../lib/flow/hole/apparent-mass.js';
import { lawOf } from '../reference/shape-law.js';
import { fittedShapes } from '../reference/shape-reference.js';
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

describe('rows that the laws miss by more than they should', () => {
  const point = (name: string, reynoldsNumber: number) => {
    const hole = fittedShapes.find((one) => one.name === name);
    const row = hole?.points.find((one) => one.reynoldsNumber === reynoldsNumber);
    if (hole === undefined || row === undefined) throw new Error(`no row ${name} ${reynoldsNumber}`);
    const { euler, recoil } = lawOf(hole, reynoldsNumber);
    return { drop: euler / row.euler - 1, recoil: (row.euler - recoil) / row.force - 1 };
  };
  const text = prose(file('docs/hole-law.md'));
  const comment = prose(file('lib/flow/hole/shaped-hole.ts'));
  const two = (part: number) => percent(Math.abs(part));

  test('are named with their errors and which way they go', () => {
    const rounded = point('e-r0.1-r0.1-L0.5', 800).drop;
    expect(rounded).toBeGreaterThan(0);
    expect(text).toContain(`only 0.5 d long: pressure drop ${two(rounded)} high at Re 800`);
    expect(comment).toContain(`half a diameter long at Re 800 (${two(rounded)})`);
    const chamfered = point('e-c0.1a45-c0.1a45-L0.5', 320).drop;
    expect(chamfered).toBeLessThan(0);
    expect(text).toContain(`of that size at both ends is ${two(chamfered)} low at Re 320`);
    const step = point('sw1.5-L3-0.75', 80).drop;
    expect(step).toBeGreaterThan(0);
    expect(text).toContain(`3 d long in all: ${two(step)} high at Re 80`);
    expect(comment).toContain(`a quarter of the plate at Re 80 (${two(step)})`);
    // What is left after the recoil is too large: the recoil is too small.
    const taper = point('tw1.4-L1-b0.35', 800).recoil;
    expect(taper).toBeGreaterThan(0);
    expect(text).toContain(`jet off the wall: recoil ${two(taper)} of the force too small at Re 800`);
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
