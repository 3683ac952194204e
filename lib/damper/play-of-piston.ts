import { requireMoving } from '../base/checks.js';
import { gapPlayBounds } from '../flow/gap/gap-play.js';
import { bracketedRoot } from '../numeric/root-finding.js';
import { requireModel } from './damper.js';
import type { DamperModel } from './damper-model.js';

/**
 * How far the pressure drop of a piston can move as it sits aside or askew in its bore by its play, at one shaft speed.
 *
 * @public
 */
export interface PlayOfPiston {
  /** Pressure drop with the least that can pass the rim, over that of the model as it is, less 1: 0 or more. */
  readonly more: number;
  /** Pressure drop with the most, over that of the model, less 1: 0 or less. */
  readonly less: number;
}

/**
 * Bounds of the pressure drop as a piston sits anywhere in its bore, with the bounds of `gapPlayBounds` on what passes its rim. Rim drag is left out: a piston that touches
 * rubs, which no law here has.
 *
 * @param model - from `damperModel`
 * @param speed - of the shaft [m/s], either sign, at least 1e-30
 * @throws InputError for a speed of less, or one that is not finite
 * @example
 * ```ts
 * // model: of the example of damperModel
 * playOfPiston(model, 0.02).less; // -0.6: touching it lets 2.5 times as much pass, and 1/2.5 − 1 is −0.6
 * ```
 * @public
 */
export function playOfPiston(model: DamperModel, speed: number): PlayOfPiston {
  requireModel(model);
  requireMoving(speed, 'speed');
  const { pistonFlow, dampingArea } = model;
  const { gap } = pistonFlow;
  const { least, most } = gapPlayBounds(gap);
  const asItIs = 1 + 1.5 * gap.eccentricity ** 2;
  const flow = dampingArea * speed;
  const { pressureDrop } = pistonFlow.pressureDrop(flow);
  // What the rim lets through goes with its factor, the holes keep theirs.
  const dropWith = (factor: number): number => {
    const excess = (ratio: number) => {
      const drop = ratio * pressureDrop;
      return (pistonFlow.flow(drop) + (factor / asItIs - 1) * pistonFlow.gapFlow(drop)) / flow - 1;
    };
    // Most of the rim at most 2.5 times its flow, least none of it: a drop between is met in this bracket, also where the rim is all there is.
    return bracketedRoot(excess, 0.3, asItIs / least + 1, 'pressure drop of a piston with play').root;
  };
  return { more: dropWith(Math.min(least, asItIs)) - 1, less: dropWith(Math.max(most, asItIs)) - 1 };
}
