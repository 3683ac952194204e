import { standardGravity } from '../../lib/base/constants.js';
import { InputError } from '../../lib/base/input-error.js';
import { creepingDampingCoefficient } from '../../lib/damper/force-point.js';
import { frictionFromTwoWeights } from '../../lib/fill/friction/two-weights.js';
import type { DropReading, Reading, ScaleReading } from '../../lib/measure/reading/reading.js';
import { meanTime } from '../../lib/measure/reading/require-reading.js';
import type { Block } from '../../lib/page/index.js';
import type { MeasurementPart } from '../../lib/parts/parts.js';
import { formatQuantity, roundedText } from '../../lib/units/index.js';
import { millimetres } from '../base/bench-wording.js';
import { plusMinus } from '../base/measured-shocks.js';
import { readingWords } from '../base/readings-table.js';
import { seconds } from '../base/wording.js';
import { type BuiltShock, damperAt } from './built-shock.js';
import { type HangTime, hangTime, timedStretch } from './hang-test.js';
import { type Choices, pushAt, type SheetNumbers } from './numbers.js';

/** Standard error of one time by hand [s], and how many of them a reading may be off by chance. */
const handError = 0.1;
const byChance = 2;

/** Times that a reader took; 0 where none was taken. */
export interface TakenTimes {
  readonly weightTime: number;
  readonly lighterTime: number;
}

const newtons = (force: number): string => formatQuantity(force, 'force', 'N', 2);

/** Where a number lies against what the plan allows: inside, outside by no more than its own error, or outside. */
function place(
  value: number,
  low: number,
  high: number,
  error: number,
): 'inside' | 'near' | 'below' | 'above' {
  if (value >= low && value <= high) return 'inside';
  if (value >= low - error && value <= high + error) return 'near';
  return value < low ? 'below' : 'above';
}

/** A time against the plan, in words. */
function timeSentence(what: string, time: number, error: number, plan: HangTime): string {
  const allowed = `${seconds(plan.low)} to ${seconds(plan.high)}`;
  // As the reader sees them, so that equal numbers are equal.
  const [read, low, high] = [time, plan.low, plan.high].map((value) => Number(value.toPrecision(3)));
  switch (place(read ?? 0, low ?? 0, high ?? 0, error)) {
    case 'inside':
      return `${what} took ${seconds(time)}: within the ${allowed} of the plan.`;
    case 'near':
      return `${what} took ${seconds(time)}: outside the ${allowed} of the plan by less than the error of the time, ${seconds(error)}. Time it again.`;
    case 'below':
      return `${what} took ${seconds(time)}: quicker than the ${allowed} of the plan. Thinner or warmer oil, larger holes, or less friction.`;
    case 'above':
      return `${what} took ${seconds(time)}: slower than the ${allowed} of the plan. Thicker or colder oil, smaller holes or burrs, or more friction.`;
  }
}

/** Friction and damping of both weights, against the plan. */
function twoWeightsSentence(built: BuiltShock, choices: Choices, taken: TakenTimes): string {
  const { from, to } = timedStretch(built);
  const gasForce = pushAt(built, (from + to) / 2, choices.bench) ?? 0;
  const pull = (mass: number, time: number) => ({ pull: mass * standardGravity, time });
  try {
    const { friction, frictionError, dampingCoefficient, dampingError } = frictionFromTwoWeights(
      pull(choices.lighterWeight, taken.lighterTime),
      pull(choices.weight, taken.weightTime),
      { length: from - to, gasForce, timeError: handError },
    );
    const { low, high } = built.build.shock.seal;
    const ends = [low.kineticForce, high.kineticForce] as const;
    const planned = ends[0] === ends[1] ? newtons(ends[0]) : `${newtons(ends[0])} to ${newtons(ends[1])}`;
    const error = byChance * frictionError;
    const known =
      friction < error ? `below ${newtons(Math.max(friction, 0) + error)}` : plusMinus(friction, error, 'N');
    const verdict = {
      inside: 'as planned',
      near: 'as planned, as far as these times tell',
      below: 'less than planned: a loose seal',
      above: 'more than planned: a tight or dry seal',
    }[place(friction, ends[0], ends[1], error)];
    return `Both weights together: friction ${known}, ${verdict} (${planned}); slow damping ${roundedText(dampingCoefficient, 3)} ± ${roundedText(byChance * dampingError, 2)} N·s/m, ${dampingVerdict(built, choices, dampingCoefficient, byChance * dampingError)}.`;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    if (error.field !== 'heavier.time') throw error;
    return `Both weights together tell nothing: the heavier one must be quicker by more than ${seconds(3 * Math.SQRT2 * handError)}, three times what the hand’s errors explain. Hang a heavier weight, or time a longer stretch.`;
  }
}

