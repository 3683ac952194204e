import { InputError } from '../../lib/base/input-error.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import type { DamperModel } from '../../lib/damper/damper-model.js';
import { strokeForces, strokeOf } from '../base/after-onset.js';
import { millimetres } from '../base/bench-wording.js';
import { newtons, shaftSpeed } from '../base/wording.js';

/** Which force a fast compression is given by, next to the one that other pages give: the same build, its sizes as meant. */
export function wholeOilSentence(model: DamperModel, fast: number): string {
  const whole = damperForce(model, { speed: fast, position: model.damper.stroke / 2 }).dampingForce;
  const held = `Compression at ${shaftSpeed(fast)} is that of whole oil, ${newtons(whole)} of damping as meant`;
  const why =
    'Whole oil is spread here, since sizes and label alone decide it; with a cavity the gas does too.';
  try {
    const { afterTravel, cavitates } = strokeForces(model, fast);
    if (!cavitates) return `${held}; no cavity opens.`;
    const { travel } = strokeOf(model, fast);
    return `${held}; a stroke from fully out opens a cavity and damps with ${newtons(afterTravel.dampingForce)} after ${millimetres(travel)}, which is what the pages that compare say. ${why}`;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return `${held}; a stroke from fully out opens a cavity and locks before its end. ${why}`;
  }
}
