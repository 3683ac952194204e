import { requireWithin } from '../../base/checks.js';
import { oneOf, requireShape } from '../../base/shape.js';
import type { BubbleSurface } from './bubble-drag.js';

/**
 * Speed of a ball on the axis of a tube over its speed without walls, in creeping flow.
 *
 * `[1 − 0.7017 (2 + s) λ + 2.0865 s λ³ + 0.5689 (2 − 5s) λ⁵ − 0.72603 (1 − 2s) λ⁶] / [1 + 2.2757 (1 − 2s)/(2 + s) λ⁵]`, with `s` 1 for a
 * rigid surface and 0 for a clean one: `κ/(1 + κ)` of the ratio `κ` of viscosities.
 *
 * @param ratio - diameter of the ball over that of the tube, 0 to 0.8; within 2 % of the exact solution up to 0.5
 * @param surface - clean or rigid
 * @throws InputError for a ratio outside 0 to 0.8
 * @see Haberman & Sayre, David Taylor Model Basin Report 1143 (1958); Clift, Grace & Weber (1978), sec. 9.II; from memory
 * @public
 */
export function wallFactor(ratio: number, surface: BubbleSurface): number {
  requireShape({ surface }, { surface: oneOf('clean', 'rigid') });
  requireWithin(ratio, 0, 0.8, 'ratio of diameters', '');
  const s = surface === 'rigid' ? 1 : 0;
  const held =
    1 -
    0.7017 * (2 + s) * ratio +
    2.0865 * s * ratio ** 3 +
    0.5689 * (2 - 5 * s) * ratio ** 5 -
    0.726_03 * (1 - 2 * s) * ratio ** 6;
  return held / (1 + ((2.2757 * (1 - 2 * s)) / (2 + s)) * ratio ** 5);
}
