import { execFileSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { dissolutionTime } from '../../lib/fill/air/bubble-dissolution.js';
import { dragIncrease } from '../../lib/fill/air/bubble-drag.js';
import { bubbleRise, hadamardRybczynskiSpeed, stokesSpeed } from '../../lib/fill/air/bubble-rise.js';
import { wallFactor } from '../../lib/fill/air/bubble-wall.js';
import { type ClosedShock, closeShock } from '../../lib/fill/chamber/closed-shock.js';
import { conditionAtClosing, pressureInside } from '../../lib/fill/chamber/pressure-inside.js';
import { toolRuns } from '../project/tools.js';
import checks from './fill-checks.json' with { type: 'json' };
import { input, type PublishedRow, relativeError } from './published-rows.js';

const rows = checks.checks as unknown as readonly PublishedRow[];
const used = new Set<string>();

function rowOf(id: string): PublishedRow {
  const row = rows.find((candidate) => candidate.id === id);
  if (row === undefined) throw new Error(`no published row ${id}`);
  used.add(id);
  return row;
}

function expectRow(id: string, compute: (row: PublishedRow) => number): void {
  const row = rowOf(id);
  expect(relativeError(compute(row), row.expected), `${id}: ${compute(row)}`).toBeLessThanOrEqual(row.rtol);
}

/** A shock whose shaft carries the gas from one volume to the other over a stroke of 1 m. */
function cylinder(row: PublishedRow): {
  readonly shock: ClosedShock;
  readonly from: number;
  readonly to: number;
} {
  const [first, second] = [input(row, 'V1'), input(row, 'V2')];
  const shaftDiameter = Math.sqrt((4 / Math.PI) * Math.abs(second - first));
  const [from, to] = second < first ? [0, 1] : [1, 0];
  const chamber = {
    bore: 2 * shaftDiameter,
    shaftDiameter,
    stroke: 1,
    length: 2,
    capVolume: first,
    solidVolume: 0,
    shaftInside: 0,
  };
  const closing = { position: from, temperature: 300, ambientPressure: input(row, 'p1'), freeAir: 0 };
  return { shock: closeShock(chamber, { kind: 'air-pocket', volume: first }, closing), from, to };
}

/** Work that the shaft puts into the gas [J], by Simpson's rule on the pressure of the library. */
function workIn(row: PublishedRow): number {
  const { shock, from, to } = cylinder(row);
  const condition = { ...conditionAtClosing(shock), polytropicExponent: input(row, 'n') };
  const steps = 2000;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * pressureInside(shock, from + ((to - from) * i) / steps, condition);
  }
  return (sum * shock.shaftArea * (to - from)) / (3 * steps);
}

describe('gas against textbook examples', () => {
  for (const id of [
    'isothermal_compression_work',
    'isothermal_expansion_work',
    'adiabatic_compression_work',
  ]) {
    test(id, () => expectRow(id, workIn));
  }
  test('adiabatic_compression_pressure', () =>
    expectRow('adiabatic_compression_pressure', (row) => {
      const { shock, to } = cylinder(row);
      return pressureInside(shock, to, { ...conditionAtClosing(shock), polytropicExponent: input(row, 'n') });
    }));
});

