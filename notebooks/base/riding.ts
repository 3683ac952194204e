import { standardGravity } from '../../lib/base/constants.js';
import { cornerMotion, dampingRatio, type SpringCorner } from '../../lib/decisions/pair/setting.js';
import { lockPosition } from '../../lib/fill/chamber/pressure-inside.js';
import { staticForce } from '../../lib/fill/chamber/static-force.js';
import { bracketedRoot } from '../../lib/numeric/root-finding.js';
import type { CornerOfCar, SpringPart } from '../../lib/parts/parts.js';
import { type BuiltShock, warmedTo } from '../build-sheet/built-shock.js';
import { possibleCorners } from './possible-corners.js';
import { type Span, spanOf } from './span.js';

/** A corner at rest on its spring and its gas: what its collar does. Lengths [m]; friction left out. */
export interface Riding {
  /** Shaft in at rest where the spring just touches its seats with the shaft fully out. */
  readonly untouched: Span;
  /** How far the collar must press the spring with the shaft fully out for the wanted place; below 0 the spring must be loose by that much. */
  readonly collar: Span;
  /** Length of the spring at the wanted place: its free length less collar and travel. */
  readonly springLength: Span;
  /** How far friction lets the place differ, either way. */
  readonly friction: number;
  /** Undamped frequency [Hz]. */
  readonly frequency: Span;
  /** Damping ratio on a damping [N·s/m]. */
  readonly ratio: (dampingCoefficient: number) => Span;
  readonly guessed: boolean;
}

/** Pushes the shaft out [N]: the gas of a shock at rest, its oil as warm as stated; the exponent is 1, slow, unless given. */
export function pushOf(built: BuiltShock, temperature: number, polytropicExponent = 1) {
  const condition = { ...warmedTo(built, temperature), polytropicExponent };
  const lock = built.shock.gasVolume === 0 ? 0 : lockPosition(built.shock, condition);
  return {
    /** The furthest that the shaft goes [m]. */
    end: Math.max(0, Math.min(built.shock.chamber.stroke, 0.999 * lock)),
    at: (position: number): number => staticForce(built.shock, position, condition),
  };
}

/** How far the collar presses a spring [m] so that a corner rests with its shaft at a place. */
export function collarFor(
  { sprungMass, motionRatio }: CornerOfCar,
  rate: number,
  place: number,
  push: number,
): number {
  return ((sprungMass * standardGravity) / motionRatio - push) / rate - place;
}

/** A build on its spring, to rest with its shaft at a place; `undefined` where the gas has no room there. */
export function ridingOf(
  built: BuiltShock,
  spring: SpringPart,
  temperature: number,
  place: number,
): Riding | undefined {
  const push = pushOf(built, temperature);
  if (place > push.end) return undefined;
  const { likely, deep, high, guessed } = possibleCorners(built.build);
  const each = (of: (corner: SpringCorner) => number): Span =>
    spanOf([likely, deep, high].map((corner) => of({ ...corner, springRate: spring.rate })));
  const collar = each((corner) => collarFor(corner, spring.rate, place, push.at(place)));
  return {
    untouched: each((corner) => restAt(corner, push)),
    collar,
    springLength: {
      typical: spring.freeLength - place - collar.typical,
      low: spring.freeLength - place - collar.high,
      high: spring.freeLength - place - collar.low,
    },
    friction: built.assembled.seal.typical.kineticForce / spring.rate,
    frequency: each((corner) => cornerMotion(corner).naturalFrequency),
    ratio: (coefficient) => each((corner) => dampingRatio(corner, coefficient)),
    guessed,
  };
}

/** Where spring and gas carry a corner [m], the spring just touching with the shaft fully out; an end of the way where they carry it nowhere between. */
function restAt(
  { sprungMass, motionRatio, springRate }: SpringCorner,
  { at, end }: ReturnType<typeof pushOf>,
): number {
  const load = (sprungMass * standardGravity) / motionRatio;
  const excess = (place: number): number => springRate * place + at(place) - load;
  if (excess(0) >= 0) return 0;
  return excess(end) <= 0 ? end : bracketedRoot(excess, 0, end, 'shaft at rest').root;
}
