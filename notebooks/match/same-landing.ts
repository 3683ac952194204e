import type { OilPart } from '../../lib/parts/parts.js';
import type { Landed } from '../base/landed.js';
import { type Landings, type Outcome, travelOf } from './landings.js';

/** Thinnest and thickest oil looked at [m²/s]: thinner than water, thicker than any damper oil. */
const thinnest = 0.5e-6;
const thickest = 0.05;

/** Steps towards either end until the landing is on the other side, as a factor of the viscosity. */
const stride = 1.6;

/** Travel is the same to this part of itself, which is far less than a ruler shows. */
const sameTo = 3e-4;
const mostTries = 20;

/** Plain silicone with a viscosity at a temperature. */
export function siliconeOf(kinematicViscosity: number, temperature: number): OilPart {
  const point = { temperature, kinematicViscosity };
  return { name: 'exact oil', definition: { base: 'silicone', viscosity: { kind: 'silicone', point } } };
}

/** The oil on which the new shock lands as the old one, or why there is none. */
export type SameLanding =
  | { readonly found: true; readonly kinematicViscosity: number; readonly landed: Landed }
  /** Even the thinnest oil lets it in less, or even the thickest on which it lands lets it further in; that landing is the nearest. */
  | {
      readonly found: false;
      readonly why: 'goes in less' | 'goes in further' | 'locks' | 'goes through';
      readonly kinematicViscosity: number;
      readonly landed?: Landed;
    };

/** The viscosity with which a landing goes as far in as the liked one, from a first guess; thicker oil goes in less. */
export function sameLanding({ liked, on }: Landings, temperature: number, guess: number): SameLanding {
  const wanted = travelOf(liked);
  const at = (viscosity: number) => {
    const outcome = on(siliconeOf(viscosity, temperature));
    const log = Math.log(viscosity);
    if (typeof outcome !== 'string')
      return { log, outcome, goesFurther: travelOf(outcome) > wanted, over: travelOf(outcome) / wanted - 1 };
    // Oil too thick for the gas locks the shaft, oil too thin lets it through: as less and further in as any.
    return { log, outcome, goesFurther: outcome === 'goes through', over: undefined };
  };
  const settled = ({ over }: Tried) => over !== undefined && Math.abs(over) <= sameTo;
  let here = at(Math.min(Math.max(guess, thinnest), thickest));
  const thicker = here.goesFurther;
  let next = here;
  while (!settled(next) && next.goesFurther === thicker) {
    const viscosity = Math.exp(next.log) * (thicker ? stride : 1 / stride);
    if (viscosity > thickest || viscosity < thinnest) return ended(next);
    here = next;
    next = at(viscosity);
  }
  if (settled(next)) return ended(next, true);
  let [thin, thick] = thicker ? [here, next] : [next, here];
  for (let tries = 0; tries < mostTries; tries++) {
    const middle = at(Math.exp(between(thin, thick, tries)));
    if (settled(middle)) return ended(middle, true);
    if (middle.goesFurther) thin = middle;
    else thick = middle;
  }
  return ended(typeof thin.outcome === 'string' ? thick : thin);
}

interface Tried {
  readonly log: number;
  readonly outcome: Outcome;
  readonly goesFurther: boolean;
  /** By how much it goes further, as a part; not given where it does not land. */
  readonly over: number | undefined;
}

function ended({ log, outcome, goesFurther }: Tried, found = false): SameLanding {
  const kinematicViscosity = Math.exp(log);
  if (typeof outcome === 'string') return { found: false, why: outcome, kinematicViscosity };
  if (found) return { found: true, kinematicViscosity, landed: outcome };
  return {
    found: false,
    why: goesFurther ? 'goes in further' : 'goes in less',
    kinematicViscosity,
    landed: outcome,
  };
}

/** Where a straight line between two landings is as wanted; every third time, and where one locks, the middle. */
function between(thin: Tried, thick: Tried, tries: number): number {
  if (thin.over === undefined || thick.over === undefined || tries % 3 === 2)
    return (thin.log + thick.log) / 2;
  return thin.log + ((thick.log - thin.log) * thin.over) / (thin.over - thick.over);
}
