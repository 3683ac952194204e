import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { waltherLineFromViscosityIndex } from '../../lib/fluid/viscosity/viscosity-index-line.js';
import { fitWaltherLine, waltherViscosity } from '../../lib/fluid/viscosity/walther-line.js';
import { toolRuns } from '../project/tools.js';
import { siliconeOf10 } from './fluid-rows.js';
import { relativeError } from './published-rows.js';

// Debian's own Python, since only that one sees Debian's packages.
const python = '/usr/bin/python3';
const available = toolRuns(python, ['-c', 'import scipy']);

type Row = Readonly<Record<string, number>>;
type Reference = Readonly<Record<'fits' | 'viscosities' | 'indices', readonly Row[]>>;

function of(row: Row, name: string): number {
  const value = row[name];
  if (value === undefined) throw new Error(`no ${name}`);
  return value;
}

describe.skipIf(!available)('NumPy and SciPy (skips where python3-scipy is absent)', () => {
  const script = fileURLToPath(new URL('fluid-reference.py', import.meta.url));
  const reference: Reference = available
    ? JSON.parse(execFileSync(python, [script], { encoding: 'utf8' }))
    : { fits: [], viscosities: [], indices: [] };

  test('gives rows', () => {
    expect(Object.values(reference).map(({ length }) => length)).toEqual([3, 6, 3]);
  });

  test('fits the same least-squares lines', () => {
    for (const row of reference.fits) {
      const points = siliconeOf10
        .filter(([celsius]) => celsius >= of(row, 'low') && celsius <= of(row, 'high'))
        .map(([celsius, , viscosity]) => ({
          temperature: celsius + 273.15,
          kinematicViscosity: viscosity / 1e6,
        }));
      const { line } = fitWaltherLine(points);
      expect(relativeError(line.intercept, of(row, 'intercept'))).toBeLessThan(1e-11);
      expect(relativeError(line.slope, of(row, 'slope'))).toBeLessThan(1e-11);
    }
  });

  test('finds the same viscosity of a line, down to 0.4 mm²/s', () => {
    for (const row of reference.viscosities) {
      const line = { kind: 'walther', intercept: of(row, 'intercept'), slope: of(row, 'slope') } as const;
      const viscosity = waltherViscosity(line, of(row, 'temperature')) * 1e6;
      expect(relativeError(viscosity, of(row, 'viscosity'))).toBeLessThan(1e-11);
    }
    expect(Math.min(...reference.viscosities.map((row) => of(row, 'viscosity')))).toBeLessThan(0.5);
  });

  test('finds the same oil from one point and an index, to the 0.12 % between table and pieces', () => {
    for (const row of reference.indices) {
      const point = {
        temperature: of(row, 'celsius') + 273.15,
        kinematicViscosity: of(row, 'viscosity') / 1e6,
      };
      const line = waltherLineFromViscosityIndex(point, of(row, 'index'));
      expect(relativeError(waltherViscosity(line, 313.15) * 1e6, of(row, 'cold'))).toBeLessThan(1.2e-3);
      expect(relativeError(waltherViscosity(line, 373.15) * 1e6, of(row, 'hot'))).toBeLessThan(1.2e-3);
    }
  });
});
