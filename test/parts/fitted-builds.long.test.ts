import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type FittedBuild, stillFitted, withFittedBuilds } from '../../lib/parts/fitted-builds.js';
import { readParts } from '../../lib/parts/index.js';
import { fittedBuilds, useMeasured } from '../../lib/parts/use-measured.js';

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const stated = readParts(demo);
const fitted = fittedBuilds(stated);

/** The demo parts with one text in the place of another, which must be there. */
function edited(before: string | RegExp, after: string) {
  const text = demo.replace(before, after);
  expect(text).not.toBe(demo);
  return readParts(text);
}
const left = (parts: ReturnType<typeof readParts>, of: readonly FittedBuild[] = fitted) =>
  stillFitted(of, stated, parts).map(({ build }) => build);

describe('fitted builds', () => {
  test('in the place of the stated ones are the parts of a file that says so itself', () => {
    expect(fitted.map(({ build }) => build)).toEqual(['buggy rear']);
    const own = withFittedBuilds(stated, fitted);
    const written = readParts(useMeasured(demo));
    // The file has a viscosity in cSt, which comes back within rounding.
    const digits = (parts: typeof own): unknown =>
      JSON.parse(JSON.stringify(parts), (_, value) =>
        typeof value === 'number' ? Number(value.toPrecision(12)) : value,
      );
    expect(digits(own)).toEqual(digits(written));
    expect(own.timed?.map(({ build }) => build)).toEqual(
      own.timed?.map(({ build }) => own.builds.find(({ name }) => name === build.name)),
    );
    expect(withFittedBuilds(stated, [])).toEqual(stated);
  });

  test('a file that says already what it was measured as has none', () => {
    expect(fittedBuilds(readParts(useMeasured(demo)))).toEqual([]);
    expect(fittedBuilds({ ...stated, measurements: [] })).toEqual([]);
  });

  test('belong to the parts while oil, sizes, tolerances and measurements are those of the fit', () => {
    expect(left(stated)).toEqual(['buggy rear']);
    expect(left(readParts(`${demo}\n# a remark\n`))).toEqual(['buggy rear']);
    const another = /(\n {2}- name: buggy front\n(?:.*\n)*? {4}quantity: )2/u;
    expect(left(edited(another, '$14'))).toEqual(['buggy rear']);
    expect(left(edited('2.94 s', '2.95 s'))).toEqual([]);
    expect(left(edited(/(name: clear 350\n(?:.*\n)*? {4}viscosity: )350 cSt/u, '$1351 cSt'))).toEqual([]);
    expect(left(edited(/(name: four 1.3 thin\n(?:.*\n)*? {4}thickness: )\S+ mm/u, '$12.6 mm'))).toEqual([]);
    expect(left(edited(/(name: long 12\n(?:.*\n)*? {4}shaft: )\S+ mm/u, '$13.1 mm'))).toEqual([]);
    expect(left(edited(/(\ntolerances:\n(?:.*\n)*? {2}hole-diameter: )\S+ mm/u, '$10.07 mm'))).toEqual([]);
    expect(left({ ...stated, builds: [] })).toEqual([]);
    expect(left(readParts(useMeasured(demo)))).toEqual([]);
  });
});
