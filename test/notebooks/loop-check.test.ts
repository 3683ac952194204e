import { expect, test } from 'vitest';
import { loopCheck } from '../../notebooks/bench-stroke/checks.js';

/** A loop in corners: 0 to 20 mm in with 10 N and back with one force, so many newtons. */
function checked(back: number, heat: number): { readonly passed: boolean; readonly detail: string } {
  const check = loopCheck(
    { travels: Float64Array.from([0, 0.02, 0.02, 0]), forces: Float64Array.from([10, 10, back, back]) },
    heat,
  );
  return { passed: check.passed, detail: check.detail };
}

// By hand: 10 N and −5 N over 20 mm are 0.3 J; 10 N and 9.9 N leave 2 mJ of 0.2 J.
test('the loop holds the heat to a hundredth, and says by how much it does not', () => {
  expect(checked(-5, 0.3)).toEqual({ passed: true, detail: 'off by 0.00 %, from 3 points of the loop' });
  expect(checked(-5, 0.25)).toEqual({ passed: false, detail: 'off by 20.00 %, from 3 points of the loop' });
  expect(checked(9.9, 0.002).passed).toBe(true);
  expect(checked(9.9, 0.0025).passed).toBe(false);
});
