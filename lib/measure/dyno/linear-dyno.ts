import { InputError } from '../../base/input-error.js';
import { listOf, requireShape, type Shape } from '../../base/shape.js';
import { linearLeastSquares } from '../../numeric/least-squares/linear-least-squares.js';

/**
 * A stroke of a dyno, sample by sample.
 *
 * @public
 */
export interface DynoStroke {
  /** [s]. */
  readonly time: readonly number[];
  /** [m]. */
  readonly travel: readonly number[];
  /** [m/s], compression positive. */
  readonly speed: readonly number[];
  /** [N]. */
  readonly force: readonly number[];
}

/** Form of {@link DynoStroke}. */
export const dynoStrokeShape: Shape = {
  time: listOf('s'),
  travel: listOf('m'),
  speed: listOf('m/s'),
  force: listOf('N'),
};

/**
 * A first look at a dyno record: what a straight line through it says, with standard deviations by the scatter.
 *
 * @public
 */
export interface LinearDyno {
  /** Damping coefficient [N·s/m]. */
  readonly dampingCoefficient: number;
  /** Friction [N]. */
  readonly friction: number;
  /** Force at the middle of the travel without speed or friction [N]: gas and the sensor's zero together, which one test cannot part. */
  readonly offset: number;
  /** Rate of the gas, seen as a spring [N/m]; a force filtered later than the travel looks like one too. */
  readonly stiffness: number;
  /** Drift of the sensor [N/s]. */
  readonly drift: number;
  /** Standard deviations of these in the same order. */
  readonly standardDeviations: readonly number[];
}

/**
 * Damping coefficient, friction, offset, stiffness and drift of a stroke by linear least squares,
 * `F = c v + F_s sign v + F_0 + k (x − x_m) + drift t`.
 *
 * @param stroke - samples, more than 5, not all at one speed
 * @param middle - travel at which the offset is meant [m]
 * @throws InputError for lists of different lengths; FitError where the samples do not tell the terms apart
 * @public
 */
export function linearDyno(stroke: DynoStroke, middle: number): LinearDyno {
  requireShape({ stroke, middle }, { stroke: dynoStrokeShape, middle: 'm' });
  const { time, travel, speed, force } = stroke;
  const lengths = [time.length, travel.length, speed.length];
  if (lengths.some((length) => length !== force.length)) {
    throw new InputError({
      field: 'force',
      value: force.length,
      accepted: `as many as ${lengths.join(', ')}`,
    });
  }
  const rows = force.map((_, index) => {
    const v = speed[index]!;
    return [v, Math.sign(v), 1, travel[index]! - middle, time[index]!];
  });
  const { coefficients, standardDeviations } = linearLeastSquares(rows, force);
  const [dampingCoefficient = 0, friction = 0, offset = 0, stiffness = 0, drift = 0] = coefficients;
  return { dampingCoefficient, friction, offset, stiffness, drift, standardDeviations };
}
