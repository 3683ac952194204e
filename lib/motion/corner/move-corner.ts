import { requireNotNegative } from '../../base/checks.js';
import { standardGravity } from '../../base/constants.js';
import { InputError } from '../../base/input-error.js';
import { madeWith, oneOf, optional, record, requireShape, type Shape } from '../../base/shape.js';
import { integrate } from '../../numeric/integrator/integrate.js';
import { recorder } from '../../numeric/integrator/recorder.js';
import { durationOf, firstStep, type MotionOptions, partsOf, toleranceOf } from '../input/options.js';
import type { BristleFriction } from '../shock/bristle-friction.js';
import { bristleFrictionShape, requireBristles } from '../shock/bristle-friction.js';
import { bindChambers } from '../shock/chambers.js';
import { requireMovingShock, roomTolerance } from '../shock/check-shock.js';
import type { MovingShock } from '../shock/moving-shock.js';
import { roomAtRest } from '../shock/rest-room.js';
import { contactAt } from './contact.js';
import { type Corner, cornerShape, requireCorner } from './corner.js';
import { type BoundCorner, type CornerModes, cornerEquation } from './corner-equation.js';
import { type CornerHistory, cornerEvents } from './corner-events.js';
import { type CornerOutcome, cornerOutcome } from './corner-outcome.js';
import { cornerRecorded, cornerWriter } from './corner-record.js';
import { staticTravel, travelAtLoad } from './corner-rest.js';
import { cornerTracer } from './corner-trace.js';
import { type CornerEvent, cornerEventShape, type Ground, groundOf } from './ground.js';
import { settling } from './settling.js';
import { spent } from './spent.js';

/**
 * How a corner is moved.
 *
 * @public
 */
export interface CornerOptions extends MotionOptions {
  /** How long to follow it [s], above 0 to 60; 1 by default. */
  readonly duration?: number;
  /** Friction that sticks, in place of the smooth law of the seals: for where a shaft stays put or creeps. */
  readonly bristles?: BristleFriction;
  /**
   * Until when a landing is followed, where that comes before the duration: `deepest`, once what is left of its energy cannot press the shaft in as far as it was;
   * `touched`, then or where the bump stop is touched. Means, settling and what happens are those of the time followed.
   */
  readonly until?: 'deepest' | 'touched';
}

/** Form of {@link CornerOptions}. */
export const cornerOptionsShape: Shape = {
  duration: optional('s'),
  bristles: optional(bristleFrictionShape),
  until: optional(oneOf('deepest', 'touched')),
  tolerance: optional(''),
  parts: optional(''),
};

const defaultParts = 400;
const defaultDuration = 1;

/** Steps of a run at least, so that sums over them stay true at rest. */
const leastSteps = 40;

/** State and travel at the start, from which the modes follow. */
interface Start {
  readonly travel: number;
  readonly wheel: number;
  readonly speed: number;
}

/**
 * Follows one corner of the car through a landing or over uneven ground.
 *
 * Body: `m z'' = R T − m g`; wheel: `m z'' = N − R T − m g`; the shock moves by `x = R (z_wheel − z_body)`; `T` is the force of shock,
 * spring and stops, `N` that of the tyre, which ends where its damping would have to pull.
 *
 * @param shock - from `movingShock`, or any other with its sizes in their ranges
 * @param corner - masses and rates above 0
 * @param event - drop height 0 to 3 m, or the ground
 * @param options - duration, tolerance, parts of the trace, friction that sticks
 * @throws InputError for an input outside its range, or where the gas has no room left on the way
 * @throws IntegrationError where the equations cannot be followed
 * @public
 */
