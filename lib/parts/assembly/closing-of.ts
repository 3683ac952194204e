import { optional, type Shape } from '../../base/shape.js';
import { typicalSiliconeAirSolubility } from '../../fill/air/typical-oil.js';
import type { Closing } from '../../fill/chamber/closed-shock.js';
import { petroleumAirSolubility } from '../../fluid/air/air-solubility.js';
import { oilDensity } from '../../fluid/oil/density.js';
import type { Oil } from '../../fluid/oil/oil.js';
import { formatQuantity } from '../../units/index.js';
import type { CompensatorKind, ShockPart } from '../shock-part.js';
import { bubbleShare, guessedBenchTemperature, usualAmbientPressure } from './closing-habit.js';
import { millilitres } from './words.js';

/**
 * What a page may say of a fill instead of the parts file.
 *
 * @public
 */
export interface FillChoices {
  /** Temperature of oil and gas as it is closed [K]. */
  readonly temperature?: number;
  /** How far the shaft is pushed in as it is closed [m]. */
  readonly closeAt?: number;
  /** Air left in the oil as bubbles [m³]. */
  readonly freeAir?: number;
}

/** Form of {@link FillChoices}. */
export const fillChoicesShape: Shape = {
  temperature: optional('K'),
  closeAt: optional('m'),
  freeAir: optional('m³'),
};

/** Air left in the oil as bubbles: said, or a guess. */
export function bubblesIn(
  { closing }: ShockPart,
  kind: CompensatorKind,
  choices: FillChoices,
  oil: number,
): { readonly volume: number; readonly assumptions: readonly string[] } {
  const said = choices.freeAir ?? closing?.freeAir;
  if (said !== undefined) return { volume: said, assumptions: [] };
  // Its air is what makes room.
  if (kind === 'emulsion') return { volume: 0, assumptions: [] };
  const share = bubbleShare(closing?.bleeds);
  const volume = share * Math.max(oil, 0);
  const sentence = `Air left in the oil as bubbles is not given: ${millilitres(volume)}, ${Number((100 * share).toPrecision(2))} % of the oil, is a guess.`;
  return { volume, assumptions: [sentence] };
}

/** How the shock was closed, from the choices, the file, and what stands in for both. */
export function closingOf(
  { closing, compensator }: ShockPart,
  choices: FillChoices,
  now: Pick<Closing, 'position' | 'freeAir'>,
  oil: Oil,
  oilVolume: number,
): Closing {
  const temperature = choices.temperature ?? closing?.temperature ?? guessedBenchTemperature;
  const { exponent, airReleasePressure } = compensator ?? {};
  return {
    ...now,
    temperature,
    ambientPressure: closing?.ambientPressure ?? usualAmbientPressure,
    dissolvedAir: airSolubility(oil, temperature) * oilVolume,
    oilDensity: oilDensity(oil.base, temperature, oil.densityAt15Celsius),
    ...(exponent === undefined ? {} : { polytropicExponent: exponent }),
    ...(airReleasePressure === undefined ? {} : { airReleasePressure }),
  };
}

/** Volume of air that a volume of oil dissolves; the law for petroleum is asked at the ends of its range beyond them. */
function airSolubility({ base, densityAt15Celsius }: Oil, temperature: number): number {
  if (base === 'silicone') return typicalSiliconeAirSolubility;
  const warm = Math.min(Math.max(temperature, 233.15), 473.15);
  return petroleumAirSolubility(warm, Math.min(Math.max(densityAt15Celsius, 800), 950));
}

/** Says that the temperature of closing is a guess, where it is. */
export function warmthAssumed({ closing }: ShockPart, choices: FillChoices): readonly string[] {
  if ((choices.temperature ?? closing?.temperature) !== undefined) return [];
  const warm = formatQuantity(guessedBenchTemperature, 'temperature', '°C', 3);
  return [`The temperature at which it was closed is not given: ${warm} is a guess.`];
}
