import { InputError } from '../../lib/base/input-error.js';
import { keptResults } from '../../lib/base/kept-results.js';
import type { Damper } from '../../lib/damper/damper.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import type { Bottle } from '../../lib/decisions/day/fill-choice.js';
import {
  type DampingMismatch,
  dampingOf,
  type WantedDamping,
} from '../../lib/decisions/match/damping-mismatch.js';
import type { SpeedWeights } from '../../lib/decisions/match/speed-weights.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { damperForAnyOil } from '../../lib/parts/assembly/damper-for-any-oil.js';
import type { Build, OilPart, Parts, ShopOil } from '../../lib/parts/parts.js';
import { roundedText } from '../../lib/units/index.js';
import { knownOil } from './known.js';
import { listed, percent } from './wording.js';

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

/** Wanted damping of a build over weighted speeds. */
export function wantedOf(build: Build, weights: SpeedWeights, otherwise: number): WantedDamping {
  const { oil, temperature } = feelsRight(build, otherwise);
  return dampingOf(
    damperModel(damperOfBuild(build), fluidAt(knownOil(oil.definition), temperature)),
    weights,
  );
}

/** Bottles that a plan may use. */
export interface Shelf {
  readonly bottles: readonly Bottle[];
  /** Places of those at hand: oils of the file that have a bottle, where a shop list says what else could be bought. */
  readonly owned: readonly number[];
  /** Where all prices share one. */
  readonly currency?: string;
}

const shelves = keptResults<readonly OilPart[], Shelf>(1);

/**
 * What can be bought and what is at hand; without a shop list the oils of the file are what can be bought. The same shelf as long as the file is the same,
 * so that what was worked out for its bottles is found again.
 */
export function shelfOf(parts: Parts): Shelf {
  return shelves(parts.oils, parts.shop ?? null, () => filledShelf(parts));
}

function filledShelf({ oils, shop }: Parts): Shelf {
  const withBottle = oils.filter(hasBottle);
  const bought = shop ?? withBottle;
  const atHand =
    shop === undefined ? [] : withBottle.filter(({ name }) => !shop.some((one) => one.name === name));
  if (bought.length + atHand.length === 0)
    throw new InputError({
      field: 'shop',
      value: 'no bottle',
      accepted: 'a list of bottles in the parts file, or oils with a bottle',
    });
  const currencies = new Set(bought.map(({ bottle }) => bottle.price?.currency));
  const [currency] = currencies;
  const shared = currencies.size === 1 ? currency : undefined;
  const bottles = [...bought, ...atHand].map(
    ({ name, definition, bottle }): Bottle => ({
      name,
      oil: knownOil(definition),
      volume: bottle.volume,
      ...(shared === undefined || bottle.price === undefined ? {} : { price: bottle.price.amount }),
    }),
  );
  const owned = atHand.map((_, place) => bought.length + place);
  return { bottles, owned, ...(shared === undefined ? {} : { currency: shared }) };
}

function hasBottle(oil: OilPart): oil is ShopOil {
  return oil.bottle !== undefined;
}

/** The builds that are wanted and were not chosen, by name. */
export function leftOut(parts: Parts, chosen: readonly Build[]): readonly string[] {
  return wantedBuilds(parts.builds)
    .filter(({ name }) => !chosen.some((one) => one.name === name))
    .map(({ name }) => name);
}

/** How bottles are taken that are sold by a label and no number, and how far that may be off; nothing where the shelf has none. */
export function labelsTaken({ bottles }: Pick<Shelf, 'bottles'>): readonly string[] {
  const named = bottles.flatMap(({ name, oil }) => {
    if (!oil.isInterval) return [];
    const [low, typical, high] = (['low', 'typical', 'high'] as const).map(
      (bound) => fluidAt(oil, labelTemperature, bound).kinematicViscosity,
    ) as [number, number, number];
    return [`${name} (up to ${percent(Math.max(high / typical, typical / low) - 1)} off)`];
  });
  if (named.length === 0) return [];
  return [
    `Taken at the middle of what a label leaves open, alone and in blends: ${listed(named)}. Measure such an oil before you trust a plan with it.`,
  ];
}

/** That plans know no thinning, of the bottles that thin; nothing where none does. */
export function thinningLeftOut({ bottles }: Pick<Shelf, 'bottles'>): readonly string[] {
  const names = bottles.filter(({ oil }) => oil.shearThinning !== undefined).map(({ name }) => name);
  if (names.length === 0) return [];
  return [
    `Taken as at rest, without the thinning that the parts file measures: ${listed(names)}. The faster the shaft, the softer a fill of it than the plan says.`,
  ];
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

/** The typical deviation, counted on the side of its mean as {@link softOrHard} counts it: all of it a sixth softer is 17 %, not the 20 % of the ratio the other way. */
export function offBy({ typical, meanRatio }: Pick<DampingMismatch, 'typical' | 'meanRatio'>): string {
  return percent(meanRatio < 1 ? typical / (1 + typical) : typical);
}

/** What the decisions rest on beside the forces. */
export const decisionSources: readonly string[] = [
  'Arrhenius, Z. Phys. Chem. 1 (1887) 285; ASTM D7152; Kendall & Monroe, J. Am. Chem. Soc. 39 (1917) 1787; Berry & Fox, Adv. Polym. Sci. 5 (1968) 261: rules for the viscosity of a blend.',
];

/** Cautions of mixing oils. */
export const blendCautions: readonly string[] = [
  'Mix only oils of one kind: silicone and petroleum oil do not stay mixed. Measure with a syringe kept for the purpose, stir slowly, and let the bubbles rise before you fill. Label the blend.',
];
