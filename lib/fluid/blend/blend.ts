import { requirePositive, requireWithin } from '../../base/checks.js';
import { requireShape } from '../../base/shape.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import { viscosityAt } from '../viscosity/viscosity-line.js';
import { type BlendCase, type BlendSpread, blendCaseShape, byEachRule } from './blend-case.js';

/**
 * Viscosity of a blend [m²/s] by all rules that fit, with their spread; `low` and `high` also span the intervals of both oils.
 *
 * No source settles which rule holds for silicone. The default there is additive logarithms by mass (Arrhenius); for petroleum it
 * is Wright's method, which ASTM D7152 prefers. A measured blend pins each rule by an interaction term; the default is then the
 * equation of Grunberg and Nissan, and at the measured blend the rules agree.
 *
 * @param blend - oils of one family, temperature, and a measured blend
 * @param secondVolumeFraction - volume of the second oil over both volumes, 0 to 1
 * @throws InputError outside these, and for silicone with petroleum oil: they do not mix
 * @see ASTM D7152-11; Grunberg & Nissan, Nature 164 (1949) 799; the sources named at each rule
 * @public
 */
export function blendViscosity(blend: BlendCase, secondVolumeFraction: number): BlendSpread {
  requireShape({ blend }, { blend: blendCaseShape });
  requireWithin(secondVolumeFraction, 0, 1, 'secondVolumeFraction', '');
  const spread = byEachRule(blend, (estimate) => estimate(secondVolumeFraction, 'typical'));
  const { first, second } = blend.pair;
  // Without an interval all three are one, and the rules take most of the time of an order plan.
  if (!first.isInterval && !second.isInterval) return spread;
  const { low } = byEachRule(blend, (estimate) => estimate(secondVolumeFraction, 'low'));
  const { high } = byEachRule(blend, (estimate) => estimate(secondVolumeFraction, 'high'));
  return { ...spread, low, high };
}

/**
 * Share of the second oil, by volume, that gives a wanted viscosity: the inverse of {@link blendViscosity} for the typical oils.
 *
 * @param blend - oils of one family, temperature, and a measured blend
 * @param wanted - kinematic viscosity [m²/s], between those of the two oils at that temperature
 * @throws InputError outside these, and for silicone with petroleum oil: they do not mix
 * @see ASTM D7152-11; Grunberg & Nissan, Nature 164 (1949) 799; the sources named at each rule
 * @public
 */
export function blendFraction(blend: BlendCase, wanted: number): BlendSpread {
  requireShape({ blend }, { blend: blendCaseShape });
  requirePositive(wanted, 'wanted', 'm²/s');
  const { first, second } = blend.pair;
  const spread = byEachRule(blend, (estimate) =>
    fractionBetween((fraction) => Math.log(estimate(fraction, 'typical') / wanted)),
  );
  const ends = [first, second].map((oil) => viscosityAt(oil.typical, blend.temperature));
  requireWithin(wanted, Math.min(...ends), Math.max(...ends), 'wanted', 'm²/s');
  return spread;
}

function fractionBetween(distance: (fraction: number) => number): number {
  const [atFirst, atSecond] = [distance(0), distance(1)];
  // A wanted viscosity at one of the ends, which a rule returns only to its last digits; beyond them the caller refuses it.
  if (atFirst * atSecond >= 0) return Math.abs(atFirst) <= Math.abs(atSecond) ? 0 : 1;
  return bracketedRoot(distance, 0, 1, 'blend').root;
}
