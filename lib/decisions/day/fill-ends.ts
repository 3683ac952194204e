import { keptResults } from '../../base/kept-results.js';
import { type BlendEnds, blendEnds } from '../../fluid/blend/blend-ends.js';
import {
  type Bottle,
  bottleAt,
  type FillChoice,
  fillChoices,
  fillDensity,
  stateOfFill,
} from './fill-choice.js';

/** All fills of a list at one temperature, place by place: viscosity by the lowest and the highest rule [m²/s], density [kg/m³]. */
export interface FillEnds {
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly density: Float64Array;
}

/** A day has some tens of temperatures, and is planned for several builds from the same bottles. */
const kept = keptResults<readonly Bottle[], FillEnds>(200);

/** All fills of {@link fillChoices} at a temperature [K], worked out once for a list of bottles. */
export function fillEnds(bottles: readonly Bottle[], parts: number, temperature: number): FillEnds {
  return kept(bottles, [parts, temperature], () => endsOf(bottles, fillChoices(bottles, parts), temperature));
}

function endsOf(bottles: readonly Bottle[], choices: readonly FillChoice[], temperature: number): FillEnds {
  const [low, high, density] = [0, 1, 2].map(() => new Float64Array(choices.length)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const blends = new Map<string, BlendEnds>();
  choices.forEach((choice, place) => {
    const { first, second, secondShare } = choice;
    if (second === undefined) {
      const state = stateOfFill(bottles, choice, temperature);
      low[place] = state.low;
      high[place] = state.high;
      density[place] = state.density;
      return;
    }
    const pair = `${first} ${second}`;
    const blend =
      blends.get(pair) ??
      blendEnds({ first: bottleAt(bottles, first).oil, second: bottleAt(bottles, second).oil }, temperature);
    blends.set(pair, blend);
    const ends = blend(secondShare);
    low[place] = ends.low;
    high[place] = ends.high;
    density[place] = fillDensity(bottles, choice, temperature);
  });
  return { low, high, density };
}
