import { InputError } from '../../lib/base/input-error.js';
import type { Damper } from '../../lib/damper/damper.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import type { Bottle } from '../../lib/decisions/day/fill-choice.js';
import { dampingOf, type WantedDamping } from '../../lib/decisions/match/damping-mismatch.js';
import type { SpeedWeights } from '../../lib/decisions/match/speed-weights.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { assembleShock } from '../../lib/parts/assembly/assembled-shock.js';
import { damperForAnyOil } from '../../lib/parts/assembly/damper-for-any-oil.js';
import type { Build, Parts } from '../../lib/parts/parts.js';
import { roundedText } from '../../lib/units/index.js';

/** Temperature to which the number on a bottle of silicone oil belongs [K]. */
export const labelTemperature = 298.15;

/** The oil and the temperature on which a build feels right, or its own oil at a temperature where the file does not say. */
export function feelsRight(build: Build, otherwise: number) {
  return build.wanted ?? { oil: build.oil, temperature: otherwise };
}

/** The builds whose damping the file calls wanted; all of them where it does so of none. */
export function wantedBuilds(builds: readonly Build[]): readonly Build[] {
  const said = builds.filter(({ wanted }) => wanted !== undefined);
  return said.length === 0 ? builds : said;
}

/** The damper of a build, whatever oil is put in. */
export function damperOfBuild(build: Build): Damper {
  return damperForAnyOil(build);
}

/** Oil that stays in one shock of a build [m³]. */
export function oilInside(build: Pick<Build, 'shock' | 'piston' | 'oil' | 'closeAt'>): number {
  return assembleShock(build).closed.oilVolume;
}

/** Wanted damping of a build over weighted speeds. */
export function wantedOf(build: Build, weights: SpeedWeights, otherwise: number): WantedDamping {
  const { oil, temperature } = feelsRight(build, otherwise);
  return dampingOf(
    damperModel(damperOfBuild(build), fluidAt(createOil(oil.definition), temperature)),
    weights,
  );
}

/** The shop list, or the oils of the file that have a bottle, with the currency where they share one. */
export function shopOf(parts: Parts): { readonly bottles: readonly Bottle[]; readonly currency?: string } {
  const sold = (parts.shop ?? parts.oils).flatMap(({ name, definition, bottle }) =>
    bottle === undefined ? [] : [{ name, definition, bottle }],
  );
  if (sold.length === 0)
    throw new InputError({
      field: 'shop',
      value: 'no bottle',
      accepted: 'a list of bottles in the parts file, or oils with a bottle',
    });
  const currencies = new Set(sold.map(({ bottle }) => bottle.price?.currency));
  const [currency] = currencies;
  const shared = currencies.size === 1 ? currency : undefined;
  const bottles = sold.map(
    ({ name, definition, bottle }): Bottle => ({
      name,
      oil: createOil(definition),
      volume: bottle.volume,
      ...(shared === undefined || bottle.price === undefined ? {} : { price: bottle.price.amount }),
    }),
  );
  return { bottles, ...(shared === undefined ? {} : { currency: shared }) };
}

/** The number that a bottle of plain silicone oil would carry: viscosity at 25 °C of one that has a viscosity at a temperature. */
export function labelOf(kinematicViscosity: number, temperature: number): number {
  const point = { temperature, kinematicViscosity };
  const oil = createOil({ base: 'silicone', viscosity: { kind: 'silicone', point } });
  return fluidAt(oil, labelTemperature).kinematicViscosity;
}

/** `287 cSt`, as a bottle has it. */
export const cSt = (kinematicViscosity: number): string =>
  `${roundedText(Number((1e6 * kinematicViscosity).toPrecision(3)), 3)} cSt`;

/** `7 % too soft`, `right` within half a percent. */
export function softOrHard(ratio: number): string {
  const points = Math.round(100 * (ratio - 1));
  if (points === 0) return 'right';
  return points < 0 ? `${-points} % too soft` : `${points} % too hard`;
}

/** What the decisions rest on beside the forces. */
export const decisionSources: readonly string[] = [
  'Arrhenius, Z. Phys. Chem. 1 (1887) 285; ASTM D7152; Kendall & Monroe, J. Am. Chem. Soc. 39 (1917) 1787; Berry & Fox, Adv. Polym. Sci. 5 (1968) 261: rules for the viscosity of a blend.',
];

/** Cautions of mixing oils. */
export const blendCautions: readonly string[] = [
  'Mix only oils of one kind: silicone and petroleum oil do not stay mixed. Measure with a syringe kept for the purpose, stir slowly, and let the bubbles rise before you fill. Label the blend.',
];
