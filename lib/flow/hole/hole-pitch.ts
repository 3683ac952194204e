import { refuse, requirePositive } from '../../base/checks.js';
import type { Piston } from '../geometry/piston.js';
import { mouthWidth } from './hole-shape.js';

/** Angle that one hole takes up on its pitch circle, seen from the centre [rad]; more than the circle where it cannot fit. */
function angleOnCircle(width: number, pitchDiameter: number): number {
  return width >= pitchDiameter ? 2 * Math.PI : 2 * Math.asin(width / pitchDiameter);
}

/** Throws where holes on one pitch circle overlap each other, or stand out over the rim. */
export function requireHolePitch(piston: Piston): void {
  const taken = new Map<number, number>();
  piston.holes.forEach((group, index) => {
    const { pitchDiameter, count, diameter } = group;
    if (pitchDiameter === undefined) return;
    const field = `piston.holes[${index}].pitchDiameter`;
    requirePositive(pitchDiameter, field, 'm');
    const largest = piston.diameter - diameter;
    if (pitchDiameter > largest) {
      refuse(pitchDiameter, field, 'm', `at most ${largest}, or the holes break through the rim,`);
    }
    const angle = (taken.get(pitchDiameter) ?? 0) + count * angleOnCircle(mouthWidth(group), pitchDiameter);
    taken.set(pitchDiameter, angle);
    if (angle > 2 * Math.PI) {
      const overlap = ((angle - 2 * Math.PI) * pitchDiameter) / 2;
      refuse(
        `holes that overlap by ${Number(overlap.toPrecision(3))} m in all`,
        `piston.holes[${index}]`,
        '',
        `few or small enough to lie side by side on the pitch circle of ${pitchDiameter} m`,
      );
    }
  });
}
