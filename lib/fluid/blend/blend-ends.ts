import { oilDensity } from '../oil/density.js';
import type { Oil } from '../oil/oil.js';
import { viscosityAt } from '../viscosity/viscosity-line.js';
import {
  type BlendRule,
  blendEstimates,
  type OilPair,
  referenceTemperature,
  rulesFor,
} from './blend-estimates.js';
import { type BlendingFunction, blendingFunctions } from './blend-rules.js';

/** Lowest and highest viscosity [m²/s] of a blend by every rule. */
export type BlendEnds = (secondVolumeFraction: number) => { readonly low: number; readonly high: number };

/** Viscosity of a blend of which the second oil has a share by volume and by mass. */
type BoundRule = (byVolume: number, byMass: number) => number;

function bound(rule: BlendingFunction, first: number, second: number): (fraction: number) => number {
  const [atFirst, atSecond] = [rule.of(first), rule.of(second)];
  return (fraction) => rule.inverse((1 - fraction) * atFirst + fraction * atSecond);
}

function boundRule(rule: BlendRule, pair: OilPair, temperature: number): BoundRule {
  const at = (kelvin: number) =>
    [viscosityAt(pair.first.typical, kelvin), viscosityAt(pair.second.typical, kelvin)] as const;
  const byMass = (name: BlendingFunction): BoundRule => {
    const blend = bound(name, ...at(temperature));
    return (_byVolume, share) => blend(share);
  };
  switch (rule) {
    case 'astm-d7152':
      return bound(blendingFunctions.astm, ...at(temperature));
    case 'refutas':
    case 'arrhenius':
    case 'polymer':
      return byMass(blendingFunctions[rule]);
    case 'kendall-monroe':
      return byMass(blendingFunctions.kendallMonroe);
    case 'molar-mass': {
      const [there, here] = [at(referenceTemperature), at(temperature)];
      const molarMass = bound(blendingFunctions.molarMass, ...there);
      const ways = [here, there].map((ends) => bound(blendingFunctions.arrhenius, ...ends));
      return (_byVolume, share) => {
        const [now = 0, then = 1] = ways.map((way) => way(share));
        return (molarMass(share) * now) / then;
      };
    }
    case 'wright':
      return (secondVolumeFraction) =>
        blendEstimates.wright({ pair, secondVolumeFraction, temperature, bound: 'typical' });
  }
}

/**
 * Lowest and highest viscosity by the blending rules, of two oils at the middle of what their labels leave open, as a function that is
 * quick to ask for many shares: what depends on the two oils alone is worked out once.
 *
 * @param pair - oils of one family
 * @param temperature - [K], 200 to 600
 */
export function blendEnds(pair: OilPair, temperature: number): BlendEnds {
  const rules = rulesFor(pair).map((rule) => boundRule(rule, pair, temperature));
  const densityOf = ({ base, densityAt15Celsius }: Oil) => oilDensity(base, temperature, densityAt15Celsius);
  const [firstDensity, secondDensity] = [densityOf(pair.first), densityOf(pair.second)];
  return (secondVolumeFraction) => {
    const mass = secondVolumeFraction * secondDensity;
    const byMass = mass / (mass + (1 - secondVolumeFraction) * firstDensity);
    let [low, high] = [Number.POSITIVE_INFINITY, 0];
    for (const rule of rules) {
      const viscosity = rule(secondVolumeFraction, byMass);
      if (viscosity < low) low = viscosity;
      if (viscosity > high) high = viscosity;
    }
    return { low, high };
  };
}
