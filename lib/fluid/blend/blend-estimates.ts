import { refuse } from '../../base/checks.js';
import { madeWith, type Shape } from '../../base/shape.js';
import { oilDensity } from '../oil/density.js';
import type { Oil } from '../oil/oil.js';
import { lowestBarryMolarMass, siliconeViscosityOfMolarMass } from '../shear/silicone-molar-mass.js';
import { viscosityAt } from '../viscosity/viscosity-line.js';
import { waltherViscosity } from '../viscosity/walther-line.js';
import {
  arrheniusBlend,
  astmBlend,
  type BlendComponent,
  kendallMonroeBlend,
  molarMassBlend,
  polymerBlend,
  refutasBlend,
} from './blend-rules.js';
import { wrightBlend } from './wright-blend.js';

/**
 * The rules by which the viscosity of a blend may be estimated, named after their source.
 *
 * @public
 */
export type BlendRule =
  | 'wright'
  | 'astm-d7152'
  | 'refutas'
  | 'arrhenius'
  | 'kendall-monroe'
  | 'polymer'
  | 'molar-mass';

/**
 * Two oils to be mixed, of one chemical family.
 *
 * @public
 */
export interface OilPair {
  readonly first: Oil;
  readonly second: Oil;
}

/** Form of {@link OilPair}. */
export const oilPairShape: Shape = { first: madeWith('typical'), second: madeWith('typical') };

/** A blend of a pair at one temperature. */
export interface BlendState {
  readonly pair: OilPair;
  readonly secondVolumeFraction: number;
  readonly temperature: number;
  readonly bound: 'low' | 'typical' | 'high';
}

/** Viscosity [m²/s] of a blend by each rule; only the rules of {@link rulesFor} fit a pair. */
export const blendEstimates: Readonly<Record<BlendRule, (state: BlendState) => number>> = {
  wright: wrightEstimate,
  'astm-d7152': (state) => astmBlend(componentsAt(state, state.secondVolumeFraction, state.temperature)),
  refutas: byMass(refutasBlend),
  arrhenius: byMass(arrheniusBlend),
  'kendall-monroe': byMass(kendallMonroeBlend),
  polymer: byMass(polymerBlend),
  'molar-mass': molarMassEstimate,
};

/** The rules that fit a pair; throws for silicone with petroleum oil. */
export function rulesFor({ first, second }: OilPair): readonly BlendRule[] {
  if (first.base !== second.base) {
    refuse(
      `${first.base} with ${second.base}`,
      'pair',
      '',
      'of one family, since silicone and petroleum oil do not mix',
    );
  }
  const rules: BlendRule[] = ['astm-d7152', 'refutas', 'arrhenius', 'kendall-monroe'];
  // Wright's method mixes lines, and only those of ASTM D341.
  if (first.typical.kind === 'walther' && second.typical.kind === 'walther') rules.push('wright');
  if (first.base === 'petroleum') return rules;
  rules.push('polymer');
  const thinnest = Math.min(...[first, second].map((oil) => viscosityAt(oil.low, referenceTemperature)));
  if (thinnest >= siliconeViscosityOfMolarMass(lowestBarryMolarMass)) rules.push('molar-mass');
  return rules;
}

/** 25 °C in kelvin, where Barry's relation of viscosity and molar mass is stated. */
export const referenceTemperature = 298.15;

/** Share by mass of the second oil from its share by volume. */
export function secondMassFraction({ pair, secondVolumeFraction, temperature }: BlendState): number {
  const mass = (oil: Oil, volume: number): number =>
    volume * oilDensity(oil.base, temperature, oil.densityAt15Celsius);
  const second = mass(pair.second, secondVolumeFraction);
  return second / (second + mass(pair.first, 1 - secondVolumeFraction));
}

function componentsAt(
  { pair, bound }: BlendState,
  fraction: number,
  temperature: number,
): readonly BlendComponent[] {
  return [
    { fraction: 1 - fraction, kinematicViscosity: viscosityAt(pair.first[bound], temperature) },
    { fraction, kinematicViscosity: viscosityAt(pair.second[bound], temperature) },
  ];
}

function byMass(rule: (components: readonly BlendComponent[]) => number) {
  return (state: BlendState): number =>
    rule(componentsAt(state, secondMassFraction(state), state.temperature));
}

function wrightEstimate({ pair, bound, secondVolumeFraction, temperature }: BlendState): number {
  const components = [
    { fraction: 1 - secondVolumeFraction, line: pair.first[bound] },
    { fraction: secondVolumeFraction, line: pair.second[bound] },
  ].flatMap(({ fraction, line }) => (line.kind === 'walther' ? [{ fraction, line }] : []));
  return waltherViscosity(wrightBlend(components), temperature);
}

/** Barry's relation is stated at 25 °C; the way from there to the temperature is the mean of the two oils. */
function molarMassEstimate(state: BlendState): number {
  const at25Celsius = componentsAt(state, secondMassFraction(state), referenceTemperature);
  return (molarMassBlend(at25Celsius) * byMass(arrheniusBlend)(state)) / arrheniusBlend(at25Celsius);
}
