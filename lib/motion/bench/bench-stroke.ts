import { madeWith, requireShape } from '../../base/shape.js';
import type { Warning } from '../../base/warning.js';
import { type IntegrationPlan, integrate } from '../../numeric/integrator/integrate.js';
import { type Course, type Recorder, recorder } from '../../numeric/integrator/recorder.js';
import { firstStep, type MotionOptions, motionOptionsShape, partsOf, toleranceOf } from '../input/options.js';
import { bindChambers } from '../shock/chambers.js';
import { requireMovingShock, roomTolerance } from '../shock/check-shock.js';
import type { MovingShock } from '../shock/moving-shock.js';
import { type CavityInterval, type OilCavity, timeWithCavity } from '../shock/oil-cavity.js';
import { type LeftOutInertia, leftOutInertia } from '../shock/oil-inertia.js';
import { roomAtRest } from '../shock/rest-room.js';
import { type BenchStroke, benchStrokeShape, type Cycle, type Place, strokeCycles } from './stroke.js';
import { recorded, strokeEquation } from './stroke-equation.js';
import { strokeWarnings } from './stroke-warnings.js';
import { type Trace, type TraceWriter, traceWriter } from './trace.js';

/**
 * A highest or lowest value, with where it was.
 *
 * @public
 */
export interface Peak {
  readonly value: number;
  /** [s] */
  readonly time: number;
}

/**
 * What one cycle of a bench stroke did.
 *
 * @public
 */
export interface StrokeCycle {
  /** Begin and end [s]. */
  readonly from: number;
  readonly to: number;
  /** Work put into the shock [J]: the area of the loop of force over travel. */
  readonly work: number;
  /** Where it went [J]; together they are the work once a cycle repeats the one before. */
  readonly lost: {
    /** Oil through holes, valves and gap. */
    readonly holes: number;
    /** What the jets take off the force on the piston; below 0, as it is counted in the holes too. */
    readonly recoil: number;
    readonly rim: number;
    readonly seals: number;
  };
  /** Time with a cavity over the time of the cycle, 0 to 1. */
  readonly cavityShare: number;
  /** Largest cavity [m³]. */
  readonly largestCavity: number;
  readonly largestForce: Peak;
  readonly smallestForce: Peak;
  /** Mean of force times travel [N·m], for the stiffness. */
  readonly meanForceTimesTravel: number;
  /** Mean force [N]. */
  readonly meanForce: number;
}

/**
 * What a bench stroke did.
 *
 * @public
 */
export interface BenchResult {
  readonly cycles: readonly StrokeCycle[];
  readonly largestForce: Peak;
  readonly smallestForce: Peak;
  /** Absolute pressures [Pa]. */
  readonly largestBlindPressure: Peak;
  readonly largestShaftPressure: Peak;
  /** Largest cavity [m³], and the travel that it loses: without resistance until it is full again [m]. */
  readonly largestCavity: Peak;
  readonly lostStroke: number;
  /** What the inertia of the oil in the holes would have added; the forces above lack it. */
  readonly inertia: LeftOutInertia;
  /** When the oil tore and closed. */
  readonly cavities: readonly CavityInterval[];
  /** The last cycle at equal times, for loops. */
  readonly trace: Trace;
  readonly steps: number;
  readonly warnings: readonly Warning[];
}

const defaultParts = 256;

/** Steps of a cycle at least. */
const leastSteps = 40;

/** A cycle with all that was recorded in it. */
interface Recorded {
  readonly cycle: StrokeCycle;
  readonly recorder: Recorder;
}

/**
 * Moves the shaft of a shock along a stroke, from rest with equal pressures, and records what a test bench would.
 *
 * @param shock - from `movingShock`, or any other with its sizes in their ranges
 * @param stroke - within the travel of the shock, at most 10 m/s, 200 Hz and 60 s
 * @param options - tolerance and parts of the trace
 * @throws InputError for an input outside its range, or where the gas has no room left on the way
 * @throws IntegrationError where the equations cannot be followed
 * @public
 */
