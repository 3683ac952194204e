import { bottleAt, type FillChoice, fillChoices } from '../day/fill-choice.js';
import type { Demand, ServingFill } from './order-coverage.js';
import type { OrderProblem } from './order-problem.js';

/** The demands of one temperature as plain numbers, which pass between threads much faster than their objects. */
export interface PackedDemands {
  /** How many fills serve each demand, build by build. */
  readonly counts: Int32Array;
  /** Of each fill its place among all choices, and the place of its thinner bottle. */
  readonly places: Int32Array;
  readonly thinner: Int32Array;
  /** Of each fill lowest viscosity, highest viscosity and distance. */
  readonly numbers: Float64Array;
}

/** Packs the demands of one temperature. */
export function packedDemands(demands: readonly Demand[]): PackedDemands {
  const fills = demands.flatMap((demand) => demand.fills);
  const numbers = new Float64Array(3 * fills.length);
  for (const [index, { low, high, distance }] of fills.entries())
    numbers.set([low, high, distance], 3 * index);
  return {
    counts: Int32Array.from(demands, (demand) => demand.fills.length),
    places: Int32Array.from(fills, ({ place }) => place),
    thinner: Int32Array.from(fills, ({ bottles: [thinner = -1] }) => thinner),
    numbers,
  };
}

function unpacked(
  { counts, places, thinner, numbers }: PackedDemands,
  choices: readonly FillChoice[],
): readonly (readonly ServingFill[])[] {
  let index = 0;
  const next = (): ServingFill => {
    const place = places[index] ?? 0;
    const choice = bottleAt(choices, place);
    const { first, second } = choice;
    const thin = thinner[index] ?? 0;
    const bottles = second === undefined ? [thin] : [thin, thin === second ? first : second];
    const at = 3 * index++;
    const [low, high, distance] = [numbers[at] ?? 0, numbers[at + 1] ?? 0, numbers[at + 2] ?? 0];
    return { choice, place, bottles, low, high, distance };
  };
  return Array.from(counts, (length) => Array.from({ length }, next));
}

/**
 * The demands of a problem.
 *
 * @param problem - the problem
 * @param packed - its demands at each temperature, from {@link packedDemands}
 */
export function unpackedDemands(problem: OrderProblem, packed: readonly PackedDemands[]): readonly Demand[] {
  const choices = fillChoices(problem.bottles, problem.parts);
  return packed.flatMap((piece, index) => {
    const fills = unpacked(piece, choices);
    const temperature = problem.temperatures[index] ?? Number.NaN;
    return problem.builds.map((build, place) => ({ build, temperature, fills: fills[place] ?? [] }));
  });
}
