import { standardGravity } from '../../base/constants.js';
import { InputError } from '../../base/input-error.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import { type Chambers, emptyPressures } from '../shock/chambers.js';
import type { MovingShock } from '../shock/moving-shock.js';
import { roomAtRest } from '../shock/rest-room.js';
import { pressureForce } from '../shock/shock-force.js';
import { cushionForce } from './contact.js';
import type { Corner } from './corner.js';

/** Force that pushes body and wheel apart at rest [N at the shock]: gas, spring and stops, no friction. */
function standingForce(shock: MovingShock, chambers: Chambers, corner: Corner, travel: number): number {
  const pressures = emptyPressures();
  chambers.evaluate(travel, roomAtRest(shock, chambers, travel), false, pressures);
  const bump = Math.max(0, cushionForce(corner.bumpStop, travel - corner.bumpStop.from, 0));
  const droop = Math.max(0, cushionForce(corner.droopStop, -travel, 0));
  const spring = corner.springRate * (travel + corner.springPreload);
  return pressureForce(shock, chambers.sense, pressures, 0) + spring + bump - droop;
}

/** Travel at which the corner stands still under a load at the shock [N]: 0 in free fall. */
export function travelAtLoad(shock: MovingShock, chambers: Chambers, corner: Corner, load: number): number {
  const excess = (travel: number) => standingForce(shock, chambers, corner, travel) - load;
  // So far out that neither chamber runs dry.
  const leaving = shock.layout === 'shaft-side' ? shock.oil.volume - shock.farVolume : shock.farVolume;
  const least = -Math.min((0.3 * leaving) / Math.abs(chambers.farArea), 0.2 * shock.stroke);
  if (excess(least) > 0 || excess(shock.stroke) < 0) {
    throw new InputError({
      field: 'springRate',
      value: corner.springRate,
      unit: 'N/m',
      accepted: `so that spring, gas and stops carry ${load} N within the travel of the shock, with its preload; it is`,
    });
  }
  // Shifted by a stroke: the search works to a part of its root, and in free fall a spring that just touches its seats has its root at 0.
  const { stroke } = shock;
  const shifted = (place: number) => excess(place - stroke);
  return bracketedRoot(shifted, stroke + least, 2 * stroke, 'travel of a corner at rest').root - stroke;
}

/** Travel of a corner that stands on its wheel [m]. */
export function staticTravel(shock: MovingShock, chambers: Chambers, corner: Corner): number {
  return travelAtLoad(shock, chambers, corner, (corner.sprungMass * standardGravity) / corner.motionRatio);
}
