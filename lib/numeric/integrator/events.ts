import { type Step, stateWithin } from './dense-output.js';

/**
 * Something that happens when a value passes through zero.
 *
 * @public
 */
export interface Event {
  /** The value, of any unit; it changes sign where the event is. */
  readonly value: (time: number, state: Float64Array) => number;
  /**
   * Which crossing counts now: 1 upward, −1 downward, 0 none. A restart on the zero itself does not fire again, since the next crossing
   * of the wanted direction has to come from zero or from the other side.
   */
  readonly direction: () => -1 | 0 | 1;
  /**
   * What it does, at the state just past the crossing: set mode flags, change the state in place. `'stop'` ends the integration.
   */
  readonly happens: (time: number, state: Float64Array) => 'restart' | 'stop';
}

/** Shares of a step at which events are looked for, so that a value that comes back within a step is seen. */
const looks = [0.25, 0.5, 0.75, 1];

/** The first event within a step. */
export interface Found {
  readonly index: number;
  /** Share of the step, just past the crossing. */
  readonly share: number;
}

/** Reads the values of the events now, to compare the next step with. */
export function readEvents(
  events: readonly Event[],
  time: number,
  state: Float64Array,
  values: Float64Array,
): void {
  for (let i = 0; i < events.length; i++) values[i] = (events[i] as Event).value(time, state);
}

/**
 * First crossing of a wanted direction within a step, or undefined.
 *
 * @param before - values at the start of the step; those at the last place asked for on return
 * @param work - room for one state
 */
export function firstEvent(
  events: readonly Event[],
  step: Step,
  before: Float64Array,
  work: Float64Array,
): Found | undefined {
  let low = 0;
  for (const high of looks) {
    let first: Found | undefined;
    stateWithin(step, high, work);
    const time = step.time + high * step.length;
    for (let index = 0; index < events.length; index++) {
      const event = events[index] as Event;
      const direction = event.direction();
      if (direction === 0) continue;
      const lowValue = direction * (before[index] as number);
      const value = event.value(time, work);
      before[index] = value;
      const highValue = direction * value;
      // A value that starts on the zero itself counts as not yet past it.
      if (lowValue <= 0 && highValue > 0) {
        const share = crossing(event, step, direction, low, lowValue, high, highValue, work);
        stateWithin(step, high, work);
        if (first === undefined || share < first.share) first = { index, share };
      }
    }
    if (first !== undefined) return first;
    low = high;
  }
  return undefined;
}

function valueWithin(event: Event, step: Step, share: number, work: Float64Array): number {
  stateWithin(step, share, work);
  return event.value(step.time + share * step.length, work);
}

/** The crossing by the Illinois form of regula falsi (Dowell & Jarratt, BIT 11 (1971) 168); the side past it is given back. */
function crossing(
  event: Event,
  step: Step,
  direction: number,
  lowShare: number,
  lowValue: number,
  highShare: number,
  highValue: number,
  work: Float64Array,
): number {
  let low = lowShare;
  let high = highShare;
  let below = lowValue;
  let above = highValue;
  let kept = 0;
  for (let iteration = 1; iteration <= 100 && high - low > 1e-15 && above !== 0; iteration++) {
    const secant = (low * above - high * below) / (above - below);
    const share = iteration % 4 === 0 || !(secant > low && secant < high) ? (low + high) / 2 : secant;
    const value = direction * valueWithin(event, step, share, work);
    if (value >= 0) {
      high = share;
      above = value;
      if (kept === 1) below /= 2;
      kept = 1;
    } else {
      low = share;
      below = value;
      if (kept === -1) above /= 2;
      kept = -1;
    }
  }
  return high;
}
