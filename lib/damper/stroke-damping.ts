import { requirePositive, requireRecord, requireWithin } from '../base/checks.js';
import { distinctWarnings, type Warning } from '../base/warning.js';
import { pressureOfGas } from '../gas/gas-state.js';
import { simpson } from '../numeric/quadrature.js';
import { requireModel } from './damper.js';
import { wholeForce } from './damper-force.js';
import type { DamperModel } from './damper-model.js';

/**
 * A sine of travel.
 *
 * @public
 */
export interface SineStroke {
  /** Middle of the travel [m]; the ends stay within the stroke. */
  readonly middle: number;
  /** Half the travel from end to end [m], above 0. */
  readonly amplitude: number;
  /** Strokes to and fro in a second [Hz], above 0 to 200. */
  readonly frequency: number;
}

/**
 * What one cycle of a sine takes out of the motion.
 *
 * @public
 */
export interface StrokeDamping {
  /** Damping of the linear damper that takes as much work from the same sine [N·s/m], `W/(π ω X²)`. */
  readonly equivalentDamping: number;
  /** Work of one cycle `W` [J], 0 or more: that of oil and seals; the gas gives back what it takes. */
  readonly work: number;
  /** Part of it that the oil takes [J]. */
  readonly workOfOil: number;
  /** Part that the seals take [J]. */
  readonly workOfSeals: number;
  /** Highest speed of the shaft [m/s], `ω X`. */
  readonly highestSpeed: number;
  /** What is doubtful at the middle of the travel, either way. With `cavitation` among them the work is that of oil held whole by more gas. */
  readonly warnings: readonly Warning[];
}

/** Parts of a quarter of the sine. */
const parts = 96;

/**
 * Equivalent viscous damping of a sine of travel, from the steady force at each speed: oil that neither gives nor tears, holes without inertia. A preloaded valve that falls
 * shut later than it opened is followed on both ways. `benchStroke` of `dashpot/motion` follows gas, oil and cavities in time.
 *
 * @param model - from `damperModel`
 * @param stroke - within the stroke of the damper, at most 10 m/s and 200 Hz
 * @throws InputError for a value outside its range
 * @see Rao, Mechanical Vibrations, SI ed. 2017, sec. 3.9: equivalent damping by equal work of a cycle (from memory)
 * @example
 * ```ts
 * // model: of the example of damperModel
 * strokeDamping(model, { middle: 0.014, amplitude: 0.001, frequency: 2 }).equivalentDamping; // 181.7: a rim alone is linear, the coefficient of damperModel
 * ```
 * @public
 */
export function strokeDamping(model: DamperModel, stroke: SineStroke): StrokeDamping {
  requireModel(model);
  requireRecord(stroke, 'stroke');
  const { middle, amplitude, frequency } = stroke;
  const length = model.damper.stroke;
  requirePositive(amplitude, 'amplitude', 'm');
  requireWithin(amplitude, 0, length / 2, 'amplitude', 'm');
  requireWithin(middle, amplitude, length - amplitude, 'middle', 'm');
  requirePositive(frequency, 'frequency', 'Hz');
  requireWithin(frequency, 0, 200, 'frequency', 'Hz');
  const omega = 2 * Math.PI * frequency;
  const highestSpeed = omega * amplitude;
  requireWithin(highestSpeed, 0, 10, 'highest speed of the stroke', 'm/s');

  const { pistonFlow, dampingArea, gas, shaftArea } = model;
  const forceAt = (angle: number) => {
    const speed = highestSpeed * Math.cos(angle);
    const pressure = pressureOfGas(gas, shaftArea * (middle + amplitude * Math.sin(angle)));
    // From the middle to an end the shaft loses speed.
    const losing = Math.sin(angle) * Math.cos(angle) > 0;
    const flow = dampingArea * speed;
    const solved = losing ? pistonFlow.fallingPressureDrop(flow) : pistonFlow.pressureDrop(flow);
    return wholeForce(model, speed, pressure, solved);
  };
  // Quarters apart, since a valve may hold other forces on the way back.
  const workOf = (part: 'dampingForce' | 'sealForce'): number =>
    [-2, -1, 0, 1].reduce((sum, quarter) => {
      const from = (quarter * Math.PI) / 2;
      const power = (angle: number): number => forceAt(angle)[part] * amplitude * Math.cos(angle);
      return sum + simpson(power, from, from + Math.PI / 2, parts);
    }, 0);
  const [workOfOil, workOfSeals] = [workOf('dampingForce'), workOf('sealForce')];
  const work = workOfOil + workOfSeals;
  const fastest = [forceAt(0), forceAt(Math.PI)];
  return {
    equivalentDamping: work / (Math.PI * omega * amplitude ** 2),
    work,
    workOfOil,
    workOfSeals,
    highestSpeed,
    warnings: distinctWarnings(fastest.flatMap(({ warnings }) => warnings)),
  };
}
