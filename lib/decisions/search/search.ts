import { requirePositive } from '../../base/checks.js';
import { built, call, optional, requireShape, type Shape } from '../../base/shape.js';

/**
 * A long computation that can be watched and stopped: it yields the part that is done, 0 to 1, and returns its result.
 *
 * @public
 */
export type Search<Result> = Generator<number, Result, void>;

/**
 * How a search is watched and stopped.
 *
 * @public
 */
export interface SearchControl {
  /** Stops the search; it then throws the reason of the signal. */
  readonly signal?: AbortSignal;
  /** Gets the part that is done, 0 to 1, rising. */
  readonly onProgress?: (done: number) => void;
}

/** Form of {@link SearchControl}. */
export const searchControlShape: Shape = {
  signal: optional(built('AbortSignal')),
  onProgress: optional(call),
};

/**
 * Runs a search to its end at once.
 *
 * @param search - the search, not yet begun
 * @public
 */
export function finish<Result>(search: Search<Result>): Result {
  requireShape({ search }, { search: built('Generator') });
  let step = search.next();
  while (step.done !== true) step = search.next();
  return step.value;
}

/** Longest time without a pause [ms], so that a page or a server stays awake. */
const longestSlice = 12;

/** Lets others run. Node has a call for that which comes back at once; a timer takes a millisecond or more. */
const pause: (resume: () => void) => void =
  typeof setImmediate === 'function' ? setImmediate : (resume) => setTimeout(resume, 0);

/**
 * Runs a search in slices with pauses between them, so that it can be watched and stopped. The result does not depend on the slices.
 *
 * @param search - the search, not yet begun
 * @param control - progress and stop
 * @throws the reason of the signal where it stops the search; InputError for what is no search or no control of one
 * @public
 */
export async function finishInSlices<Result>(
  search: Search<Result>,
  control: SearchControl = {},
): Promise<Result> {
  requireShape({ search }, { search: built('Generator') });
  requireShape(control, searchControlShape, 'control');
  const { signal, onProgress } = control;
  signal?.throwIfAborted();
  let pauseAt = performance.now() + longestSlice;
  let step = search.next();
  while (step.done !== true) {
    if (performance.now() >= pauseAt) {
      onProgress?.(step.value);
      await new Promise((resume) => pause(() => resume(undefined)));
      signal?.throwIfAborted();
      pauseAt = performance.now() + longestSlice;
    }
    step = search.next();
  }
  onProgress?.(1);
  return step.value;
}

/** Progress of the part of a search that goes from `from` to `to`. */
export function* between<Result>(search: Search<Result>, from: number, to: number): Search<Result> {
  requirePositive(to - from, 'to - from', '');
  let step = search.next();
  while (step.done !== true) {
    yield from + (to - from) * step.value;
    step = search.next();
  }
  return step.value;
}

/** The control of the part of a whole that goes from `from` to `to`. */
export function partOf({ signal, onProgress }: SearchControl, from: number, to: number): SearchControl {
  return {
    ...(signal === undefined ? {} : { signal }),
    ...(onProgress === undefined ? {} : { onProgress: (done) => onProgress(from + (to - from) * done) }),
  };
}
