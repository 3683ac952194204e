import { type Step, stateWithin } from '../../numeric/integrator/dense-output.js';
import { unknown } from './corner-equation.js';

/** Half width of the band in which a corner counts as settled, over its travel at rest. */
const band = 0.05;

/** Equal parts of a step in which a swing is looked for. */
const looks = 8;

/** When a corner came to rest, and how often it swung through its place at rest before. */
export interface Settled {
  readonly settlingTime?: number;
  readonly swings: number;
}

/** Watches the travel step by step. */
export function settling(
  size: number,
  motionRatio: number,
  restTravel: number,
): { readonly observe: (step: Step) => void; readonly found: () => Settled } {
  const width = band * Math.abs(restTravel);
  const state = new Float64Array(size);
  let settled = 0;
  let outside = false;
  let before = Number.NaN;
  let swings = 0;
  let swingsUntilSettled = 0;

  function away(step: Step, share: number): number {
    stateWithin(step, share, state);
    return motionRatio * ((state[unknown.wheel] as number) - (state[unknown.body] as number)) - restTravel;
  }

  /** Time at which the travel enters the band between two shares, by halving. */
  function entry(step: Step, from: number, to: number): number {
    let low = from;
    let high = to;
    for (let i = 0; i < 40; i++) {
      const middle = (low + high) / 2;
      if (Math.abs(away(step, middle)) > width) low = middle;
      else high = middle;
    }
    return step.time + high * step.length;
  }

  function observe(step: Step): void {
    for (let i = 0; i <= looks; i++) {
      const share = (i / looks) * step.covered;
      const distance = away(step, share);
      if (before * distance < 0) swings++;
      before = distance;
      const isOutside = Math.abs(distance) > width;
      if (outside && !isOutside) {
        settled = entry(step, i === 0 ? 0 : ((i - 1) / looks) * step.covered, share);
        swingsUntilSettled = swings;
      }
      outside = isOutside;
    }
  }

  return {
    observe,
    found: () => (outside ? { swings } : { settlingTime: settled, swings: swingsUntilSettled }),
  };
}
