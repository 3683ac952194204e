/** Land that a drill needs between two holes, and between a hole and rim or shaft [m]: with less the wall breaks out (common practice, no source). */
const land = 0.3e-3;

/**
 * Diameter of the smallest piston that takes holes on one circle around its shaft [m], with land on all sides.
 *
 * @param count - holes, 1 or more
 * @param diameter - of each hole [m], above 0
 * @param shaftDiameter - of the shaft that goes through the middle [m], above 0
 */
export function smallestPiston(count: number, diameter: number, shaftDiameter: number): number {
  const besideShaft = (shaftDiameter + diameter) / 2 + land;
  const besideEachOther = count < 2 ? 0 : (diameter + land) / (2 * Math.sin(Math.PI / count));
  return 2 * Math.max(besideShaft, besideEachOther) + diameter + 2 * land;
}
