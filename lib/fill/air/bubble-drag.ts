import { requireNotNegative } from '../../base/checks.js';
import { oneOf, requireShape } from '../../base/shape.js';
/**
 * What the surface of a bubble does: `clean` flows along with the oil, `rigid` is held by dirt and polymer on it.
 *
 * @public
 */
export type BubbleSurface = 'clean' | 'rigid';

/**
 * Drag at a Reynolds number over the drag of creeping flow at the same speed: 1 as the Reynolds number tends to 0.
 *
 * Rigid: `1 + 0.15 Re^0.687`, to Re 800. Clean: `1 + 1/(8/Re + (1 + 3.315/√Re)/2)`, for round bubbles at any Re.
 *
 * @param reynoldsNumber - on the diameter, 0 or more
 * @param surface - clean or rigid
 * @see Rigid: Schiller & Naumann (1933), in Clift, Grace & Weber (1978), table 5.1. Clean: Mei, Klausner & Lawrence, Phys. Fluids 6
 * (1994) 418. Both from memory
 * @public
 */
export function dragIncrease(reynoldsNumber: number, surface: BubbleSurface): number {
  requireShape({ reynoldsNumber, surface }, { reynoldsNumber: '', surface: oneOf('clean', 'rigid') });
  requireNotNegative(reynoldsNumber, 'reynoldsNumber', '');
  if (reynoldsNumber === 0) return 1;
  if (surface === 'rigid') return 1 + 0.15 * reynoldsNumber ** 0.687;
  return 1 + 1 / (8 / reynoldsNumber + 0.5 * (1 + 3.315 / Math.sqrt(reynoldsNumber)));
}
