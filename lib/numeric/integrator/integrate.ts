import { type Step, stateWithin } from './dense-output.js';
import type { DifferentialEquation } from './differential-equation.js';
import { type Event, firstEvent, readEvents } from './events.js';
import { IntegrationError } from './integration-error.js';
import { rosenbrockStep } from './rosenbrock-step.js';

/** How an integration is done. */
export interface IntegrationPlan {
  /** Time from which to which [s]; the second is later. */
  readonly from: number;
  readonly to: number;
  /** State at the start; it is not changed. */
  readonly state: ArrayLike<number>;
  /** Error allowed in a step: `absolute[k] + relative · |y_k|`, above 0. */
  readonly relative: number;
  readonly absolute: ArrayLike<number>;
  /** Length of the first step and of the first one after an event [s]; a millionth of the span where absent. */
  readonly firstStep?: number;
  readonly longestStep?: number;
  readonly events?: readonly Event[];
  /** Rising times at which a step has to end, since the rates bend there [s]. */
  readonly knots?: readonly number[];
  /** Called after each step, before an event changes anything; true ends the integration after this step. */
  readonly onStep?: (step: Step) => unknown;
  /** Steps, taken or tried, after which to give up; a million where absent. */
  readonly stepLimit?: number;
}

/** Where an integration ended, and what it cost. */
export interface Integration {
  readonly time: number;
  readonly state: Float64Array;
  /** Whether an event ended it. */
  readonly stopped: boolean;
  readonly steps: number;
  readonly rejected: number;
}

/** Limits of the change of step length from one step to the next, and share of the estimate that is used. */
const smallestFactor = 0.2;
const largestFactor = 6;
const caution = 0.9;

/**
 * Where a stiff unknown rests on a bend of its rate that is narrower than its error, it hops from side to side of it, and the estimate of the error is about the same for any length: steps
 * stay as short as an event has left them. So where this many steps, each shorter than this part of the span, have not doubled their length, the error of as many is held this much smaller: the unknown
 * finds its rest.
 */
const hoppingSteps = 50;
const shortPart = 1e-5;
const stricter = 1e3;

/**
 * Integrates a stiff system with Rodas5P, error control and events.
 *
 * The step length follows the error of this step and of the last one (PI control, exponents 0.7/5 and 0.4/5: Gustafsson as in Hairer &
 * Wanner II, sec. IV.2). An event ends the step at its crossing, found on the dense polynomial, and restarts with the first step.
 *
 * @throws IntegrationError where the step falls to the floor of the machine, or there are too many
 */
export function integrate(equation: DifferentialEquation, plan: IntegrationPlan): Integration {
  const { size } = equation;
  const { to, relative, absolute, onStep } = plan;
  const events = plan.events ?? [];
  const knots = plan.knots ?? [];
  const stepLimit = plan.stepLimit ?? 1_000_000;
  const firstStep = plan.firstStep ?? 1e-6 * (to - plan.from);
  const longest = plan.longestStep ?? Number.POSITIVE_INFINITY;
  const stepper = rosenbrockStep(equation);
  const state = Float64Array.from(plan.state);
  const work = new Float64Array(size);
  const values = new Float64Array(events.length);
  const step = {
    time: plan.from,
    length: 0,
    covered: 1,
    cut: false,
    start: new Float64Array(size),
    end: stepper.end,
    dense: new Float64Array(3 * size),
  };
  let time = plan.from;
  let wanted = Math.min(firstStep, longest);
  let lastError = 1e-4;
  let [looked, lookedLength, strictness] = [0, 0, 1];
  let knot = 0;
  let steps = 0;
  let rejected = 0;
  readEvents(events, time, state, values);

  while (time < to) {
    while (knot < knots.length && (knots[knot] as number) <= time) knot++;
    const barrier = Math.min(knots[knot] ?? to, to);
    stepper.prepare(time, state, wanted);
    let error: number;
    let length: number;
    for (;;) {
      if (steps + rejected >= stepLimit) throw new IntegrationError('too many steps', time, state);
      // A step that would leave a crumb before the barrier takes it along.
      length = time + 1.01 * wanted >= barrier ? barrier - time : wanted;
      if (!(length > 4e-16 * Math.abs(time) && length > 1e-18)) {
        throw new IntegrationError('the step fell to its floor', time, state);
      }
      error = stepper.attempt(time, state, length)
        ? errorNorm(state, stepper.end, stepper.error, relative, absolute) * strictness
        : Number.POSITIVE_INFINITY;
      if (error <= 1) break;
      rejected++;
      if (length < 0.01 * lookedLength) strictness = 1;
      wanted =
        length *
        (error < Number.POSITIVE_INFINITY
          ? Math.max(smallestFactor, caution * error ** -0.2)
          : smallestFactor);
    }
    steps++;
    step.time = time;
    step.length = length;
    step.start.set(state);
    stepper.writeDense(step.dense);
    const found = events.length === 0 ? undefined : firstEvent(events, step, values, work);
    step.covered = found?.share ?? 1;
    step.cut = found !== undefined;
    const enough = onStep?.(step) === true;
    // An event on the very zero has passed it, so that it does not fire again.
    let fired: { readonly index: number; readonly side: number } | undefined;
    const ending = length === barrier - time;
    if (found !== undefined) {
      stateWithin(step, found.share, state);
      time += found.share * length;
      const event = events[found.index] as Event;
      fired = { index: found.index, side: event.direction() * Number.MIN_VALUE };
      if (event.happens(time, state) === 'stop') {
        return { time, state, stopped: true, steps, rejected };
      }
      wanted = Math.min(firstStep, longest);
      lastError = 1e-4;
    } else {
      state.set(stepper.end);
      time = ending ? barrier : time + length;
      const factor = caution * Math.max(error, 1e-10) ** -0.14 * lastError ** 0.08;
      const next = length * Math.min(largestFactor, Math.max(smallestFactor, factor));
      // A step cut short by a barrier says nothing about how long the next may be.
      wanted = Math.min(longest, ending ? Math.max(next, wanted) : next);
      lastError = Math.max(error, 1e-4);
    }
    const short = length < shortPart * (to - plan.from);
    if (!short) strictness = 1;
    if (steps === looked + hoppingSteps) {
      strictness = short && length < 2 * lookedLength && strictness === 1 ? stricter : 1;
      [looked, lookedLength] = [steps, length];
    }
    if (enough) return { time, state, stopped: true, steps, rejected };
    readEvents(events, time, state, values);
    if (fired !== undefined && values[fired.index] === 0) values[fired.index] = fired.side;
  }
  return { time, state, stopped: false, steps, rejected };
}

/** Largest error over what is allowed; both are finite, since a step to an end that is not is no step. */
function errorNorm(
  before: Float64Array,
  after: Float64Array,
  error: Float64Array,
  relative: number,
  absolute: ArrayLike<number>,
): number {
  let largest = 0;
  for (let k = 0; k < error.length; k++) {
    const size = Math.max(Math.abs(before[k] as number), Math.abs(after[k] as number));
    const ratio = Math.abs(error[k] as number) / ((absolute[k] as number) + relative * size);
    if (ratio > largest) largest = ratio;
  }
  return largest;
}
