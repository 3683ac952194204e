import type { CooledBody } from '../../lib/motion/heat/cylinder-cooling.js';
import type { AssembledShock } from '../../lib/parts/assembly/assembled-shock.js';
import type { Build } from '../../lib/parts/parts.js';
import { millimetres } from '../base/bench-wording.js';

/** Whether nobody's guess is taken, or the one that leaves the oil cooler or warmer. */
export type Guessed = 'likely' | 'cool' | 'warm';

/** Wall of the body [m], its surface, and what of the wind is left: guesses, no source. */
const guesses = {
  likely: { wall: 1.5e-3, emissivity: 0.5, windShare: 1 },
  cool: { wall: 2.5e-3, emissivity: 0.9, windShare: 1.7 },
  warm: { wall: 0.8e-3, emissivity: 0.1, windShare: 0.4 },
} as const;

/** What caps and eyelets add to the inside of the body [m]: a guess. */
const ends = 10e-3;

/** Heat capacities per volume of aluminium and steel, and per mass of silicone oil (from memory). */
const aluminium = 2.43e6;
const steel = 3.7e6;
const oilPerMass = 1500;

/** What of a shock holds heat and how the air sees it. */
export interface WarmBody {
  readonly body: CooledBody;
  /** [J/K] */
  readonly heatCapacity: number;
  readonly windShare: number;
}

/** Body and heat capacity of a build, with guesses for what no file says. */
export function bodyGuess({ closed, damper }: AssembledShock, density: number, guessed: Guessed): WarmBody {
  const { wall, emissivity, windShare } = guesses[guessed];
  const { bore, shaftDiameter, stroke } = damper;
  const diameter = bore + 2 * wall;
  const length = closed.chamber.length + ends;
  const metal = (Math.PI / 4) * ((diameter ** 2 - bore ** 2) * length + bore ** 2 * ends);
  const shaft = (Math.PI / 4) * shaftDiameter ** 2 * (stroke + ends);
  return {
    body: { diameter, length, emissivity },
    heatCapacity: oilPerMass * density * closed.oilVolume + aluminium * metal + steel * shaft,
    windShare,
  };
}

/** The guesses in words. */
export function bodySentence({ shock }: Build): readonly string[] {
  const { likely, cool, warm } = guesses;
  return [
    `The body is a cylinder of aluminium with a bore of ${millimetres(shock.bore)}: a wall of ${millimetres(likely.wall)} (${millimetres(warm.wall)} to ${millimetres(cool.wall)}), a surface that radiates ${likely.emissivity} (${warm.emissivity} to ${cool.emissivity}) of a black one, and ${warm.windShare} to ${cool.windShare} times the wind of the setting are guesses; the band shows what they leave open.`,
  ];
}