function dampingVerdict(built: BuiltShock, choices: Choices, found: number, error: number): string {
  const { bench, holeTolerance, temperatureTolerance } = choices;
  const at = (sign: 1 | -1): number =>
    creepingDampingCoefficient(
      damperAt(built, bench + sign * temperatureTolerance, {
        bound: sign > 0 ? 'low' : 'high',
        holes: sign * holeTolerance,
      }),
    );
  const [low, high] = [at(1), at(-1)];
  const planned = `${roundedText(low, 3)} to ${roundedText(high, 3)} N·s/m`;
  return {
    inside: `as planned (${planned})`,
    near: `as planned (${planned}), as far as these times tell`,
    below: `less than planned (${planned}): thinner or warmer oil, or larger holes`,
    above: `more than planned (${planned}): thicker or colder oil, or smaller holes`,
  }[place(found, low, high, error)];
}

/** A weight of the parts file against the plan, over its own stretch at its own temperature. */
function dropSentence(
  built: BuiltShock,
  choices: Choices,
  shock: string,
  drop: DropReading,
): readonly string[] {
  const tolerances = { hole: choices.holeTolerance, temperature: choices.temperatureTolerance };
  const { from, to, mass, times, timing, uncertainty } = drop;
  if (from < to || from > built.build.shock.stroke) return [];
  const plan = hangTime(built, drop.temperature, mass, tolerances, { from, to });
  if (typeof plan === 'string') return [];
  // All times by hand share half as much again, however many they are.
  const shared = timing === 'hand' ? handError / 2 : 0;
  const error = byChance * Math.hypot(uncertainty / Math.sqrt(times.length), shared);
  const count = times.length === 1 ? 'once' : `mean of ${times.length} times`;
  return [timeSentence(`${shock}${readingWords(drop)}, ${count}`, meanTime(times), error, plan)];
}

/** A reading of the scale against the plan. */
function scaleSentence(built: BuiltShock, shock: string, scale: ScaleReading): readonly string[] {
  const gas = pushAt(built, scale.position, scale.temperature);
  if (gas === undefined) return [];
  const { low, high } = built.build.shock.seal;
  const sign = scale.moving === 'in' ? 1 : -1;
  const ends = [gas + sign * low.kineticForce, gas + sign * high.kineticForce];
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const error = byChance * scale.uncertainty;
  const allowed = least === most ? newtons(least) : `${newtons(least)} to ${newtons(most)}`;
  const verdict = {
    inside: `as planned (${allowed})`,
    near: `as planned (${allowed}) within the error of the scale, ${newtons(error)}`,
    below: `less than planned (${allowed})`,
    above: `more than planned (${allowed})`,
  }[place(scale.force, least, most, error)];
  const way = scale.moving === 'in' ? 'pushing in' : 'letting out';
  return [
    `${shock}the scale, ${way} ${millimetres(scale.position)} in, shows ${newtons(scale.force)}: ${verdict}.`,
  ];
}

function fileSentences(
  built: BuiltShock,
  choices: Choices,
  measured: readonly MeasurementPart[],
): readonly string[] {
  const own = measured.filter(({ build }) => build.name === built.build.name);
  return own.flatMap(({ shock, readings }) => {
    const named = shock === undefined ? '' : `${shock}, `;
    return readings.flatMap((reading: Reading) => {
      if (reading.kind === 'drop') return dropSentence(built, choices, named, reading);
      return reading.kind === 'scale' ? scaleSentence(built, named, reading) : [];
    });
  });
}

/**
 * What was read on the finished shock against what the plan says: the times of the page's own weights, and the weights and scales of the parts file. Nothing where
 * nothing was read.
 */
export function readingBlocks(
  { built, hung, hungLighter }: SheetNumbers,
  choices: Choices & TakenTimes,
  measured: readonly MeasurementPart[],
): readonly Block[] {
  const error = byChance * handError;
  const own = [
    { time: choices.weightTime, plan: hung, mass: choices.weight },
    { time: choices.lighterTime, plan: hungLighter, mass: choices.lighterWeight },
  ].flatMap(({ time, plan, mass }) =>
    time === 0 || typeof plan === 'string'
      ? []
      : [timeSentence(formatQuantity(mass, 'mass', 'g', 4), time, error, plan)],
  );
  const both =
    choices.weightTime > 0 && choices.lighterTime > 0 ? [twoWeightsSentence(built, choices, choices)] : [];
  const items = [...own, ...both, ...fileSentences(built, choices, measured)];
  if (items.length === 0) return [];
  return [
    { kind: 'heading', text: 'What you read, against the plan' },
    { kind: 'list', items },
  ];
}
