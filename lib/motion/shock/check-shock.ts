import { requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import type { MovingShock } from './moving-shock.js';

function refuse(field: string, value: number, unit: string, accepted: string): never {
  throw new InputError({ field, value, unit, accepted });
}

/** Throws unless sizes, oil and gas can move together. */
export function requireMovingShock(shock: MovingShock): void {
  const { oil, gas, layout, pistonArea, shaftArea, stroke, farVolume, releasePressure } = shock;
  requirePositive(shaftArea, 'shaftArea', 'm²');
  requirePositive(stroke, 'stroke', 'm');
  if (!(pistonArea > shaftArea))
    refuse('pistonArea', pistonArea, 'm²', `above the shaft area of ${shaftArea}`);
  requirePositive(oil.volume, 'oil.volume', 'm³');
  requirePositive(oil.bulkModulus, 'oil.bulkModulus', 'Pa');
  requirePositive(oil.referencePressure, 'oil.referencePressure', 'Pa');
  requireWithin(oil.airFraction, 0, 0.999, 'oil.airFraction', '');
  requireWithin(oil.airExponent, 1, 1.4, 'oil.airExponent', '');
  requirePositive(shock.ambientPressure, 'ambientPressure', 'Pa');
  requirePositive(farVolume, 'farVolume', 'm³');
  if (!(releasePressure >= 0 && releasePressure < oil.referencePressure)) {
    const accepted = `0 or more and below the gas pressure of ${oil.referencePressure}`;
    refuse('releasePressure', releasePressure, 'Pa', accepted);
  }
  if (layout === 'mixed' && oil.airFraction === 0) {
    refuse('oil.airFraction', 0, '', 'above 0 where the gas is mixed into the oil');
  }
  if (layout !== 'mixed') {
    requirePositive(gas.capacity, 'gas.capacity', 'm³');
    const full = shaftArea * stroke;
    if (gas.capacity <= full) {
      refuse('gas.capacity', gas.capacity, 'm³', `above the room that the whole shaft takes, ${full}`);
    }
  }
  // The piston must find oil in front of it to the end of its travel.
  const leaving = layout === 'shaft-side' ? farVolume : oil.volume - farVolume;
  const swept = layout === 'shaft-side' ? pistonArea * stroke : (pistonArea - shaftArea) * stroke;
  if (leaving <= swept) {
    refuse(
      'oil.volume',
      oil.volume,
      'm³',
      `so much that ${swept} can leave the blind side; it holds ${leaving}`,
    );
  }
}

/** Absolute tolerance of the room [m³] that stands for a pressure [Pa]: the far chamber is stiff. */
export function roomTolerance({ farVolume, oil }: MovingShock, relative: number): number {
  return (farVolume / oil.bulkModulus) * pressurePerTolerance * relative;
}

/** Pressure error allowed per relative tolerance [Pa]: 3 Pa at a millionth. */
const pressurePerTolerance = 3e6;