export function moveCorner(
  shock: MovingShock,
  corner: Corner,
  event: CornerEvent,
  options: CornerOptions = {},
): CornerOutcome {
  requireShape(
    { shock, corner, event, options },
    { shock: madeWith('passage'), corner: record, event: cornerEventShape, options: cornerOptionsShape },
  );
  requireShape(corner, cornerShape);
  requireMovingShock(shock);
  requireCorner(corner, shock.stroke);
  const ground = groundOf(event);
  const relative = toleranceOf(options);
  const duration = durationOf(options.duration ?? defaultDuration);
  const parts = partsOf(options, defaultParts);
  const { bristles, until } = options;
  if (until !== undefined && event.kind !== 'landing')
    throw new InputError({ field: 'until', value: until, accepted: 'nothing but with a landing' });
  if (bristles !== undefined) requireBristles(bristles);
  const chambers = bindChambers(shock);
  const restTravel = staticTravel(shock, chambers, corner);
  const start: Start =
    event.kind === 'landing'
      ? {
          travel: travelAtLoad(shock, chambers, corner, 0),
          wheel: 0,
          speed: -landingSpeed(event.dropHeight),
        }
      : { travel: restTravel, wheel: -staticTyre(corner), speed: 0 };
  const modes = modesAt(corner, ground, start);
  const bound: BoundCorner = {
    shock,
    chambers,
    corner,
    ground,
    modes,
    ...(bristles === undefined ? {} : { bristles }),
  };
  const equation = cornerEquation(bound);
  const history: CornerHistory = { tyreUnloads: [], liftOffs: [], touchDowns: [], bottomings: [], slaps: [] };
  const write = cornerWriter(bound, equation);
  const { size } = equation.equation;
  const watch = recorder(size, cornerRecorded.count, cornerRecorded.peaks, write);
  const tracer = cornerTracer(duration, parts, size, write);
  const settle = settling(size, corner.motionRatio, restTravel);
  const isSpent = spent(bound, staticTyre(corner));
  const body = start.wheel - start.travel / corner.motionRatio;
  const state = [roomAtRest(shock, chambers, start.travel), body, start.speed, start.wheel, start.speed];
  const length = 1e-2 * relative;
  const absolute = [roomTolerance(shock, relative), length, relative, length, relative];
  const {
    time,
    steps,
    state: end,
  } = integrate(equation.equation, {
    from: 0,
    to: duration,
    state: bristles === undefined ? state : [...state, 0],
    relative,
    absolute: bristles === undefined ? absolute : [...absolute, 1e-5 * relative],
    firstStep,
    longestStep: Math.min(ground.longestStep, duration / leastSteps),
    knots: ground.knots,
    events: cornerEvents(bound, history),
    onStep: (step) => {
      watch.observe(step);
      tracer.observe(step);
      settle.observe(step);
      if (until === 'touched' && history.bottomings.length > 0) return true;
      return until !== undefined && isSpent(step.end, watch.course(cornerRecorded.travel).largest);
    },
  });
  return cornerOutcome({
    bound,
    watch,
    history,
    trace: tracer.until(time),
    settled: settle.found(),
    end,
    duration: time,
    restTravel,
    steps,
  });
}

/**
 * Speed at which something lands that falls from a height [m/s], `sqrt(2 g h)`, the air left out.
 *
 * @param dropHeight - [m], 0 or more
 * @example
 * ```ts
 * landingSpeed(0.5); // 3.132: √(2 · 9.80665 · 0.5), by hand
 * ```
 * @public
 */
export function landingSpeed(dropHeight: number): number {
  requireNotNegative(dropHeight, 'dropHeight', 'm');
  return Math.sqrt(2 * standardGravity * dropHeight);
}

/** How far the tyre is pressed at rest, of a tyre that may stiffen [m]. */
function staticTyre({ sprungMass, wheelMass, tyre }: Corner): number {
  const load = (sprungMass + wheelMass) * standardGravity;
  const { stiffness, progression = 0 } = tyre;
  let depth = load / stiffness;
  // Convex: Newton falls onto the root from above.
  for (let i = 0; i < 50 && progression > 0; i++) {
    const force = (stiffness + progression * depth * depth) * depth;
    depth -= (force - load) / (stiffness + 3 * progression * depth * depth);
  }
  return depth;
}

function modesAt(corner: Corner, ground: Ground, { travel, wheel, speed }: Start): CornerModes {
  ground.evaluate(0);
  return {
    oil: { isOpen: false, cavities: [] },
    tyre: contactAt(corner.tyre, ground.height - wheel, ground.slope - speed),
    bump: contactAt(corner.bumpStop, travel - corner.bumpStop.from, 0),
    droop: contactAt(corner.droopStop, -travel, 0),
  };
}
