import { InputError } from '../../lib/base/input-error.js';
import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import type { DamperModel } from '../../lib/damper/damper-model.js';
import { forceAfterTravel, forcesAlongTravel } from '../../lib/damper/force-after-travel.js';
import type { DamperForce } from '../../lib/damper/force-point.js';
import { IntegrationError } from '../../lib/numeric/integrator/integration-error.js';
import { millilitres } from './bench-wording.js';
import { shaftSpeed } from './wording.js';

/** Travel of the inner line of every picture beyond the onset [m]. */
const usualTravel = 4e-3;

/** A shaft is not followed closer to where it locks, as a part of the way to there. */
const nearestLock = 0.999;

/** Where a stroke begins, how far the picture follows it, and how much of it is left [m]. */
export interface Stroke {
  readonly position: number;
  readonly travel: number;
  readonly rest: number;
}

/** A stroke at a speed: inward from fully out, as a landing begins, outward from all the way in. */
export function strokeOf({ damper, gas, shaftArea }: DamperModel, speed: number): Stroke {
  // Warm oil may leave the gas too little room for the last of the stroke.
  const end = Math.min(damper.stroke, (nearestLock * gas.capacity) / shaftArea);
  return { position: speed > 0 ? 0 : end, travel: Math.min(usualTravel, end / 2), rest: end };
}

/** Forces of a stroke at one speed: at its start, after the travel that pages name, at its end. */
export interface StrokeForces {
  readonly start: DamperForce;
  readonly afterTravel: DamperForce;
  readonly end: DamperForce;
  /** Whether a cavity opens on the way. */
  readonly cavitates: boolean;
}

export function strokeForces(
  model: DamperModel,
  speed: number,
  stroke = strokeOf(model, speed),
): StrokeForces {
  const { position, travel, rest } = stroke;
  const [start, afterTravel, end] = followed(model, speed, () =>
    forcesAlongTravel(model, { speed, position }, [0, travel, rest]),
  );
  if (start === undefined || afterTravel === undefined || end === undefined)
    throw new RangeError('three forces were asked for');
  return {
    start,
    afterTravel,
    end,
    cavitates: [start, afterTravel, end].some(({ cavitating }) => cavitating),
  };
}

/** Where the gas runs out under shaft and cavity together the stroke cannot be followed to its end: the oil locks. */
function followed<Result>({ gas }: DamperModel, speed: number, follow: () => Result): Result {
  try {
    return follow();
  } catch (error) {
    if (!(error instanceof IntegrationError)) throw error;
    throw new InputError({
      field: 'compensator',
      value: millilitres(gas.capacity),
      accepted: `room for shaft and cavity together on a stroke at ${shaftSpeed(Math.abs(speed))}: more gas, less oil, or a lower speed`,
    });
  }
}

/** Damping of a stroke [N]: that of whole oil below the onset, beyond it that after the travel, with the band from the start to the end of the stroke. */
export interface DampingSpan {
  readonly damping: number;
  readonly low?: number;
  readonly high?: number;
}

/** Worked out once for each model and speed, since two pictures show it. */
export const dampingSpan = knownBySpeed((model, speed): DampingSpan => {
  const whole = wholeOil(model, speed);
  if (whole !== undefined) return { damping: whole };
  const { start, afterTravel, end, cavitates } = strokeForces(model, speed);
  if (!cavitates) return { damping: afterTravel.dampingForce };
  const forces = [start.dampingForce, afterTravel.dampingForce, end.dampingForce];
  return { damping: afterTravel.dampingForce, low: Math.min(...forces), high: Math.max(...forces) };
});

/** The same without its band, for a line among many: nobody asks how the stroke ends. */
export const dampingAfterTravel = knownBySpeed((model, speed): DampingSpan => {
  const whole = wholeOil(model, speed);
  if (whole !== undefined) return { damping: whole };
  const { position, travel } = strokeOf(model, speed);
  const { dampingForce } = followed(model, speed, () => forceAfterTravel(model, { speed, position }, travel));
  return { damping: dampingForce };
});

function knownBySpeed(
  make: (model: DamperModel, speed: number) => DampingSpan,
): (model: DamperModel, speed: number) => DampingSpan {
  const known = new WeakMap<DamperModel, Map<number, DampingSpan>>();
  return (model, speed) => {
    const spans = known.get(model) ?? new Map<number, DampingSpan>();
    known.set(model, spans);
    const span = spans.get(speed) ?? make(model, speed);
    spans.set(speed, span);
    return span;
  };
}

/** Damping where no cavity can open, since the speed is below the onset of a shaft that is fully out; undefined beyond it. */
function wholeOil(model: DamperModel, speed: number): number | undefined {
  if (speed === 0) return 0;
  if (mayCavitate(model, speed)) return undefined;
  return damperForce(model, { speed, position: model.damper.stroke / 2 }).dampingForce;
}

/** Whether the speed is beyond the onset where the gas is weakest, with the shaft fully out. */
function mayCavitate(model: DamperModel, speed: number): boolean {
  const onset = cavitationOnset(model, speed > 0 ? 'compression' : 'rebound', 0);
  return onset !== undefined && Math.abs(speed) > Math.abs(onset.speed);
}
