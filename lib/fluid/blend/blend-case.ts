import { requireWithin } from '../../base/checks.js';
import { optional, type Shape } from '../../base/shape.js';
import {
  type BlendRule,
  type BlendState,
  blendEstimates,
  type OilPair,
  oilPairShape,
  rulesFor,
  secondMassFraction,
} from './blend-estimates.js';
import { blendInteraction, interactingBlend } from './grunberg-nissan.js';

/**
 * A blend that was mixed and measured; it pins every rule.
 *
 * @public
 */
export interface MeasuredBlend {
  /** Volume of the second oil over both volumes, 0.01 to 0.99. */
  readonly secondVolumeFraction: number;
  /** Temperature of the measurement [K], 200 to 600. */
  readonly temperature: number;
  /** Kinematic viscosity [m²/s], above 0. */
  readonly kinematicViscosity: number;
}

/** Form of {@link MeasuredBlend}. */
export const measuredBlendShape: Shape = {
  secondVolumeFraction: '',
  temperature: 'K',
  kinematicViscosity: 'm²/s',
};

/**
 * A pair of oils at a temperature, with a measured blend where there is one.
 *
 * @public
 */
export interface BlendCase {
  readonly pair: OilPair;
  /** Temperature [K], 200 to 600. */
  readonly temperature: number;
  readonly measured?: MeasuredBlend;
}

/** Form of {@link BlendCase}. */
export const blendCaseShape: Shape = {
  pair: oilPairShape,
  temperature: 'K',
  measured: optional(measuredBlendShape),
};

/**
 * A number that each rule estimates: by the default rule, over all rules, and by each rule that fits the pair.
 *
 * @public
 */
export interface BlendSpread {
  readonly low: number;
  /** By the default rule. */
  readonly typical: number;
  readonly high: number;
  readonly defaultRule: BlendRule;
  readonly rules: Readonly<Partial<Record<BlendRule, number>>>;
}

/** Viscosity [m²/s] of a blend as one rule has it. */
export type BlendEstimate = (secondVolumeFraction: number, bound: BlendState['bound']) => number;

/** Computes something by each rule that fits the pair. */
export function byEachRule(blend: BlendCase, compute: (estimate: BlendEstimate) => number): BlendSpread {
  const defaultRule = blend.pair.first.base === 'silicone' || blend.measured ? 'arrhenius' : 'wright';
  const entries = rulesFor(blend.pair).map((rule) => [rule, compute(pinnedEstimate(blend, rule))] as const);
  const numbers = entries.map(([, number]) => number);
  const rules: BlendSpread['rules'] = Object.fromEntries(entries);
  return {
    low: Math.min(...numbers),
    typical: rules[defaultRule] ?? compute(pinnedEstimate(blend, defaultRule)),
    high: Math.max(...numbers),
    defaultRule,
    rules,
  };
}

/** The rule as it is, or with the interaction of the measured blend, the same at all temperatures. */
function pinnedEstimate({ pair, temperature, measured }: BlendCase, rule: BlendRule): BlendEstimate {
  const estimate = blendEstimates[rule];
  const ideal: BlendEstimate = (secondVolumeFraction, bound) =>
    estimate({ pair, secondVolumeFraction, temperature, bound });
  if (measured === undefined) return ideal;
  requireWithin(measured.secondVolumeFraction, 0.01, 0.99, 'measured.secondVolumeFraction', '');
  const atMeasured: BlendState = { ...measured, pair, bound: 'typical' };
  const interaction = blendInteraction(
    measured.kinematicViscosity,
    estimate(atMeasured),
    secondMassFraction(atMeasured),
  );
  return (secondVolumeFraction, bound) => {
    const massFraction = secondMassFraction({ pair, secondVolumeFraction, temperature, bound });
    return interactingBlend(ideal(secondVolumeFraction, bound), massFraction, interaction);
  };
}
