import { requireWithin } from '../base/checks.js';
import type { BubbleSurface } from './bubble-drag.js';

/**
 * Speed of a ball on the axis of a tube over its speed without walls, in creeping flow.
 *
 * `κ/(1 + κ)` is 1 for a rigid surface and 0 for a clean one in
 * `[1 − 0.7017 (2+3κ)/(1+κ) λ + 2.0865 κ/(1+κ) λ³ + 0.5689 (2−3κ)/(1+κ) λ⁵ − 0.72603 (1−κ)/(1+κ) λ⁶] / [1 + 2.2757 (1−κ)/(2+3κ) λ⁵]`.
 *
 * @param ratio - diameter of the ball over that of the tube, 0 to 0.8; within 2 % of the exact solution up to 0.5
 * @param surface - clean or rigid
 * @throws InputError for a ratio outside 0 to 0.8
 * @see Haberman & Sayre, David Taylor Model Basin Report 1143 (1958); Clift, Grace & Weber (1978), sec. 9.II; from memory
 * @public
 */
export function wallFactor(ratio: number, surface: BubbleSurface): number {
  requireWithin(ratio, 0, 0.8, 'ratio of diameters', '');
  const fifth = ratio ** 5;
  const sixth = ratio ** 6;
  if (surface === 'clean') {
    return (1 - 1.4034 * ratio + 1.1378 * fifth - 0.72603 * sixth) / (1 + 1.13785 * fifth);
  }
  return (
    (1 - 2.1051 * ratio + 2.0865 * ratio ** 3 - 1.7067 * fifth + 0.72603 * sixth) / (1 - (2.2757 / 3) * fifth)
  );
}
