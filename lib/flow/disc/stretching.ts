import { factorBand, solveLower } from '../../numeric/banded-cholesky.js';
import { gaussLegendre } from '../../numeric/gauss-legendre.js';
import { addScaled, dot } from '../../numeric/vectors.js';
import { clampedPolynomial, type DeflectionModes, radialModes } from './deflection-modes.js';
import { type DiscShape, sectorAngle } from './disc-shape.js';

/** Adds the resistance of a stretched disc to force and stiffness of its shapes. */
export type AddStretching = (deflection: Float64Array, force: Float64Array, stiffness?: Float64Array) => void;

const radialPoints = 6;

/** Membrane energy against bending energy at equal strain and curvature, `E t/(1 − ν²) / (D/t²)`. */
const membrane = 12;

/** Where strains are looked at, and the slopes of each shape there. */
interface StrainPoints {
  readonly count: number;
  readonly weights: Float64Array;
  /** Radial and circumferential slopes of the shapes, point by point. */
  readonly radial: Float64Array;
  readonly round: Float64Array;
  /** Radial, circumferential and shear strain of each in-plane shape: three rows a point. */
  readonly strains: Float64Array;
  readonly inPlane: number;
}

function strainPoints(shape: DiscShape, { count, waves }: DeflectionModes): StrainPoints {
  const { clampRadius, holes } = shape;
  const width = 1 - clampRadius;
  const { places: points, weights } = gaussLegendre(radialPoints);
  // Enough for the fourth powers of all waves.
  const roundPoints = Math.ceil(1.5 * waves.length) + 1;
  const pointCount = radialPoints * roundPoints;
  // Radial displacements `cos`, circumferential ones `sin`, one wave more than the deflection.
  const inPlaneWaves = waves.length + 1;
  const inPlane = (2 * inPlaneWaves - 1) * radialModes;
  const made = {
    count: pointCount,
    weights: new Float64Array(pointCount),
    radial: new Float64Array(pointCount * count),
    round: new Float64Array(pointCount * count),
    strains: new Float64Array(3 * pointCount * inPlane),
    inPlane,
  };
  const step = sectorAngle(shape) / roundPoints;
  for (let point = 0; point < pointCount; point++) {
    const x = points[Math.floor(point / roundPoints)]!;
    const radius = clampRadius + width * x;
    const angle = ((point % roundPoints) + 0.5) * step;
    made.weights[point] = weights[Math.floor(point / roundPoints)]! * width * radius * step;
    for (let order = 0; order < radialModes; order++) {
      const [value, slopeByX] = clampedPolynomial(2, order, x);
      waves.forEach((wave, index) => {
        const at = point * count + index * radialModes + order;
        made.radial[at] = (slopeByX / width) * Math.cos(wave * angle);
        made.round[at] = ((-wave * value) / radius) * Math.sin(wave * angle);
      });
      const [shift, shiftByX] = clampedPolynomial(1, order, x);
      const perRadius = shift / radius;
      const [radialRow, roundRow, shearRow] = [0, 1, 2].map((row) => (3 * point + row) * inPlane) as [
        number,
        number,
        number,
      ];
      for (let index = 0; index < inPlaneWaves; index++) {
        const wave = index * holes;
        const [cos, sin] = [Math.cos(wave * angle), Math.sin(wave * angle)];
        const outwards = index * radialModes + order;
        made.strains[radialRow + outwards] = (shiftByX / width) * cos;
        made.strains[roundRow + outwards] = perRadius * cos;
        made.strains[shearRow + outwards] = -wave * perRadius * sin;
        if (index === 0) continue;
        const sideways = (inPlaneWaves + index - 1) * radialModes + order;
        made.strains[roundRow + sideways] = wave * perRadius * cos;
        made.strains[shearRow + sideways] = (shiftByX / width - perRadius) * sin;
      }
    }
  }
  return made;
}

/** Stresses of strains, plane stress, weighted: three rows a point, `columns` to each. */
function stresses(points: StrainPoints, poissonRatio: number, strains: Float64Array, columns: number) {
  const out = new Float64Array(strains.length);
  for (let point = 0; point < points.count; point++) {
    const weight = points.weights[point]!;
    const [radial, round, shear] = [3 * point, 3 * point + 1, 3 * point + 2].map((row) => row * columns) as [
      number,
      number,
      number,
    ];
    addScaled(out, radial, strains, radial, columns, weight);
    addScaled(out, radial, strains, round, columns, weight * poissonRatio);
    addScaled(out, round, strains, round, columns, weight);
    addScaled(out, round, strains, radial, columns, weight * poissonRatio);
    addScaled(out, shear, strains, shear, columns, (weight * (1 - poissonRatio)) / 2);
  }
  return out;
}

