/**
 * The code of every warning that a result may carry; docs/warnings.md has a row for each: what it means, its limit, where the limit comes from, and what to do.
 *
 * @public
 */
export const warningCodes = [
  'ball-too-quick',
  'barry-viscosity-low',
  'bubble-fills-bore',
  'bubble-not-round',
  'cavitation',
  'cup-not-confirmed',
  'cup-time-outside',
  'gas-nearly-full',
  'hole-area-ratio-high',
  'hole-edge-angle-high',
  'hole-edge-angle-low',
  'hole-edge-depth-high',
  'hole-frequency-high',
  'hole-frequency-high-for-mass',
  'hole-inertia-left-out',
  'hole-length-ratio-high',
  'hole-length-ratio-low',
  'hole-reynolds-number-high',
  'hole-reynolds-number-low',
  'hole-step-high',
  'hole-step-low',
  'hole-taper-high',
  'oil-warmer-than-body',
  'oil-warms',
  'piston-at-the-cap',
  'shear-thinning',
  'viscosity-extrapolated',
  'viscosity-index-high',
  'walther-residual-high',
  'wheel-off-the-ground',
] as const;

/**
 * The code of a warning.
 *
 * @public
 */
export type WarningCode = (typeof warningCodes)[number];