describe('balls and bubbles against textbooks', () => {
  test('stokes_sand_grain', () =>
    expectRow('stokes_sand_grain', (row) =>
      stokesSpeed(input(row, 'radius'), input(row, 'densityDifference'), input(row, 'viscosity')),
    ));

  test('Hadamard-Rybczynski: a gas bubble rises 3/2 as fast, a drop of its own viscosity 6/5', () => {
    // Clift, Grace & Weber (1978), sec. 3.II: the limits of the published factor (from memory).
    const rigid = stokesSpeed(1e-4, 970, 0.34);
    expect(hadamardRybczynskiSpeed(1e-4, 970, 0.34) / rigid).toBeCloseTo(1.5, 12);
    expect(hadamardRybczynskiSpeed(1e-4, 970, 0.34, 1) / rigid).toBeCloseTo(1.2, 12);
  });

  test('settling_droplet_gpsa', () =>
    expectRow('settling_droplet_gpsa', (row) => {
      const [radius, viscosity] = [input(row, 'radius'), input(row, 'viscosity')];
      const reynolds = (2 * radius * row.expected * input(row, 'density')) / viscosity;
      return (
        stokesSpeed(radius, input(row, 'densityDifference'), viscosity) / dragIncrease(reynolds, 'rigid')
      );
    }));

  for (const ratio of ['0.1', '0.2', '0.3', '0.5']) {
    test(`haberman_sayre_rigid_${ratio}`, () =>
      expectRow(`haberman_sayre_rigid_${ratio}`, (row) => 1 / wallFactor(input(row, 'ratio'), 'rigid')));
  }

  test('a wall far away holds a clean bubble 2/3 as much as a rigid one', () => {
    // Brenner, Chem. Eng. Sci. 18 (1963) 1: the first-order wall effect is in proportion to the drag (from memory).
    const lost = (surface: 'clean' | 'rigid') => 1 - wallFactor(1e-4, surface);
    expect(lost('clean') / lost('rigid')).toBeCloseTo(2 / 3, 4);
  });

  for (const id of ['moore_clean_bubble_300', 'moore_clean_bubble_1000']) {
    test(id, () =>
      expectRow(id, (row) => (16 / input(row, 'reynolds')) * dragIncrease(input(row, 'reynolds'), 'clean')),
    );
  }

  test('the first inertia of a clean bubble is Re/8', () => {
    // Taylor & Acrivos, J. Fluid Mech. 18 (1964) 466 (from memory).
    expect((dragIncrease(1e-6, 'clean') - 1) / 1e-6).toBeCloseTo(1 / 8, 3);
  });

  test('standard_drag_200', () =>
    expectRow(
      'standard_drag_200',
      (row) => (24 / input(row, 'reynolds')) * dragIncrease(input(row, 'reynolds'), 'rigid'),
    ));

  test('epstein_plesset_saturated', () =>
    expectRow('epstein_plesset_saturated', (row) =>
      dissolutionTime({
        radius: input(row, 'radius'),
        pressure: 101_325,
        saturation: input(row, 'saturation'),
        airSolubility: input(row, 'solubility'),
        diffusivity: input(row, 'diffusivity'),
        surfaceTension: input(row, 'surfaceTension'),
      }),
    ));

  test('every published row was used', () =>
    expect([...used].sort()).toEqual(rows.map(({ id }) => id).sort()));
});

/** Terminal speeds of rigid balls as heavy over the liquid as a bubble is light, by the Python library fluids. */
const program = `
import json
from fluids.drag import v_terminal
cases = [(2*r, 970.0, 970.0*nu) for r in (1e-4, 5e-4, 1e-3) for nu in (1e-5, 1e-4, 3.5e-4)]
print(json.dumps([[D/2, mu/rho, v_terminal(D=D, rhop=2*rho, rho=rho, mu=mu, Method='Clift')] for D, rho, mu in cases]))
`;
const available = toolRuns('/usr/bin/python3', ['-c', 'import fluids']);

describe('rigid bubbles against the Python library fluids (standard drag curve)', () => {
  test.skipIf(!available)(
    'terminal speed within 5 %, the stated distance of Schiller-Naumann (skipped where /usr/bin/python3 has no fluids)',
    () => {
      const cases = JSON.parse(
        execFileSync('/usr/bin/python3', ['-c', program], { encoding: 'utf8' }),
      ) as readonly (readonly [number, number, number])[];
      expect(cases).toHaveLength(9);
      for (const [radius, kinematicViscosity, speed] of cases) {
        const fluid = { density: 970, kinematicViscosity };
        // A bore so wide that the wall does nothing.
        const rise = bubbleRise({ radius, surface: 'rigid' }, fluid, { bore: 1e3, surfaceTension: 0.021 });
        expect(relativeError(rise.speed, speed), `R ${radius}, nu ${kinematicViscosity}`).toBeLessThan(0.05);
      }
    },
  );
});