export function benchStroke(
  shock: MovingShock,
  stroke: BenchStroke,
  options: MotionOptions = {},
): BenchResult {
  requireShape(
    { shock, stroke, options },
    { shock: madeWith('passage'), stroke: benchStrokeShape, options: motionOptionsShape },
  );
  requireMovingShock(shock);
  const cycles = strokeCycles(stroke, shock.stroke);
  const relative = toleranceOf(options);
  const parts = partsOf(options, defaultParts);
  const chambers = bindChambers(shock);
  const oil: OilCavity = { isOpen: false, cavities: [] };
  const start: Place = { travel: 0, speed: 0, acceleration: 0 };
  cycles[0]?.[0]?.evaluate(cycles[0][0].from, start);
  let state: ArrayLike<number> = [roomAtRest(shock, chambers, start.travel)];
  let steps = 0;
  let trace: TraceWriter | undefined;
  const all: Recorded[] = [];

  for (const cycle of cycles) {
    let watched: Recorder | undefined;
    trace = undefined;
    const { from, to } = ends(cycle);
    for (const piece of cycle) {
      const { equation, events, write } = strokeEquation(shock, chambers, piece, oil);
      const watch = recorder(1, recorded.count, recorded.peaks, write, watched);
      const draw = traceWriter(from, to, parts, piece, write, trace);
      watched = watch;
      trace = draw;
      const plan: IntegrationPlan = {
        from: piece.from,
        to: piece.to,
        knots: piece.knots,
        state,
        relative,
        absolute: [roomTolerance(shock, relative)],
        firstStep,
        // Work is a sum over the steps, which oil that follows at once would let grow as long as a stroke.
        longestStep: (to - from) / leastSteps,
        events,
        onStep: (step) => {
          watch.observe(step);
          draw.observe(step);
        },
      };
      const result = integrate(equation, plan);
      state = result.state;
      steps += result.steps;
    }
    if (watched !== undefined) all.push({ cycle: cycleOf(watched, oil, from, to), recorder: watched });
  }
  const result = {
    ...peaks(all),
    inertia: inertiaOf(shock, chambers.farArea, stroke, all),
    cycles: all.map(({ cycle }) => cycle),
    lostStroke: 0,
    cavities: oil.cavities,
    trace: (trace as TraceWriter).trace,
    steps,
  };
  const lostStroke = result.largestCavity.value / Math.abs(chambers.farArea);
  return { ...result, lostStroke, warnings: strokeWarnings(shock, result) };
}

function ends(cycle: Cycle): { readonly from: number; readonly to: number } {
  return { from: cycle[0]?.from ?? 0, to: cycle.at(-1)?.to ?? 0 };
}

const highest = ({ largest, largestTime }: Course): Peak => ({ value: largest, time: largestTime });
const lowest = ({ smallest, smallestTime }: Course): Peak => ({ value: smallest, time: smallestTime });

function cycleOf(watched: Recorder, oil: OilCavity, from: number, to: number): StrokeCycle {
  const integral = (index: number): number => watched.course(index).integral;
  const force = watched.course(recorded.force);
  return {
    from,
    to,
    work: integral(recorded.power),
    lost: {
      holes: integral(recorded.holePower),
      recoil: integral(recorded.recoilPower),
      rim: integral(recorded.rimPower),
      seals: integral(recorded.sealPower),
    },
    cavityShare: timeWithCavity(oil.cavities, from, to) / (to - from),
    largestCavity: watched.course(recorded.cavity).largest,
    largestForce: highest(force),
    smallestForce: lowest(force),
    meanForceTimesTravel: integral(recorded.forceTimesTravel) / (to - from),
    meanForce: force.integral / (to - from),
  };
}

function inertiaOf(
  shock: MovingShock,
  farArea: number,
  stroke: BenchStroke,
  all: readonly Recorded[],
): LeftOutInertia {
  const fastest = (index: number): number =>
    Math.max(...all.flatMap(({ recorder: { course } }) => [course(index).largest, -course(index).smallest]));
  const frequency = stroke.kind === 'table' ? undefined : stroke.frequency;
  return leftOutInertia(shock, farArea, fastest(recorded.speed), fastest(recorded.acceleration), frequency);
}

function peaks(all: readonly Recorded[]) {
  const top = (index: number): Peak =>
    all
      .map(({ recorder: each }) => highest(each.course(index)))
      .reduce((a, b) => (b.value > a.value ? b : a));
  const bottom = (index: number): Peak =>
    all.map(({ recorder: each }) => lowest(each.course(index))).reduce((a, b) => (b.value < a.value ? b : a));
  return {
    largestForce: top(recorded.force),
    smallestForce: bottom(recorded.force),
    largestBlindPressure: top(recorded.blindPressure),
    largestShaftPressure: top(recorded.shaftPressure),
    largestCavity: top(recorded.cavity),
    largestDrop: top(recorded.pressureDrop),
    smallestDrop: bottom(recorded.pressureDrop),
  };
}
