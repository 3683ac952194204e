import { describe, expect, test } from 'vitest';
import { annularGapConductance, annularGapDrag } from '../../lib/flow/gap/annular-gap.js';
import { holeArea } from '../../lib/flow/geometry/hole.js';
import { holePressureDrop, holeReynoldsNumber } from '../../lib/flow/hole/hole-flow.js';
import {
  idelchikThickEdgeLaw,
  lossCoefficientIdelchikThickEdge,
} from '../../lib/flow/hole/idelchik-thick-edge.js';
import { computed, fluidOf } from './flow-answers.js';
import checks from './flow-checks.json' with { type: 'json' };
import { notCovered } from './flow-excuses.js';
import { type PublishedRow, relativeError } from './published-rows.js';

const rows = checks.checks as unknown as readonly PublishedRow[];

describe('published values for holes and gaps', () => {
  const answered = computed.flatMap(([ids]) => ids);

  test('every row is either computed or left out for a stated reason, by its name and once', () => {
    const names = [...answered, ...Object.keys(notCovered)];
    expect(rows).toHaveLength(129);
    expect(new Set(names).size).toBe(names.length);
    expect([...names].sort()).toEqual(rows.map(({ id }) => id).sort());
  });

  for (const [ids, value, looser] of computed) {
    for (const row of rows.filter(({ id }) => ids.includes(id))) {
      test(`${row.id}: ${row.source}${looser ? ` (${looser[1]})` : ''}`, () => {
        expect(relativeError(value(row), row.expected)).toBeLessThanOrEqual(looser?.[0](row) ?? row.rtol);
      });
    }
  }
});

describe('Fox & McDonald, Introduction to Fluid Mechanics, Example 8.1 (inputs read in a public companion code)', () => {
  test('leakage past a 25 mm piston with 5 µm radial clearance at 19 MPa is 57.6 mm³/s', () => {
    const gap = { bore: 0.02501, pistonDiameter: 0.025, length: 0.015, eccentricity: 0 };
    const leak = 19e6 * annularGapConductance(gap, fluidOf(0.018));
    expect(relativeError(leak, 57.57e-9)).toBeLessThan(5e-4);
  });
});

describe('White, Fluid Mechanics, Example 6.4 (inputs from memory)', () => {
  test('the Reynolds number of the pipe is 810 as printed', () => {
    const pipe = { diameter: 0.06, length: 10 };
    const reynoldsNumber = holeReynoldsNumber(pipe, { density: 900, kinematicViscosity: 2e-4 }, 0.0076);
    expect(relativeError(reynoldsNumber, 810)).toBeLessThan(0.005);
  });
});

describe('Petroff drag of a centred journal', () => {
  test('equals μ π D L U / h for the thin gap (Hamrock, Fundamentals of Fluid Film Lubrication, from memory)', () => {
    const gap = { bore: 0.0121, pistonDiameter: 0.012, length: 0.002, eccentricity: 0 };
    const expected = (0.3 * Math.PI * 0.01205 * 0.002) / 5e-5;
    expect(relativeError(annularGapDrag(gap, fluidOf(0.3)), expected)).toBeLessThan(1e-9);
  });

  test('grows by 1/sqrt(1 − ε²) off centre (Sommerfeld, from memory)', () => {
    const gap = { bore: 0.0121, pistonDiameter: 0.012, length: 0.002, eccentricity: 0.6 };
    const centred = { ...gap, eccentricity: 0 };
    const growth = annularGapDrag(gap, fluidOf(0.3)) / annularGapDrag(centred, fluidOf(0.3));
    expect(relativeError(growth, 1.25)).toBeLessThan(1e-12);
  });
});

describe('Idelchik thick edge in a bore (formula as in Modelica Fluid.Dissipation, dp_thickEdgedOverall)', () => {
  test('ζ at L/d 1 and hole/bore area 0.25, by hand', () => {
    // τ(1) = 1.4 · 10^−(0.25 + 0.535/1.05) = 0.243559; 0.5 · 0.75^0.75 + τ · 0.75^1.375 + 0.75².
    const expected = 0.5 * 0.805_927 + 0.243_559 * 0.673_286 + 0.5625;
    expect(relativeError(lossCoefficientIdelchikThickEdge(1, 0.25), expected)).toBeLessThan(1e-5);
  });

  test('a hole drops ½ ρ ζ V² and its laminar wall friction, Re 2000 at L/d 2', () => {
    const hole = { diameter: 1e-3, length: 2e-3 };
    const fluid = { density: 900, kinematicViscosity: 1e-5 };
    const drop = holePressureDrop(hole, fluid, 20 * holeArea(hole), idelchikThickEdgeLaw);
    const expected = 0.5 * 900 * 20 ** 2 * (1.565_639_4 + (64 / 2000) * 2);
    expect(relativeError(drop, expected)).toBeLessThan(1e-7);
  });
});
