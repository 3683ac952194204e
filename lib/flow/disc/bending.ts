import { gaussLegendre } from '../../numeric/gauss-legendre.js';
import { clampedPolynomial, type DeflectionModes, radialModes } from './deflection-modes.js';
import { type DiscShape, sectorAngle } from './disc-shape.js';

/** Curvatures of a shape without their circumferential factor: radial, circumferential, twist. */
type Curvatures = readonly [number, number, number];

function curvatures(radius: number, width: number, order: number, wave: number, x: number): Curvatures {
  const [value, slopeByX, bendByX] = clampedPolynomial(2, order, x);
  const slope = slopeByX / width;
  const perRadius = value / radius;
  return [
    bendByX / width ** 2,
    (slope - wave * wave * perRadius) / radius,
    (wave * (slope - perRadius)) / radius,
  ];
}

/**
 * Stiffness of a disc against bending in half a sector, over `D t²/a²`: the second derivative of Kirchhoff's energy
 * `½ ∫ κ_r² + κ_θ² + 2ν κ_r κ_θ + 2(1 − ν) κ_rθ²`.
 *
 * @see Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, sec. 75 (from memory)
 */
export function bendingStiffness(shape: DiscShape, modes: DeflectionModes): Float64Array {
  const { clampRadius, poissonRatio } = shape;
  const { count, waves } = modes;
  const width = 1 - clampRadius;
  const { places: points, weights } = gaussLegendre(radialModes + 4);
  const stiffness = new Float64Array(count * count);
  waves.forEach((wave, index) => {
    // The mean of cos² round the sector.
    const angle = sectorAngle(shape) * (wave === 0 ? 1 : 0.5);
    points.forEach((x, point) => {
      const radius = clampRadius + width * x;
      const weight = weights[point]! * width * radius * angle;
      const bent = Array.from({ length: radialModes }, (_, order) =>
        curvatures(radius, width, order, wave, x),
      );
      bent.forEach(([radial, round, twist], i) => {
        const at = (index * radialModes + i) * count + index * radialModes;
        bent.forEach(([otherRadial, otherRound, otherTwist], j) => {
          const energy =
            radial * otherRadial +
            round * otherRound +
            poissonRatio * (radial * otherRound + round * otherRadial) +
            2 * (1 - poissonRatio) * twist * otherTwist;
          stiffness[at + j] = stiffness[at + j]! + weight * energy;
        });
      });
    });
  });
  return stiffness;
}
