import { describe, expect, test } from 'vitest';
import { dropTime } from '../../lib/measure/model/drop-time.js';
import type { Quadrature } from '../../lib/numeric/gauss-legendre.js';
import { checkRow, inventedLaw, type RowValues, stateOfRow } from './invented-shock.js';

// The shock is invented; what it shows was computed by NumPy, SciPy and emcee, which share no code with the library.

/** The rule of the rows: Simpson with 32 intervals. */
const simpson: Quadrature = {
  places: Array.from({ length: 33 }, (_, index) => index / 32),
  weights: Array.from({ length: 33 }, (_, index) => (index % 32 === 0 ? 1 : index % 2 === 1 ? 4 : 2) / 96),
};
describe('what the invented shock shows', () => {
  test.each([0, 1, 2, 3, 4, 5, 6, 7])(
    'drop %i: its time to 1e-9 by the rule of the row, to 1e-8 by the library rule',
    (index) => {
      const { inputs, expected } = checkRow<{ true: RowValues; mass: number; temperature: number }, number>(
        `shock-drop-${index}`,
      );
      const state = stateOfRow(inputs.true);
      const drop = {
        mass: inputs.mass,
        temperature: inputs.temperature + state.thermometerError,
        from: 0.025,
        to: 0.003,
      };
      expect(Math.abs(dropTime(inventedLaw(state), drop, simpson) / expected - 1)).toBeLessThan(1e-9);
      expect(Math.abs(dropTime(inventedLaw(state), drop) / expected - 1)).toBeLessThan(1e-8);
    },
  );

  test('forces and gas forces, to 1e-9', () => {
    const force = checkRow<{ true: RowValues; speeds: number[]; temperature: number }, number[]>(
      'shock-force',
    );
    const state = stateOfRow(force.inputs.true);
    const warm = inventedLaw(state).at(force.inputs.temperature + state.thermometerError);
    force.inputs.speeds.forEach((speed, index) => {
      expect(Math.abs(warm.dampingForce(speed, 0) / (force.expected[index] ?? 0) - 1)).toBeLessThan(1e-9);
    });
    const gas = checkRow<{ x: number[] }, number[]>('shock-gas');
    gas.inputs.x.forEach((x, index) => {
      expect(
        Math.abs(inventedLaw(state).at(295.15).gasForce(x) / (gas.expected[index] ?? 0) - 1),
      ).toBeLessThan(1e-9);
    });
  });
});