/**
 * In-plane shapes made orthonormal in energy, as weighted stresses: `Z = R⁻¹ Bᵀ D` with `R Rᵀ = Bᵀ D B`. The oil does not push in the plane, so
 * the in-plane displacement always takes out of the stresses what these can.
 */
function relief(points: StrainPoints, poissonRatio: number): Float64Array {
  const { inPlane, strains, count } = points;
  const rows = 3 * count;
  const stressed = stresses(points, poissonRatio, strains, inPlane);
  const band = new Float64Array(inPlane * inPlane);
  for (let row = 0; row < rows; row++) {
    for (let i = 0; i < inPlane; i++) {
      const factor = stressed[row * inPlane + i]!;
      // Row `i` of the band ends with the diagonal.
      if (factor !== 0) addScaled(band, i * inPlane + inPlane - 1 - i, strains, row * inPlane, i + 1, factor);
    }
  }
  factorBand(band, inPlane, inPlane);
  for (let row = 0; row < rows; row++) solveLower(band, inPlane, inPlane, stressed, row * inPlane);
  return stressed;
}

/**
 * Stretching of a disc whose clamp holds it in its plane too: strains `u' + ½ w'²` and alike, von Kármán. Forces over `D t/a³`, in half a
 * sector.
 *
 * @see Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, sec. 101 (from memory)
 */
export function stretching(shape: DiscShape, modes: DeflectionModes): AddStretching {
  const { poissonRatio } = shape;
  const { count } = modes;
  const points = strainPoints(shape, modes);
  const { radial, round, inPlane } = points;
  const rows = 3 * points.count;
  const free = relief(points, poissonRatio);
  const strain = new Float64Array(rows);
  const linear = new Float64Array(rows * count);
  return (deflection, force, stiffness) => {
    for (let point = 0; point < points.count; point++) {
      const at = point * count;
      const outwards = dot(radial, at, deflection, 0, count);
      const sideways = dot(round, at, deflection, 0, count);
      strain[3 * point] = outwards ** 2 / 2;
      strain[3 * point + 1] = sideways ** 2 / 2;
      strain[3 * point + 2] = outwards * sideways;
      for (let i = 0; i < count; i++) {
        const [byRadius, byAngle] = [radial[at + i]!, round[at + i]!];
        linear[3 * at + i] = outwards * byRadius;
        linear[3 * at + count + i] = sideways * byAngle;
        linear[3 * at + 2 * count + i] = outwards * byAngle + sideways * byRadius;
      }
    }
    const stress = stresses(points, poissonRatio, strain, 1);
    const relieved = new Float64Array(inPlane);
    for (let row = 0; row < rows; row++) addScaled(relieved, 0, free, row * inPlane, inPlane, strain[row]!);
    for (let row = 0; row < rows; row++) {
      stress[row] = stress[row]! - dot(free, row * inPlane, relieved, 0, inPlane);
      addScaled(force, 0, linear, row * count, count, membrane * stress[row]!);
    }
    if (stiffness === undefined) return;
    addMaterialStiffness(stresses(points, poissonRatio, linear, count), linear, rows, count, stiffness);
    addRelief(free, linear, rows, count, inPlane, stiffness);
    for (let point = 0; point < points.count; point++) {
      const at = point * count;
      const [s, t, shear] = [stress[3 * point]!, stress[3 * point + 1]!, stress[3 * point + 2]!];
      for (let i = 0; i < count; i++) {
        const [byRadius, byAngle] = [radial[at + i]!, round[at + i]!];
        addScaled(stiffness, i * count, radial, at, count, membrane * (s * byRadius + shear * byAngle));
        addScaled(stiffness, i * count, round, at, count, membrane * (t * byAngle + shear * byRadius));
      }
    }
  };
}

function addMaterialStiffness(
  stressed: Float64Array,
  linear: Float64Array,
  rows: number,
  count: number,
  stiffness: Float64Array,
): void {
  for (let row = 0; row < rows; row++) {
    for (let i = 0; i < count; i++) {
      const factor = membrane * stressed[row * count + i]!;
      if (factor !== 0) addScaled(stiffness, i * count, linear, row * count, count, factor);
    }
  }
}

function addRelief(
  free: Float64Array,
  linear: Float64Array,
  rows: number,
  count: number,
  inPlane: number,
  stiffness: Float64Array,
): void {
  const relieved = new Float64Array(inPlane * count);
  for (let row = 0; row < rows; row++) {
    for (let k = 0; k < inPlane; k++) {
      const factor = free[row * inPlane + k]!;
      if (factor !== 0) addScaled(relieved, k * count, linear, row * count, count, factor);
    }
  }
  for (let k = 0; k < inPlane; k++) {
    for (let i = 0; i < count; i++) {
      addScaled(stiffness, i * count, relieved, k * count, count, -membrane * relieved[k * count + i]!);
    }
  }
}
