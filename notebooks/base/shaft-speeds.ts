import { InputError } from '../../lib/base/input-error.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fastestRebound } from '../../lib/damper/driven-speed.js';
import type { SpeedWeights } from '../../lib/decisions/match/speed-weights.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { quantity } from '../../lib/page/parameters/declare-parameters.js';
import type { Build, Parts } from '../../lib/parts/parts.js';
import { benchTemperature } from './day.js';
import { knownOil, knownShock } from './known.js';
import { speed } from './quantities.js';
import { isBelow } from './slow-below-fast.js';
import { shaftSpeed } from './wording.js';

/** Speed out where the file names no spring [m/s]: a guess. */
const guessedRebound = 0.3;

/** Three shaft speeds that happen to a build [m/s], the same on every page. */
export interface ShaftSpeeds {
  /** Roll and pitch: a tenth of the middle one. */
  readonly slow: number;
  /** As fast as spring and gas can drive the shaft out from all the way in. */
  readonly middle: number;
  /** As fast as a landing from a hand's width drives it in. */
  readonly fast: number;
}

/** The two that ask for no landing. */
export type SpringSpeeds = Pick<ShaftSpeeds, 'slow' | 'middle'>;

/**
 * Fastest rebound that spring and gas of a build can drive [m/s, positive], from all the way in and with the spring just holding at full extension; `undefined` where the file
 * names no spring, or where the oil fills the shock with its shaft fully out.
 */
export function fastestReboundOf(build: Build, temperature: number): number | undefined {
  if (build.spring === undefined) return undefined;
  const { damper } = knownShock(build);
  const model = damperModel(damper, fluidAt(knownOil(build.oil.definition), temperature));
  // A shock that is too warm to go all the way in rebounds from a little further out.
  const room = (0.999 * model.gas.capacity) / model.shaftArea;
  if (room <= 0) return undefined;
  const position = Math.min(damper.stroke, room);
  return -fastestRebound(model, { force: build.spring.rate * position, position });
}

/** A speed rounded as a reader would choose it. */
function rounded(value: number, step: number): number {
  return Math.max(step, Number((Math.round(value / step) * step).toPrecision(6)));
}

/** The same for a fast one. */
export const roundedFast = (value: number): number => rounded(value, 0.05);

/** Temperature at which the speeds of a build are looked at [K]. */
export const speedTemperature = (build: Build | undefined): number =>
  build?.wanted?.temperature ?? benchTemperature;

/** The slow and the middle speed of a build, rounded as a reader would choose them. */
export function springSpeedsOf(build: Build | undefined): SpringSpeeds {
  const rebound = (build && fastestReboundOf(build, speedTemperature(build))) ?? guessedRebound;
  const middle = rounded(rebound, 0.01);
  return { slow: rounded(middle / 10, 0.005), middle };
}

const ofFile = ({ builds: [build] }: Parts): SpringSpeeds => springSpeedsOf(build);

/** The controls of the slow and the middle speed: one declaration for every page. They begin at the speeds of the file's first build. */
export const slowSpeed = quantity({
  ...speed,
  label: 'Slow',
  help: 'A slow shaft speed: roll and pitch.',
  default: 30,
  inFile: (parts) => ofFile(parts).slow,
});
export const middleSpeed = quantity({
  ...speed,
  label: 'Middle',
  help: 'A middle shaft speed: as fast as the spring of the first build drives it out.',
  default: 300,
  inFile: (parts) => ofFile(parts).middle,
});
/** Refuses speeds that do not rise. */
export function requireRisingSpeeds({ slow, middle, fast }: ShaftSpeeds): void {
  for (const [field, value, above, limit] of [
    ['slow', slow, 'middle', middle],
    ['middle', middle, 'fast', fast],
  ] as const) {
    if (isBelow(value, limit)) continue;
    throw new InputError({
      field,
      value: shaftSpeed(value),
      accepted: `below ${above}, ${shaftSpeed(limit)}`,
    });
  }
}

/** The motions that a decision counts, all alike: compression at the three speeds, rebound at the two that a spring can drive. */
export function speedsThatCount({ slow, middle, fast }: ShaftSpeeds): SpeedWeights {
  return [slow, middle, fast, -slow, -middle].map((one) => ({ speed: one, weight: 1 }));
}

/** Those motions in words, for assumptions. */
export const countedText = ({ slow, middle, fast }: ShaftSpeeds): string =>
  `Compression at ${shaftSpeed(slow)}, ${shaftSpeed(middle)} and ${shaftSpeed(fast)} and rebound at ${shaftSpeed(slow)} and ${shaftSpeed(middle)} count alike; "off by" is the typical deviation over them.`;
