import { requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { standardGravity } from '../../base/constants.js';
import { oneOf, record, requireShape, type Shape } from '../../base/shape.js';
import { noWarnings, type Warning } from '../../base/warning.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import { requireFluidState } from '../../fluid/oil/fluid-state.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import { type BubbleSurface, dragIncrease } from './bubble-drag.js';
import { wallFactor } from './bubble-wall.js';

/**
 * A bubble and where it rises.
 *
 * @public
 */
export interface Bubble {
  /** Radius [m], above 0. */
  readonly radius: number;
  /** `clean`: its surface flows along; `rigid`: dirt on the surface holds it, and it rises like a solid ball. */
  readonly surface: BubbleSurface;
}

/** Form of {@link Bubble}. */
export const bubbleShape: Shape = { radius: 'm', surface: oneOf('clean', 'rigid') };

/**
 * How a bubble rises.
 *
 * @public
 */
export interface BubbleRise {
  /** Steady speed [m/s]. */
  readonly speed: number;
  /** Reynolds number on the diameter, without walls. */
  readonly reynoldsNumber: number;
  /** Eötvös number `Δρ g d²/σ`; above about 0.5 the bubble begins to flatten. */
  readonly eotvosNumber: number;
  /** What is doubtful about it. */
  readonly warnings: readonly Warning[];
}

/**
 * Speed of a rigid ball in creeping flow [m/s], `2 R² Δρ g / (9 μ)`.
 *
 * @param radius - radius [m], above 0
 * @param densityDifference - density of the liquid less that of the ball [kg/m³], 0 or more
 * @param dynamicViscosity - of the liquid [Pa·s], above 0
 * @throws InputError for a value outside its range
 * @see Stokes (1851); Clift, Grace & Weber, Bubbles, Drops, and Particles (1978), Eq. (3-18) (equation number from memory)
 * @example
 * ```ts
 * stokesSpeed(0.0005, 970, 0.3395); // 1.5566e-3: 2 R² Δρ g/(9 μ), by hand
 * ```
 * @public
 */
export function stokesSpeed(radius: number, densityDifference: number, dynamicViscosity: number): number {
  requireShape(
    { radius, densityDifference, dynamicViscosity },
    { radius: 'm', densityDifference: 'kg/m³', dynamicViscosity: 'Pa·s' },
  );
  return hadamardRybczynskiSpeed(radius, densityDifference, dynamicViscosity, Number.MAX_VALUE);
}

/**
 * Speed of a fluid ball in creeping flow [m/s], `2 R² Δρ g / (3 μ) · (1 + κ)/(2 + 3κ)`, with `κ` the ratio of viscosities.
 *
 * @param radius - radius [m], above 0
 * @param densityDifference - density of the liquid less that of the ball [kg/m³], 0 or more
 * @param dynamicViscosity - of the liquid [Pa·s], above 0
 * @param viscosityRatio - viscosity inside over outside, 0 or more; 0 for a gas, where left out
 * @throws InputError for a value outside its range
 * @see Hadamard, C. R. Acad. Sci. 152 (1911) 1735; Rybczynski (1911); Clift, Grace & Weber (1978), Eq. (3-15) (equation number
 * from memory)
 * @public
 */
export function hadamardRybczynskiSpeed(
  radius: number,
  densityDifference: number,
  dynamicViscosity: number,
  viscosityRatio = 0,
): number {
  requirePositive(radius, 'radius', 'm');
  requireNotNegative(densityDifference, 'densityDifference', 'kg/m³');
  requirePositive(dynamicViscosity, 'dynamicViscosity', 'Pa·s');
  // Of a rigid ball it is the largest number there is.
  requireWithin(viscosityRatio, 0, Number.MAX_VALUE, 'viscosityRatio', '');
  // (1 + κ)/(2 + 3κ), written so that it stands for any κ.
  const mobility = 1 / 3 + 1 / (3 * (2 + 3 * viscosityRatio));
  return ((2 * radius ** 2 * densityDifference * standardGravity) / (3 * dynamicViscosity)) * mobility;
}

/** Eötvös number and radius ratio up to which the laws here were shown to hold. */
const limits = { eotvos: 0.5, radiusRatio: 0.6 } as const;

/**
 * Speed at which a bubble rises in oil that stands in a round body, from creeping flow to higher Reynolds numbers.
 *
 * The weight of the air is neglected (0.1 %). The wall factor is that of creeping flow; at higher Reynolds number the wall
 * holds the bubble less, so that the true speed lies between this and the one without wall.
 *
 * @param bubble - radius [m] above 0 and below that of the bore; surface
 * @param fluid - density above 0 kg/m³, kinematic viscosity above 0 m²/s
 * @param surroundings - bore of the body [m], above the bubble's diameter; surface tension of the oil [N/m], above 0
 * @throws InputError for a value outside its range
 * @see {@link dragIncrease} and {@link wallFactor} for the laws
 * @public
 */
export function bubbleRise(
  bubble: Bubble,
  fluid: FluidState,
  surroundings: { readonly bore: number; readonly surfaceTension: number },
): BubbleRise {
  requireShape(
    { bubble, fluid, surroundings },
    { bubble: bubbleShape, fluid: record, surroundings: { bore: '', surfaceTension: '' } },
  );
  requireFluidState(fluid);
  const { bore, surfaceTension } = surroundings;
  requirePositive(bore, 'bore', 'm');
  requirePositive(surfaceTension, 'surfaceTension', 'N/m');
  const { radius, surface } = bubble;
  const { density, kinematicViscosity } = fluid;
  const ratio = (2 * radius) / bore;
  const creeping = hadamardRybczynskiSpeed(
    radius,
    density,
    density * kinematicViscosity,
    surface === 'clean' ? 0 : Number.MAX_VALUE,
  );
  const reynolds = (speed: number): number => (2 * radius * speed) / kinematicViscosity;
  const excess = (speed: number): number => speed * dragIncrease(reynolds(speed), surface) - creeping;
  const unbounded = bracketedRoot(excess, 0, creeping, 'bubble speed').root;
  const eotvosNumber = (density * standardGravity * (2 * radius) ** 2) / surfaceTension;
  return {
    speed: unbounded * wallFactor(ratio, surface),
    reynoldsNumber: reynolds(unbounded),
    eotvosNumber,
    warnings: riseWarnings(eotvosNumber, ratio),
  };
}

function riseWarnings(eotvosNumber: number, radiusRatio: number): readonly Warning[] {
  const warnings: Warning[] = [];
  if (eotvosNumber > limits.eotvos) {
    warnings.push({
      code: 'bubble-not-round',
      message: 'The bubble is so large that it flattens; the law takes it as round',
      value: eotvosNumber,
      limit: limits.eotvos,
    });
  }
  if (radiusRatio > limits.radiusRatio) {
    warnings.push({
      code: 'bubble-fills-bore',
      message: 'The bubble nearly fills the bore; the wall law is good to 0.6 of it',
      value: radiusRatio,
      limit: limits.radiusRatio,
    });
  }
  return warnings.length === 0 ? noWarnings : warnings;
}
