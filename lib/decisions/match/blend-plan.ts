import { requirePositive } from '../../base/checks.js';
import { requireShape } from '../../base/shape.js';
import { blendFraction, blendViscosity } from '../../fluid/blend/blend.js';
import type { BlendCase } from '../../fluid/blend/blend-case.js';
import { blendCaseShape } from '../../fluid/blend/blend-case.js';

/**
 * How much of each bottle makes a wanted oil.
 *
 * @public
 */
export interface BlendPlan {
  /** Volume of the first and of the second oil [m³]. */
  readonly firstVolume: number;
  readonly secondVolume: number;
  /** Viscosity of the blend [m²/s]: by the default rule, and the lowest and highest by any rule and label. */
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/**
 * The blend of two oils that has a wanted viscosity.
 *
 * @param blend - oils of one family, temperature [K], and a measured blend where there is one
 * @param wanted - kinematic viscosity [m²/s] between those of the two oils at that temperature
 * @param volume - how much of the blend is needed [m³], above 0
 * @throws InputError for an input outside its range
 * @see the rules of `blendViscosity`
 * @public
 */
export function blendPlan(blend: BlendCase, wanted: number, volume: number): BlendPlan {
  requireShape({ blend, wanted }, { blend: blendCaseShape, wanted: 'm²/s' });
  requirePositive(volume, 'volume', 'm³');
  const share = blendFraction(blend, wanted).typical;
  const { low, typical, high } = blendViscosity(blend, share);
  return { firstVolume: (1 - share) * volume, secondVolume: share * volume, low, typical, high };
}
