import { refuse, requireCount, requireWithin } from '../../base/checks.js';
import { listOf, madeWith, optional, requireShape, type Shape, someText } from '../../base/shape.js';
import { byEachRule } from '../../fluid/blend/blend-case.js';
import { oilDensity } from '../../fluid/oil/density.js';
import { fluidAt } from '../../fluid/oil/fluid-at.js';
import type { Oil } from '../../fluid/oil/oil.js';

/**
 * A bottle: an oil by name, as bought.
 *
 * @public
 */
export interface Bottle {
  readonly name: string;
  readonly oil: Oil;
  /** Oil in a full bottle [m³], above 0. */
  readonly volume: number;
  /** Price of a bottle, 0 or more, all in one currency. */
  readonly price?: number;
}

/** Form of {@link Bottle}. */
export const bottleShape: Shape = {
  name: someText,
  oil: madeWith('typical'),
  volume: 'm³',
  price: optional(''),
};

/**
 * What a shock may be filled with: one bottle, or two in a stated share.
 *
 * @public
 */
export interface FillChoice {
  /** Place of the bottle in the list. */
  readonly first: number;
  /** Place of the other bottle of a blend. */
  readonly second?: number;
  /** Part of the blend that is of the second bottle, by volume, 0 to 1; 0 for one bottle alone. */
  readonly secondShare: number;
}

/** Form of {@link FillChoice}. */
export const fillChoiceShape: Shape = { first: '', second: optional(''), secondShare: '' };

/**
 * A fill at one temperature, with the spread between the blending rules. An oil of which only the trade's weight is known is taken at the
 * middle of what its label leaves open, alone as in a blend: what bottles hold is a doubt of its own, and would else count for blends only.
 *
 * @public
 */
export interface FillState {
  /** Lowest kinematic viscosity by any rule [m²/s]. */
  readonly low: number;
  /** By the default rule [m²/s]. */
  readonly typical: number;
  /** Highest by any rule [m²/s]. */
  readonly high: number;
  /** [kg/m³] */
  readonly density: number;
}

/** Largest number of parts that a blend is measured out in. */
const mostParts = 20;

/**
 * All fills that a list of bottles allows: each alone, and each two of one family in whole parts (3 of one to 7 of the other).
 *
 * @param bottles - what is on the shelf or in the shop list
 * @param parts - in how many parts a blend is measured out, 1 (no blends) to 20
 * @throws InputError for a number of parts outside its range
 * @public
 */
export function fillChoices(bottles: readonly Bottle[], parts: number): readonly FillChoice[] {
  requireShape({ bottles }, { bottles: listOf(bottleShape) });
  requireCount(parts, 'parts');
  requireWithin(parts, 1, mostParts, 'parts', '');
  const alone = bottles.map((_, first): FillChoice => ({ first, secondShare: 0 }));
  const blends = bottles.flatMap(({ oil }, first) =>
    bottles.flatMap((other, second): FillChoice[] =>
      second <= first || oil.base !== other.oil.base
        ? []
        : Array.from({ length: parts - 1 }, (_, part) => ({
            first,
            second,
            secondShare: (part + 1) / parts,
          })),
    ),
  );
  return [...alone, ...blends];
}

/**
 * State of a fill at a temperature.
 *
 * @param bottles - the list that the choice was made from
 * @param choice - one of {@link fillChoices}
 * @param temperature - [K], 200 to 600
 * @throws InputError for a temperature outside its range
 * @public
 */
export function fillState(bottles: readonly Bottle[], choice: FillChoice, temperature: number): FillState {
  requireShape(
    { bottles, choice, temperature },
    { bottles: listOf(bottleShape), choice: fillChoiceShape, temperature: 'K' },
  );
  return stateOfFill(bottles, choice, temperature);
}

/** The same for a list that was checked before: a search asks for thousands of fills. */
export function stateOfFill(bottles: readonly Bottle[], choice: FillChoice, temperature: number): FillState {
  const first = bottleAt(bottles, choice.first).oil;
  if (choice.second === undefined) {
    const { kinematicViscosity, density } = fluidAt(first, temperature);
    return { low: kinematicViscosity, typical: kinematicViscosity, high: kinematicViscosity, density };
  }
  const second = bottleAt(bottles, choice.second).oil;
  const { secondShare } = choice;
  const { low, typical, high } = byEachRule({ pair: { first, second }, temperature }, (estimate) =>
    estimate(secondShare, 'typical'),
  );
  return { low, typical, high, density: fillDensity(bottles, choice, temperature) };
}

/** Density of a fill [kg/m³]: the mean by volume. */
export function fillDensity(
  bottles: readonly Bottle[],
  { first, second, secondShare }: FillChoice,
  temperature: number,
): number {
  const densityOf = (place: number): number => {
    const { base, densityAt15Celsius } = bottleAt(bottles, place).oil;
    return oilDensity(base, temperature, densityAt15Celsius);
  };
  const density = densityOf(first);
  return second === undefined ? density : (1 - secondShare) * density + secondShare * densityOf(second);
}

/** Bottle, or what belongs to it, at a place of the list. */
export function bottleAt<Any>(bottles: readonly Any[], place: number): Any {
  const bottle = bottles[place];
  if (bottle === undefined) refuse(place, 'place of a bottle', '', `a place in a list of ${bottles.length}`);
  return bottle;
}

/**
 * Name of a fill, `oil A` or `3 parts oil A + 7 parts oil B`.
 *
 * @param bottles - the list that the choice was made from
 * @param choice - one of {@link fillChoices}
 * @param parts - in how many parts blends are measured out
 * @public
 */
export function fillName(bottles: readonly Bottle[], choice: FillChoice, parts: number): string {
  requireShape(
    { bottles, choice, parts },
    { bottles: listOf(bottleShape), choice: fillChoiceShape, parts: '' },
  );
  const first = bottleAt(bottles, choice.first).name;
  if (choice.second === undefined) return first;
  const second = Math.round(choice.secondShare * parts);
  const divisor = greatestCommonDivisor(second, parts);
  const counted = (count: number, name: string): string =>
    `${count} ${count === 1 ? 'part' : 'parts'} ${name}`;
  return `${counted((parts - second) / divisor, first)} + ${counted(second / divisor, bottleAt(bottles, choice.second).name)}`;
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
