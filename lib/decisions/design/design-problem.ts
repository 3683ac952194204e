import { requireCount, requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { listOf, madeWith, record, type Shape, someText } from '../../base/shape.js';
import type { Damper } from '../../damper/damper.js';
import { requireDamper } from '../../damper/damper.js';
import type { Oil } from '../../fluid/oil/oil.js';

/**
 * Wanted forces at one shaft speed.
 *
 * @public
 */
export interface WantedForce {
  /** Shaft speed [m/s], above 0; both directions are meant. */
  readonly speed: number;
  /** Wanted force of the oil in compression and in rebound [N], above 0. */
  readonly compression: number;
  readonly rebound: number;
}

/** Form of {@link WantedForce}. */
export const wantedForceShape: Shape = { speed: 'm/s', compression: 'N', rebound: '' };

/**
 * Which piston to drill and which oil to fill: the question.
 *
 * @public
 */
export interface DesignProblem {
  /** The shock; its own piston gives the diameter and the eccentricity, and none of its holes and valves. */
  readonly damper: Damper;
  /** Hole counts to try, each 1 to 20. */
  readonly counts: readonly number[];
  /** Drill sizes to try [m], above 0. */
  readonly drills: readonly number[];
  /** Taper to try [m]: diameter at the shaft side less that at the blind side; 0 for straight holes. */
  readonly tapers: readonly number[];
  /** Piston thicknesses to try [m], above 0. */
  readonly thicknesses: readonly number[];
  readonly oils: readonly { readonly name: string; readonly oil: Oil }[];
  /** Oil temperature [K]. */
  readonly temperature: number;
  readonly slow: WantedForce;
  readonly fast: WantedForce;
  /** What a design must stand: by how much the drill may cut wide or narrow [m] and the oil be warmer or colder [K]. */
  readonly drillError: number;
  readonly temperatureError: number;
}

/** Form of {@link DesignProblem}. */
export const designProblemShape: Shape = {
  damper: record,
  counts: listOf(''),
  drills: listOf('m'),
  tapers: listOf('m'),
  thicknesses: listOf('m'),
  oils: listOf({ name: someText, oil: madeWith('typical') }),
  temperature: 'K',
  slow: wantedForceShape,
  fast: wantedForceShape,
  drillError: 'm',
  temperatureError: '',
};

/**
 * What a design makes of a {@link WantedForce}: forces of the oil [N], both above 0.
 *
 * @public
 */
export type MadeForce = Pick<WantedForce, 'compression' | 'rebound'>;

/**
 * One piston with one oil.
 *
 * @public
 */
export interface Design {
  readonly count: number;
  /** Hole diameter [m], in the middle of a tapered hole. */
  readonly drill: number;
  readonly taper: number;
  readonly thickness: number;
  readonly oil: string;
  readonly slow: MadeForce;
  readonly fast: MadeForce;
  /** Largest relative error of the force at the slow and at the fast speed: 0.1 stands for 10 %. */
  readonly slowError: number;
  readonly fastError: number;
}

/**
 * A design that no other beats, with what a small error does to it.
 *
 * @public
 */
export interface RobustDesign extends Design {
  /** Largest relative change of any of the forces where the drill cuts wide or narrow. */
  readonly drillChange: number;
  /** The same where the oil is warmer or colder. */
  readonly temperatureChange: number;
}

/**
 * Which piston to drill and which oil to fill: the answer.
 *
 * @public
 */
export interface DesignFront {
  /** How many designs were computed, and how many did not fit on the piston. */
  readonly computed: number;
  readonly unfit: number;
  /** From the smallest slow error to the smallest fast error. */
  readonly front: readonly RobustDesign[];
}

/** Throws unless every part of the question is in its range. */
export function requireDesignProblem(problem: DesignProblem): void {
  requireDamper(problem.damper);
  const { counts, drills, tapers, thicknesses, oils, temperature, slow, fast } = problem;
  for (const [list, entries] of Object.entries({ counts, drills, tapers, thicknesses, oils })) {
    if (entries.length === 0) throw new InputError({ field: list, value: 0, accepted: '1 or more' });
  }
  counts.forEach((count, index) => {
    requireCount(count, `counts[${index}]`);
    requireWithin(count, 1, 20, `counts[${index}]`, '');
  });
  for (const [field, { speed, compression, rebound }] of Object.entries({ slow, fast })) {
    requirePositive(speed, `${field}.speed`, 'm/s');
    requirePositive(compression, `${field}.compression`, 'N');
    requirePositive(rebound, `${field}.rebound`, 'N');
  }
  drills.forEach((drill, index) => {
    requirePositive(drill, `drills[${index}]`, 'm');
  });
  requireWithin(temperature, 200, 600, 'temperature', 'K');
  requireNotNegative(problem.drillError, 'drillError', 'm');
  requireNotNegative(problem.temperatureError, 'temperatureError', 'K');
}
