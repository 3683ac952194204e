import type { UnsteadyFlowError } from '../../flow/hole/apparent-mass.js';
import type { MovingShock } from './moving-shock.js';

/**
 * What the inertia of the oil in the holes would have added to a run. The equations take the steady laws of flow.
 *
 * @public
 */
export interface LeftOutInertia extends UnsteadyFlowError {
  /** Frequency at which a swing as fast has its largest acceleration [Hz]: that of a repeated stroke, else largest acceleration over largest speed, over 2π. */
  readonly frequency: number;
  /** Apparent mass of the oil at the shaft [kg]. */
  readonly apparentMass: number;
  /** That times the largest acceleration of the shaft [N], without sign: at most what the force lacks, and where the shaft turns, not at its peak speed. */
  readonly largestForce: number;
}

/**
 * @param farArea - with which the shaft moves oil through the piston [m²], either sign
 * @param largestSpeed - of the shaft [m/s], 0 or more
 * @param largestAcceleration - of the shaft [m/s²], 0 or more
 * @param frequency - of a repeated stroke [Hz], above 0; its speed then says how fast it swings, also where it turns with a corner
 */
export function leftOutInertia(
  shock: Pick<MovingShock, 'inertance' | 'unsteadyFlow'>,
  farArea: number,
  largestSpeed: number,
  largestAcceleration: number,
  frequency?: number,
): LeftOutInertia {
  const apparentMass = shock.inertance * farArea ** 2;
  const swing = frequency ?? (largestSpeed > 0 ? largestAcceleration / largestSpeed / (2 * Math.PI) : 0);
  const acceleration = frequency === undefined ? largestAcceleration : 2 * Math.PI * frequency * largestSpeed;
  const error =
    swing > 0 ? shock.unsteadyFlow(swing) : { frequencyNumber: 0, steadyLaw: 0, withApparentMass: 0 };
  return { ...error, frequency: swing, apparentMass, largestForce: apparentMass * acceleration };
}
