import { InputError } from '../../base/input-error.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import { type Chambers, emptyPressures } from './chambers.js';
import type { MovingShock } from './moving-shock.js';

/**
 * Room of the far chamber less its oil [m³] where both chambers have one pressure, as after a rest at a place.
 *
 * @throws InputError where there is none: the oil locks before
 */
export function roomAtRest(shock: MovingShock, chambers: Chambers, travel: number): number {
  if (travel === 0) return 0;
  const pressures = emptyPressures();
  // The higher the room, the lower the far pressure and the higher the near one.
  const excess = (room: number): number => {
    chambers.evaluate(travel, room, false, pressures);
    return pressures.near - pressures.far;
  };
  const volume = shock.farVolume + chambers.farArea * travel;
  let reach = 1e-7 * volume;
  let low = 0;
  let high = 0;
  const sign = excess(0) < 0 ? 1 : -1;
  if (excess(0) === 0) return 0;
  for (let tries = 0; tries < 60 && low === high; tries++) {
    const end = sign * reach;
    if (Math.abs(end) > 0.999 * volume) break;
    if (excess(end) * sign >= 0) {
      low = Math.min(0, end);
      high = Math.max(0, end);
    }
    reach *= 2;
  }
  if (low === high) {
    throw new InputError({
      field: 'travel',
      value: travel,
      unit: 'm',
      accepted: 'less: the oil locks before both chambers come to one pressure there, in',
    });
  }
  return bracketedRoot(excess, low, high, 'pressure of both chambers at rest').root;
}
