import { requirePositive, requireRecord, requireWithin } from '../../base/checks.js';

/**
 * A ring clamped at its hole and free at its rim.
 *
 * @public
 */
export interface RingPlate {
  /** Radius of the clamped inner edge [m], above 0. */
  readonly innerRadius: number;
  /** Radius of the free rim [m], above the inner radius. */
  readonly outerRadius: number;
  /** Thickness [m], above 0, thin against the radii. */
  readonly thickness: number;
  /** Young's modulus [Pa], above 0. */
  readonly elasticModulus: number;
  /** Poisson's ratio, 0 to below 0.5. */
  readonly poissonRatio: number;
}

/** Bending stiffness of a plate [N·m], `E t³ / (12 (1 − ν²))`. */
function flexuralRigidity({ elasticModulus, thickness, poissonRatio }: RingPlate): number {
  return (elasticModulus * thickness ** 3) / (12 * (1 - poissonRatio ** 2));
}

/**
 * Deflection of a ring clamped inside and free outside, per force spread evenly on a circle [m/N].
 *
 * Within the circle the slope is `φ = (P/4πD) (r ln(r/r₀) − r/2 + c₁ r + c₂/r)`, beyond it `e₁ r + e₂/r` with no moment at the
 * rim; clamp, and slope and moment at the circle, give the constants.
 *
 * @param plate - radii and thickness above 0 m, modulus above 0 Pa, Poisson's ratio 0 to 0.5
 * @param loadRadius - radius of the loaded circle [m], above the inner and up to the outer radius
 * @param atRadius - where the deflection is asked for [m], inner to outer radius
 * @see Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, sec. 17, Table 3 (from memory)
 * @example
 * ```ts
 * const narrow = { innerRadius: 0.01, outerRadius: 0.0101, thickness: 1e-4, elasticModulus: 2e11, poissonRatio: 0 };
 * ringPlateCompliance(narrow, 0.0101); // 3.2e-10: a beam of the same section, ℓ³/(3 E I), within a hundredth by hand
 * ```
 * @public
 */
export function ringPlateCompliance(plate: RingPlate, loadRadius: number, atRadius = loadRadius): number {
  requireRecord(plate, 'plate');
  requirePositive(plate.innerRadius, 'innerRadius', 'm');
  requirePositive(plate.thickness, 'thickness', 'm');
  requirePositive(plate.elasticModulus, 'elasticModulus', 'Pa');
  requireWithin(plate.poissonRatio, 0, 0.49, 'poissonRatio', '');
  requirePositive(plate.outerRadius, 'outerRadius', 'm');
  requireWithin(plate.outerRadius, plate.innerRadius, 1, 'outerRadius', 'm');
  requireWithin(loadRadius, plate.innerRadius, plate.outerRadius, 'loadRadius', 'm');
  requireWithin(atRadius, plate.innerRadius, plate.outerRadius, 'atRadius', 'm');
  const { innerRadius: b, outerRadius: a, poissonRatio: nu } = plate;
  const r0 = loadRadius;
  const widening = ((1 + nu) / (1 - nu)) * (a / r0) ** 2;
  // Moment per slope that the unloaded part of the ring takes up at the circle.
  const ring = ((1 + nu) * (1 - (a / r0) ** 2)) / (1 + widening);
  const particular = b * Math.log(b / r0) - b / 2;
  // Rows: no slope at the clamp; moment `φ' + ν φ/r` at the circle equal to `ring φ/r`.
  const fromLinear = 1 + nu - ring;
  const fromInverse = -(1 - nu + ring) / r0 ** 2;
  const moment = -ring / 2 - (1 - nu) / 2;
  const determinant = b * fromInverse - fromLinear / b;
  const linear = (-particular * fromInverse - moment / b) / determinant;
  const inverse = (b * moment + particular * fromLinear) / determinant;
  const sagInside = (r: number): number =>
    (r * r * (Math.log(r / r0) - 1 + linear)) / 2 + inverse * Math.log(r / b);
  const slopeAtCircle = r0 * (linear - 0.5) + inverse / r0;
  const sagBeyond = (r: number): number =>
    (slopeAtCircle * r0 * ((r / r0) ** 2 / 2 - 0.5 + widening * Math.log(r / r0))) / (1 + widening);
  const sag = atRadius <= r0 ? sagInside(atRadius) : sagInside(r0) + sagBeyond(atRadius);
  return (sagInside(b) - sag) / (4 * Math.PI * flexuralRigidity(plate));
}
