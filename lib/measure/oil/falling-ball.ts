import { requirePositive, requireWithin } from '../../base/checks.js';
import { standardGravity } from '../../base/constants.js';
import { InputError } from '../../base/input-error.js';
import { requireShape, type Shape } from '../../base/shape.js';
import type { Warning } from '../../base/warning.js';
import type { ViscosityReading } from '../reading/reading.js';

/**
 * A small ball that sinks along the axis of a tube of oil.
 *
 * @public
 */
export interface FallingBall {
  /** Diameter of the ball [m], above 0. */
  readonly ballDiameter: number;
  /** Density of the ball [kg/m³], above that of the oil. */
  readonly ballDensity: number;
  /** Bore of the tube [m], at least 10 times the ball. */
  readonly tubeDiameter: number;
  /** Density of the oil [kg/m³], above 0. */
  readonly oilDensity: number;
  /** Stretch timed, in the middle third of the tube [m], above 0. */
  readonly stretch: number;
  /** Time over it [s], above 0. */
  readonly time: number;
}

/** Form of {@link FallingBall}. */
export const fallingBallShape: Shape = {
  ballDiameter: 'm',
  ballDensity: 'kg/m³',
  tubeDiameter: 'm',
  oilDensity: 'kg/m³',
  stretch: 'm',
  time: 's',
};

/**
 * Uncertainties of the same, all standard.
 *
 * @public
 */
export interface FallingBallUncertainties {
  /** [m]. */
  readonly ballDiameter: number;
  /** Of the difference of the densities [kg/m³]. */
  readonly densityDifference: number;
  /** [s]. */
  readonly time: number;
}

/** Form of {@link FallingBallUncertainties}. */
export const fallingBallUncertaintiesShape: Shape = {
  ballDiameter: 'm',
  densityDifference: 'kg/m³',
  time: 's',
};

/** The wall correction is good below this ratio of ball to tube. */
const widestBall = 0.1;
/** Stokes' law is good to 2 % below this Reynolds number. */
const highestReynolds = 0.1;

/**
 * Factor by which a wall makes a ball sink slower than in open oil.
 *
 * @param ratio - ball diameter over tube diameter, 0 to 0.1
 * @throws InputError outside that range
 * @see Faxén, Ark. Mat. Astron. Fys. 17 (1923) no. 27; coefficients from memory, in Happel & Brenner, Low Reynolds Number Hydrodynamics, ch. 7
 * @public
 */
export function ballWallFactor(ratio: number): number {
  requireWithin(ratio, 0, widestBall, 'ballDiameter / tubeDiameter', '');
  return 1 / (1 - 2.10444 * ratio + 2.08877 * ratio ** 3 - 0.94813 * ratio ** 5);
}

/**
 * Kinematic viscosity of the oil by a falling ball [m²/s], with the Reynolds number of the ball.
 *
 * @param ball - sizes, densities and time
 * @returns viscosity, and a warning above Reynolds number 0.1, where Stokes' law reads high
 * @throws InputError for a value outside its range
 * @see Stokes 1851 with Faxén's wall factor, `µ = (ρ_b − ρ) g d² / (18 v K)`
 * @public
 */
export function fallingBallViscosity(ball: FallingBall): {
  readonly kinematicViscosity: number;
  readonly reynoldsNumber: number;
  readonly warnings: readonly Warning[];
} {
  requireShape({ ball }, { ball: fallingBallShape });
  requirePositive(ball.ballDiameter, 'ballDiameter', 'm');
  requirePositive(ball.tubeDiameter, 'tubeDiameter', 'm');
  requirePositive(ball.oilDensity, 'oilDensity', 'kg/m³');
  requirePositive(ball.stretch, 'stretch', 'm');
  requirePositive(ball.time, 'time', 's');
  if (!(ball.ballDensity > ball.oilDensity)) {
    const accepted = `above that of the oil, ${ball.oilDensity}`;
    throw new InputError({ field: 'ballDensity', value: ball.ballDensity, unit: 'kg/m³', accepted });
  }
  const speed = ball.stretch / ball.time;
  const driving = (ball.ballDensity - ball.oilDensity) * standardGravity * ball.ballDiameter ** 2;
  const dynamicViscosity = driving / (18 * speed * ballWallFactor(ball.ballDiameter / ball.tubeDiameter));
  const kinematicViscosity = dynamicViscosity / ball.oilDensity;
  const reynoldsNumber = (speed * ball.ballDiameter) / kinematicViscosity;
  const warnings: readonly Warning[] =
    reynoldsNumber <= highestReynolds
      ? []
      : [
          {
            code: 'ball-too-quick',
            message: `The ball sinks too quickly for Stokes' law: Reynolds number ${reynoldsNumber.toPrecision(2)}; take a smaller ball`,
            value: reynoldsNumber,
            limit: highestReynolds,
          },
        ];
  return { kinematicViscosity, reynoldsNumber, warnings };
}

/**
 * A falling ball as a reading of the viscosity.
 *
 * @param ball - sizes, densities and time
 * @param temperature - of the oil by the thermometer [K]
 * @param uncertainties - standard; the thermometer's is left out, since a fit knows it as an unknown
 * @throws InputError for a value outside its range
 * @see JCGM 100:2008 (GUM), 5.1.2
 * @public
 */
export function fallingBallReading(
  ball: FallingBall,
  temperature: number,
  uncertainties: FallingBallUncertainties,
): ViscosityReading {
  requireShape(
    { ball, temperature, uncertainties },
    { ball: fallingBallShape, temperature: 'K', uncertainties: fallingBallUncertaintiesShape },
  );
  const { kinematicViscosity } = fallingBallViscosity(ball);
  const relativeUncertainty = Math.hypot(
    (2 * uncertainties.ballDiameter) / ball.ballDiameter,
    uncertainties.time / ball.time,
    uncertainties.densityDifference / (ball.ballDensity - ball.oilDensity),
  );
  return { kind: 'viscosity', kinematicViscosity, temperature, relativeUncertainty };
}
