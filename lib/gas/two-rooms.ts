import { type RestingRoom, roomPressure } from './gas-room.js';

const mostSteps = 40;
/** Where a step is this part of both volumes, no digit of the pressure changes any more. */
const settled = 1e-16;

/**
 * Pressure of the oil beside two rooms of which one at least has no walls, as bubbles beside a bladder [Pa]: Newton steps on the volume that the other
 * gives up, since its pressure and then the volume of the bubbles need no search.
 *
 * @param rooms - as they rest
 * @param takenVolume - given up by both together [m³]
 * @param exponent - of the movement
 * @returns the pressure, or `undefined` where both have walls, a vented room is full, or the walls pull so hard that a space may stay empty
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
  const both = held.volume + free.volume;
  let release = (takenVolume * held.volume) / both;
  for (let step = 0; step < mostSteps; step++) {
    const pressure = roomPressure(held, release, exponent);
    if (!(pressure > 0 && release < held.volume)) return undefined;
    const left = free.volume * Math.exp(Math.log(free.gasPressure / pressure) / exponent);
    const slope = held.vented
      ? held.stiffness
      : held.stiffness +
        (exponent * (pressure - held.wallPressure - held.stiffness * release)) / (held.volume - release);
    const excess = release + (free.volume - left) - takenVolume;
    const change = excess / (1 + (left * slope) / (exponent * pressure));
    if (Math.abs(change) <= settled * both) return pressure;
    // Never past the end of the room; half way there instead.
    release = release - change < held.volume ? release - change : (release + held.volume) / 2;
  }
  return undefined;
}
