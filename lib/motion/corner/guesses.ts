/**
 * An interval for what nobody measured, marked as a guess: no source but rough size. A page shows it as one.
 *
 * @public
 */
export interface Guess {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly basis: 'guess';
}

function guess(low: number, likely: number, high: number): Guess {
  return { low, likely, high, basis: 'guess' };
}

/**
 * Guesses for a corner of a car of scale 1:8 to 1:12, where the parts file has no value. SI units.
 *
 * @public
 */
export const cornerGuesses = {
  /** [N/m] */
  tyreStiffness: guess(1500, 4000, 10_000),
  /** [N·s/m] */
  tyreDamping: guess(0.5, 2, 6),
  /** Wheel, hub and half the arm [kg]. */
  wheelMass: guess(0.05, 0.09, 0.15),
  /** Stops of plastic and rubber [N/m], [N·s/m]. */
  stopStiffness: guess(20_000, 60_000, 200_000),
  stopDamping: guess(1, 5, 20),
  /** Free air in oil that was bled, at the pressure of the fill. */
  airFraction: guess(0, 0.002, 0.02),
  /** Pressure at which air comes out and a cavity opens [Pa]. */
  releasePressure: guess(0, 5000, 20_000),
} as const;
