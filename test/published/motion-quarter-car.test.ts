import { eigs } from 'mathjs';
import { describe, test } from 'vitest';
import { contactAt } from '../../lib/motion/corner/contact.js';
import { cornerEquation } from '../../lib/motion/corner/corner-equation.js';
import { groundOf } from '../../lib/motion/corner/ground.js';
import { moveCorner } from '../../lib/motion/corner/move-corner.js';
import { bindChambers } from '../../lib/motion/shock/chambers.js';
import { linearShock } from '../motion/linear-shock.js';
import { sampleCorner } from '../motion/sample-corner.js';
import { expectRow, motionRow, number } from './motion-rows.js';

/** Natural motions of a corner [1/s]: eigenvalues of its own slopes, the oil eliminated, as it follows at once. */
function naturalMotions(id: string, damper = 0, tyreDamping = 0): readonly (readonly [number, number])[] {
  const row = motionRow(id);
  const any = (...names: readonly string[]) =>
    number(row, names.find((name) => name in row.inputs) ?? names[0] ?? '');
  const corner = {
    ...sampleCorner,
    sprungMass: any('ms'),
    wheelMass: any('mu'),
    motionRatio: 'motionRatio' in row.inputs ? number(row, 'motionRatio') : 1,
    springRate: any('springRate', 'ks'),
    tyre: { stiffness: any('kt'), damping: tyreDamping },
  };
  const shock = linearShock({ rimDrag: (v) => damper * v });
  const chambers = bindChambers(shock);
  const state = Float64Array.of(0, -0.01, 0, -0.001, 0);
  const { equation } = cornerEquation({
    shock,
    chambers,
    corner,
    ground: groundOf({ kind: 'step', height: 0 }),
    modes: {
      oil: { isOpen: false, cavities: [] },
      tyre: contactAt(corner.tyre, 1, 0),
      bump: contactAt(corner.bumpStop, -1, 0),
      droop: contactAt(corner.droopStop, -1, 0),
    },
  });
  const j = new Float64Array(25);
  equation.slopes?.(0, state, j, new Float64Array(5), new Float64Array(5));
  const at = (row_: number, column: number) => j[row_ * 5 + column] as number;
  const rest = [1, 2, 3, 4];
  const matrix = rest.map((a) => rest.map((b) => at(a, b) - (at(a, 0) * at(0, b)) / at(0, 0)));
  const values = eigs(matrix, { eigenvectors: false }).values as unknown as readonly (
    | number
    | { readonly re: number; readonly im: number }
  )[];
  return values
    .map((value) => (typeof value === 'number' ? ([value, 0] as const) : ([value.re, value.im] as const)))
    .filter(([, im]) => im > 0)
    .sort(([, a], [, b]) => a - b);
}

describe('a quarter of a car', () => {
  // The book rounds its polynomial, λ⁴ + 4786 λ² + 293e3, before it takes the roots: 1e-3 of its first frequency. Each step is checked
  // by itself, and ours against the unrounded roots by numpy.
  test('quarter_car_book', () => {
    const row = motionRow('quarter_car_book');
    const [slow = 0, fast = 0] = naturalMotions('quarter_car_book').map(([, im]) => im);
    const [sum, product] = [4786, 293e3];
    const root = Math.sqrt(sum ** 2 - 4 * product);
    expectRow(row, [Math.sqrt((sum - root) / 2), Math.sqrt((sum + root) / 2)]);
    expectRow({ ...row, expected: [sum, product] }, [slow ** 2 + fast ** 2, slow ** 2 * fast ** 2]);
    expectRow({ ...row, expected: [7.878634, 68.708623] }, [slow, fast], 1e-7);
  });

  test('quarter_car_book_mode1', () => {
    const row = motionRow('quarter_car_book_mode1');
    const [ms, ks] = [number(row, 'ms'), number(row, 'ks')];
    const slow = naturalMotions('quarter_car_book_mode1')[0]?.[1] ?? 0;
    expectRow(row, [(ks - ms * slow ** 2) / ks]);
  });

  test('quarter_car_demo', () => {
    const motions = naturalMotions('quarter_car_demo');
    expectRow(
      motionRow('quarter_car_demo'),
      motions.map(([, im]) => im / (2 * Math.PI)),
    );
  });

  test('quarter_car_demo_damped', () => {
    const row = motionRow('quarter_car_demo_damped');
    const [slow, fast] = naturalMotions('quarter_car_demo_damped', number(row, 'damper'), number(row, 'ct'));
    expectRow(row, [...(fast ?? []), ...(slow ?? [])]);
  });

  test('static_sag', () => {
    const row = motionRow('static_sag');
    const { restTravel, trace } = moveCorner(
      linearShock(),
      sampleCorner,
      { kind: 'step', height: 0 },
      { duration: 1e-3 },
    );
    expectRow(row, [restTravel, -(trace.wheels[0] ?? 0)]);
  });
});
