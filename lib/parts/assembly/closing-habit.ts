import { standardAtmosphere, zeroCelsius } from '../../base/constants.js';
import type { CompensatorKind, ShockPart } from '../shock-part.js';
import { placeWords } from './words.js';

/**
 * Where the shaft was as the cap was closed.
 *
 * @public
 */
export interface ClosingHabit {
  /** How far it was pushed in [m]. */
  readonly position: number;
  /** Whether that is the habit of the kind, because nothing says where it was. */
  readonly assumed: boolean;
  /** `shaft fully out`, and why where it was assumed. */
  readonly words: string;
}

/** How each kind is usually closed: common practice, no source. */
const habits: Readonly<Record<CompensatorKind, { readonly in: 0 | 1; readonly why: string }>> = {
  'air-pocket': {
    in: 0,
    why: 'filled to a level with the shaft fully out, as a cap over an air pocket usually is',
  },
  bladder: { in: 0, why: 'closed with the shaft fully out, as a bladder cap often is' },
  'vented-bladder': { in: 0, why: 'closed with the shaft fully out, as a bladder cap often is' },
  foam: { in: 0, why: 'closed with the shaft fully out, as a cap over foam usually is' },
  emulsion: {
    in: 1,
    why: 'closed with the shaft pushed fully in while oil came out of the bleed, as a cap with a bleed screw usually is',
  },
  none: {
    in: 1,
    why: 'closed with the shaft pushed fully in while oil came out of the bleed, as a cap with a bleed screw usually is',
  },
};

/** Where a shock was closed: where the file says, or as its kind usually is. */
export function closingHabit(
  { stroke, closing }: Pick<ShockPart, 'stroke' | 'closing'>,
  kind: CompensatorKind,
  said: number | undefined,
): ClosingHabit {
  const position = said ?? closing?.position;
  if (position !== undefined)
    return { position, assumed: false, words: `closed with the shaft ${placeWords(position, stroke)}` };
  const habit = habits[kind];
  return { position: habit.in * stroke, assumed: true, words: `${habit.why} (common practice, no source)` };
}

/** Temperature at which a shock is taken to be closed where nothing says so [K]: a guess. */
export const guessedBenchTemperature = zeroCelsius + 20;

/** Pressure outside where nothing says so [Pa]. */
export const usualAmbientPressure = standardAtmosphere;

/** Air left as bubbles over the oil, for each number of bleeds from none: a guess, each bleed takes half. */
const airShares = [0.02, 0.01, 0.005, 0.0025] as const;

/** Air left as bubbles after some bleeds, as a part of the oil. */
export function bubbleShare(bleeds = 1): number {
  return airShares[Math.min(bleeds, airShares.length - 1)] ?? 0;
}
