import { requireNotNegative, requirePositive } from '../../base/checks.js';
import { call, requireShape } from '../../base/shape.js';
import { bracketedRoot } from '../../numeric/root-finding.js';

/**
 * Speed of a bubble [m/s] as a function of its radius [m]; rises with the radius.
 *
 * @public
 */
export type RiseSpeed = (radius: number) => number;

/**
 * Time after which no bubble larger than a chosen one is left below the surface of oil at rest [s]: the time in which that one
 * rises all the way.
 *
 * @param radius - radius of the largest bubble that may stay [m], above 0
 * @param height - height of the oil [m], above 0
 * @param riseSpeed - speed [m/s] of a bubble of a radius [m]
 * @throws InputError for a value that is not above 0
 * @public
 */
export function waitingTime(radius: number, height: number, riseSpeed: RiseSpeed): number {
  requireShape({ riseSpeed }, { riseSpeed: call });
  requirePositive(radius, 'radius', 'm');
  requirePositive(height, 'height', 'm');
  const speed = riseAt(riseSpeed, radius);
  requirePositive(speed, `riseSpeed(${radius})`, 'm/s');
  return height / speed;
}

/** The speed at which a caller's function lets a bubble rise [m/s], checked like any input. */
export function riseAt(riseSpeed: RiseSpeed, radius: number): number {
  const speed = riseSpeed(radius);
  requireNotNegative(speed, `riseSpeed(${radius})`, 'm/s');
  return speed;
}

/** Smallest radius searched [m]: the wavelength of light, below which no bubble is seen. */
const smallestRadius = 5e-7;

/**
 * Radius of the largest bubble that can still be in the oil after a wait [m], the inverse of {@link waitingTime}.
 *
 * @param time - time waited [s], above 0
 * @param height - height of the oil [m], above 0
 * @param riseSpeed - speed [m/s] of a bubble of a radius [m], rising with it
 * @param largestRadius - largest bubble there can be [m]
 * @returns the radius; the largest one where even that needs longer, 0 where all that can be seen have left
 * @throws InputError for a value that is not above 0
 * @public
 */
export function largestBubbleLeft(
  time: number,
  height: number,
  riseSpeed: RiseSpeed,
  largestRadius: number,
): number {
  requireShape({ riseSpeed }, { riseSpeed: call });
  requirePositive(time, 'time', 's');
  requirePositive(height, 'height', 'm');
  requirePositive(largestRadius, 'largestRadius', 'm');
  const excess = (radius: number): number => riseAt(riseSpeed, radius) * time - height;
  if (excess(largestRadius) <= 0) return largestRadius;
  if (excess(smallestRadius) >= 0) return 0;
  return bracketedRoot(excess, smallestRadius, largestRadius, 'largest bubble left').root;
}
