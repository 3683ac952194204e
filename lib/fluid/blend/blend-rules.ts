import { requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { listOf, requireShape, type Shape } from '../../base/shape.js';
import { siliconeMolarMass, siliconeViscosityOfMolarMass } from '../shear/silicone-molar-mass.js';
import { fromSquareMillimetres, toSquareMillimetres } from '../viscosity/square-millimetres.js';
import { kinematicViscosityOfZShort, waltherZShort } from '../viscosity/walther-function.js';

/**
 * One oil of a blend.
 *
 * @public
 */
export interface BlendComponent {
  /** Share of the blend, 0 to 1; by volume or by mass as the rule says. All shares add up to 1. */
  readonly fraction: number;
  /** Kinematic viscosity [m²/s], above 0, of all oils at the same temperature. */
  readonly kinematicViscosity: number;
}

/** Form of {@link BlendComponent}. */
export const blendComponentShape: Shape = { fraction: '', kinematicViscosity: 'm²/s' };

/** A function of the viscosity [m²/s] that is additive in a blend. */
export interface BlendingFunction {
  readonly of: (kinematicViscosity: number) => number;
  readonly inverse: (mean: number) => number;
}

/** The blending functions; their sources stand at the rules below. */
export const blendingFunctions = {
  astm: {
    of: (viscosity) => Math.log10(Math.log10(waltherZShort(viscosity))),
    inverse: (w) => kinematicViscosityOfZShort(10 ** (10 ** w)),
  },
  refutas: {
    of: (viscosity) => {
      requireWithin(viscosity, 0.21e-6, 20, 'kinematicViscosity', 'm²/s');
      return Math.log(Math.log(toSquareMillimetres(viscosity) + 0.8));
    },
    inverse: (number) => fromSquareMillimetres(Math.exp(Math.exp(number)) - 0.8),
  },
  arrhenius: { of: Math.log, inverse: Math.exp },
  kendallMonroe: { of: Math.cbrt, inverse: (root) => root ** 3 },
  polymer: { of: (viscosity) => viscosity ** (1 / 3.4), inverse: (root) => root ** 3.4 },
  molarMass: { of: siliconeMolarMass, inverse: siliconeViscosityOfMolarMass },
} as const satisfies Record<string, BlendingFunction>;

/**
 * Blend viscosity [m²/s] by the ASTM blending function, `W = Σ x W`, `W = log₁₀ log₁₀ Z` with the short form of Z.
 *
 * @param components - oils with shares by volume
 * @throws InputError on shares that do not add up to 1 or a viscosity outside 0.21e-6 to 20 m²/s
 * @see ASTM D7152-11 (scope read, arithmetic from memory); petroleum products without viscosity improvers
 * @public
 */
export function astmBlend(components: readonly BlendComponent[]): number {
  requireShape({ components }, { components: listOf(blendComponentShape) });
  return additive(components, blendingFunctions.astm);
}

/**
 * Blend viscosity [m²/s] by the blending number `14.534 ln ln(ν + 0.8) + 10.975`, ν in mm²/s.
 *
 * @param components - oils with shares by mass
 * @throws InputError on shares that do not add up to 1 or a viscosity outside 0.21e-6 to 20 m²/s
 * @see Maples, Petroleum Refinery Process Economics, 2nd ed. (2000) ("Refutas index")
 * @public
 */
export function refutasBlend(components: readonly BlendComponent[]): number {
  requireShape({ components }, { components: listOf(blendComponentShape) });
  return additive(components, blendingFunctions.refutas);
}

/**
 * Blend viscosity [m²/s] with additive logarithms, `ln ν = Σ x ln ν`.
 *
 * @param components - oils with shares by mass (the source has moles)
 * @throws InputError on shares that do not add up to 1 or a viscosity not above 0
 * @see Arrhenius, Z. Phys. Chem. 1 (1887) 285
 * @public
 */
export function arrheniusBlend(components: readonly BlendComponent[]): number {
  requireShape({ components }, { components: listOf(blendComponentShape) });
  return additive(components, blendingFunctions.arrhenius);
}

/**
 * Blend viscosity [m²/s] with additive cube roots, `ν^(1/3) = Σ x ν^(1/3)`.
 *
 * @param components - oils with shares by mass (the source has moles)
 * @throws InputError on shares that do not add up to 1 or a viscosity not above 0
 * @see Kendall & Monroe, J. Am. Chem. Soc. 39 (1917) 1787; from memory
 * @public
 */
export function kendallMonroeBlend(components: readonly BlendComponent[]): number {
  requireShape({ components }, { components: listOf(blendComponentShape) });
  return additive(components, blendingFunctions.kendallMonroe);
}

/**
 * Blend viscosity [m²/s] of one polymer in two chain lengths, `ν^(1/3.4) = Σ w ν^(1/3.4)`: viscosity as the 3.4th power of an
 * additive mean molar mass.
 *
 * @param components - oils with shares by mass
 * @throws InputError on shares that do not add up to 1 or a viscosity not above 0
 * @see Berry & Fox, Adv. Polym. Sci. 5 (1968) 261; from memory
 * @public
 */
export function polymerBlend(components: readonly BlendComponent[]): number {
  requireShape({ components }, { components: listOf(blendComponentShape) });
  return additive(components, blendingFunctions.polymer);
}

/**
 * Blend viscosity [m²/s] at 25 °C of silicones with additive molar mass by Barry's relation.
 *
 * @param components - oils with shares by mass, viscosities at 25 °C of 11e-6 to 20
 * @throws InputError on shares that do not add up to 1 or a viscosity outside these
 * @see Barry, J. Appl. Phys. 17 (1946) 1020; the combination is our own
 * @public
 */
export function molarMassBlend(components: readonly BlendComponent[]): number {
  requireShape({ components }, { components: listOf(blendComponentShape) });
  return additive(components, blendingFunctions.molarMass);
}

/** Throws unless all shares are 0 or more and add up to 1. */
export function requireFractions(components: readonly { readonly fraction: number }[]): void {
  let total = 0;
  for (const [index, { fraction }] of components.entries()) {
    requireNotNegative(fraction, `components[${index}].fraction`, '');
    total += fraction;
  }
  requireWithin(total, 1 - 1e-9, 1 + 1e-9, 'sum of all fractions', '');
}

/** Viscosity at which a blending function has its mean over the components. */
function additive(components: readonly BlendComponent[], { of, inverse }: BlendingFunction): number {
  requireFractions(components);
  let mean = 0;
  for (const { fraction, kinematicViscosity } of components) {
    requirePositive(kinematicViscosity, 'kinematicViscosity', 'm²/s');
    mean += fraction * of(kinematicViscosity);
  }
  return inverse(mean);
}
