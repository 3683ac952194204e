import { type BlendEnds, blendEnds } from '../../fluid/blend/blend-ends.js';
import { bottleAt, type FillChoice, stateOfFill } from '../day/fill-choice.js';
import type { OrderProblem } from './order-problem.js';

/** A bottle by itself at one temperature. */
interface Alone {
  readonly logarithm: number;
  readonly cubeRoot: number;
  readonly density: number;
}

function aloneOf({ bottles }: OrderProblem, first: number, temperature: number): Alone {
  const { typical, density } = stateOfFill(bottles, { first, secondShare: 0 }, temperature);
  return { logarithm: Math.log(typical), cubeRoot: Math.cbrt(typical), density };
}

/** All fills at one temperature, each with what is known of its viscosity; of the blends only what a fill needs to be ruled out. */
export interface OrderScreen {
  /** Logarithm of the viscosity of each bottle. */
  readonly alone: Float64Array;
  /** Logarithm of the viscosity of each fill by additive logarithms, and by additive cube roots: in between are some of the other rules. */
  readonly byLogarithm: Float64Array;
  readonly byCubeRoot: Float64Array;
  /** Lowest and highest logarithm of the viscosity of a fill by every rule, worked out when first asked for. */
  readonly lowest: (place: number) => number;
  readonly highest: (place: number) => number;
}

/**
 * A first look at all fills at one temperature. Two of the rules, by mass, are worked out here in a few operations; where either leaves a
 * window the fill is out, and the other rules need no look.
 */
export function orderScreen(
  problem: OrderProblem,
  choices: readonly FillChoice[],
  temperature: number,
): OrderScreen {
  const bottles = problem.bottles.map((_, place) => aloneOf(problem, place, temperature));
  const byLogarithm = new Float64Array(choices.length);
  const byCubeRoot = new Float64Array(choices.length);
  for (const [place, { first: one, second: other, secondShare }] of choices.entries()) {
    const first = bottleAt(bottles, one);
    const second = bottleAt(bottles, other ?? one);
    const mass = secondShare * second.density;
    const part = mass / (mass + (1 - secondShare) * first.density);
    byLogarithm[place] = first.logarithm + part * (second.logarithm - first.logarithm);
    byCubeRoot[place] = 3 * Math.log(first.cubeRoot + part * (second.cubeRoot - first.cubeRoot));
  }
  return {
    alone: Float64Array.from(bottles, ({ logarithm }) => logarithm),
    byLogarithm,
    byCubeRoot,
    ...lazyEnds(problem, choices, temperature),
  };
}

function lazyEnds(
  { bottles }: OrderProblem,
  choices: readonly FillChoice[],
  temperature: number,
): Pick<OrderScreen, 'lowest' | 'highest'> {
  const lowest = new Float64Array(choices.length).fill(Number.NaN);
  const highest = new Float64Array(choices.length);
  const pairs = new Map<number, BlendEnds>();
  const blended = (one: number, other: number): BlendEnds => {
    const key = one * bottles.length + other;
    const before = pairs.get(key);
    if (before !== undefined) return before;
    const pair = { first: bottleAt(bottles, one).oil, second: bottleAt(bottles, other).oil };
    const ends = blendEnds(pair, temperature);
    pairs.set(key, ends);
    return ends;
  };
  const know = (place: number): void => {
    if (!Number.isNaN(lowest[place])) return;
    const choice = bottleAt(choices, place);
    const { low, high } =
      choice.second === undefined
        ? stateOfFill(bottles, choice, temperature)
        : blended(choice.first, choice.second)(choice.secondShare);
    lowest[place] = Math.log(low);
    highest[place] = Math.log(high);
  };
  const from = (ends: Float64Array) => (place: number) => {
    know(place);
    return ends[place] ?? Number.NaN;
  };
  return { lowest: from(lowest), highest: from(highest) };
}
