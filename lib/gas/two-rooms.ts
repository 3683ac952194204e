import { type RestingRoom, roomPressure } from './gas-room.js';

const mostSteps = 60;
/** Where a step changes the pressure by no more than this part of it, one more, converging quadratically, would change nothing in double precision. */
const settled = 1e-8;

/**
 * Pressure of the oil beside two rooms of which one at least has no walls, as bubbles beside a bladder [Pa]: Newton steps on the volume that the other
 * gives up, since its pressure and then the volume of the bubbles need no search. A step that leaves the bracket of the root halves it instead.
 *
 * @param rooms - as they rest
 * @param takenVolume - given up by both together [m³]
 * @param exponent - of the movement
 * @returns the pressure, or `undefined` where both have walls or the steps do not settle
 */
export function pressureOfTwo(
  rooms: readonly [RestingRoom, RestingRoom],
  takenVolume: number,
  exponent: number,
): number | undefined {
  const [one, other] = rooms;
  const free = other.stiffness === 0 && !other.vented ? other : one;
  const held = free === other ? one : other;
  if (free.stiffness !== 0 || free.vented || free.wallPressure !== 0) return undefined;
  // A vented room that is full gives up no more, and the bubbles are squeezed alone.
  if (held.vented) {
    const alone = roomPressure(free, takenVolume - held.volume, exponent);
    if (alone >= roomPressure(held, held.volume, exponent)) return alone;
  }
  let low = takenVolume - free.volume;
  let high = held.volume;
  // The first step finds the share of each by how softly it gives way at rest.
  let release = 0;
  for (let step = 0; step < mostSteps; step++) {
    if (!(release > low && release < high)) release = (low + high) / 2;
    const pressure = roomPressure(held, release, exponent);
    const left = free.volume * Math.exp(Math.log(free.gasPressure / pressure) / exponent);
    const slope =
      held.stiffness +
      (held.vented
        ? 0
        : (exponent * (pressure - held.wallPressure - held.stiffness * release)) / (held.volume - release));
    const excess = release + free.volume - left - takenVolume;
    const change = excess / (1 + (left * slope) / (exponent * pressure));
    if (Math.abs(slope * change) <= settled * pressure) return pressure - slope * change;
    // Where walls pull harder than the gas pushes there is no pressure, and the room has grown too far.
    if (excess > 0) high = release;
    else low = release;
    release -= change;
  }
  return undefined;
}
