import { requireFinite, requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { keptResults } from '../../base/kept-results.js';
import { listOf, record, requireShape, type Shape } from '../../base/shape.js';
import type { Damper } from '../../damper/damper.js';
import { bindDamper } from '../../damper/damper-model.js';
import { type BoundMismatch, boundMismatch } from '../match/bound-mismatch.js';
import {
  logMismatch,
  requireWantedDamping,
  type WantedDamping,
  wantedDampingShape,
} from '../match/damping-mismatch.js';
import type { Search } from '../search/search.js';
import { cheapestPlaces } from './day-program.js';
import { type Bottle, bottleShape, type FillChoice, fillChoices, stateOfFill } from './fill-choice.js';
import { type FillEnds, fillEnds } from './fill-ends.js';

/**
 * Oil temperature at a time of the day.
 *
 * @public
 */
export interface DayTemperature {
  /** Time since midnight [s], rising through the day. */
  readonly time: number;
  /** Oil temperature [K], 200 to 600. */
  readonly temperature: number;
}

/** Form of {@link DayTemperature}. */
export const dayTemperatureShape: Shape = { time: 's', temperature: 'K' };

/**
 * What to fill when: the question.
 *
 * @public
 */
export interface DayProblem {
  readonly damper: Damper;
  readonly wanted: WantedDamping;
  readonly bottles: readonly Bottle[];
  readonly temperatures: readonly DayTemperature[];
  /** Typical mismatch from which a rebuild is worth its work, above 0; 0.1 stands for 10 %. */
  readonly worthwhile: number;
  /** In how many parts blends are measured out, 1 (no blends) to 20. */
  readonly parts: number;
}

/** Form of {@link DayProblem}. */
export const dayProblemShape: Shape = {
  damper: record,
  wanted: wantedDampingShape,
  bottles: listOf(bottleShape),
  temperatures: listOf(dayTemperatureShape),
  worthwhile: '',
  parts: '',
};

/**
 * One time of the plan.
 *
 * @public
 */
export interface DayStep extends DayTemperature {
  readonly choice: FillChoice;
  /** True where the shock is rebuilt before this time. */
  readonly rebuilt: boolean;
  /** Typical mismatch of the damping, with the doubt about the blending rules: 0.1 stands for 10 %. */
  readonly mismatch: number;
  /** Mean ratio of damping to wanted damping, below 1 where too soft, with the fill of the plan. */
  readonly ratio: number;
  /** The same just before a rebuild. */
  readonly ratioBefore?: number;
  /** The same with the fill of the morning kept all day. */
  readonly unchangedRatio: number;
  readonly unchangedMismatch: number;
}

/**
 * What to fill when: the answer.
 *
 * @public
 */
export interface DayPlan {
  readonly steps: readonly DayStep[];
  /** Number of rebuilds after the first fill. */
  readonly rebuilds: number;
  /** First time [s] at which the fill of the morning is off by the worthwhile mismatch; left out where it never is. */
  readonly worthwhileFrom?: number;
}

function requireDayProblem({ wanted, bottles, temperatures, worthwhile }: DayProblem): void {
  requireWantedDamping(wanted);
  requirePositive(worthwhile, 'worthwhile', '');
  if (bottles.length === 0) throw new InputError({ field: 'bottles', value: 0, accepted: '1 or more' });
  if (temperatures.length === 0)
    throw new InputError({ field: 'temperatures', value: 0, accepted: '1 or more' });
  temperatures.forEach(({ time, temperature }, index) => {
    requireFinite(time, `temperatures[${index}].time`, 's');
    requireWithin(temperature, 200, 600, `temperatures[${index}].temperature`, 'K');
    const before = temperatures[index - 1];
    if (before !== undefined && time <= before.time)
      throw new InputError({
        field: `temperatures[${index}].time`,
        value: time,
        unit: 's',
        accepted: `after ${before.time}`,
      });
  });
}

/** For each temperature the mismatch of every fill, as far as it was asked for. */
type MismatchOfFills = (index: number) => readonly number[];

/** As many as there are builds on a page, twice. */
const kept = keptResults<readonly Bottle[], MismatchOfFills>(12);

/**
 * Mismatch of every fill at a place of the list of temperatures, the worst over the blending rules; the damper is checked and bound once. What a rebuild is worth has no part in it: a page on
 * which only that moves finds it kept.
 */
function mismatchOfFills({ damper, bottles, wanted, temperatures, parts }: DayProblem): MismatchOfFills {
  return kept(bottles, { damper, wanted, temperatures, parts }, () => {
    const [first] = temperatures;
    const example = stateOfFill(bottles, { first: 0, secondShare: 0 }, first?.temperature ?? Number.NaN);
    const at = boundMismatch(damper, wanted, {
      kinematicViscosity: example.typical,
      density: example.density,
    });
    const rows = temperatures.map(({ temperature }): (() => readonly number[]) => {
      let row: readonly number[] | undefined;
      return () => {
        row ??= mismatches(fillEnds(bottles, parts, temperature), at);
        return row;
      };
    });
    return (index) => rows[index]!();
  });
}

function mismatches({ low, high, density }: FillEnds, at: BoundMismatch): readonly number[] {
  return Array.from(low, (thin, place) => {
    const [thick, mass] = [high[place]!, density[place]!];
    return Math.expm1(thin === thick ? at(thin, mass) : Math.max(at(thin, mass), at(thick, mass)));
  });
}

/** Mean ratio of the damping of a fill to the wanted one, by the default blending rule. */
function meanRatio({ damper, bottles, wanted }: DayProblem, choice: FillChoice, temperature: number): number {
  const { typical, density } = stateOfFill(bottles, choice, temperature);
  return Math.exp(logMismatch(bindDamper(damper, { kinematicViscosity: typical, density }), wanted).mean);
}

/** Most times between two readings. */
const mostSteps = 10_000;

/**
 * Temperatures between those listed, straight from one to the next, so that a plan holds between the readings too.
 *
 * @param readings - times [s] that rise, temperatures [K]
 * @param longest - largest step of time [s], above 0
 * @throws InputError for a step that is not above 0
 * @public
 */
export function betweenReadings(
  readings: readonly DayTemperature[],
  longest: number,
): readonly DayTemperature[] {
  requireShape({ readings }, { readings: listOf(dayTemperatureShape) });
  requirePositive(longest, 'longest', 's');
  return readings.flatMap((reading, index): readonly DayTemperature[] => {
    const next = readings[index + 1];
    if (next === undefined) return [reading];
    requireWithin(
      (next.time - reading.time) / longest,
      0,
      mostSteps,
      `readings[${index + 1}].time`,
      'longest',
    );
    const steps = Math.max(1, Math.ceil((next.time - reading.time) / longest));
    return Array.from({ length: steps }, (_, step) => ({
      time: reading.time + (step * (next.time - reading.time)) / steps,
      temperature: reading.temperature + (step * (next.temperature - reading.temperature)) / steps,
    }));
  });
}

/**
 * What to fill through a day: first as little mismatch above the worthwhile one as can be, then as few rebuilds, then as few mixed fills, then
 * the smallest mismatch. Exact, by dynamic programming over the times (Bellman 1957).
 *
 * @param problem - damper, wanted damping, bottles, temperatures of the day
 * @throws InputError for an input outside its range, for times that do not rise
 * @public
 */
export function* dayPlan(problem: DayProblem): Search<DayPlan> {
  requireShape({ problem }, { problem: dayProblemShape });
  requireDayProblem(problem);
  const { temperatures, worthwhile } = problem;
  const choices = fillChoices(problem.bottles, problem.parts);
  const mismatchesAt = mismatchOfFills(problem);
  const fitted: (readonly number[])[] = [];
  for (const index of temperatures.keys()) {
    fitted.push(mismatchesAt(index));
    yield (index + 1) / temperatures.length;
  }
  const mixed = choices.map(({ second }) => second !== undefined);
  const places = cheapestPlaces(fitted, mixed, worthwhile);
  const morning = places[0] ?? 0;
  const steps = temperatures.flatMap((at, index): DayStep[] => {
    const place = places[index] ?? 0;
    const [choice, now, unchanged] = [choices[place], fitted[index]?.[place], fitted[index]?.[morning]];
    if (choice === undefined || now === undefined || unchanged === undefined) return [];
    const before = places[index - 1];
    const rebuilt = before !== undefined && place !== before;
    const ratioOf = (fill: FillChoice | undefined) =>
      fill === undefined ? undefined : meanRatio(problem, fill, at.temperature);
    const ratioBefore = rebuilt ? ratioOf(choices[before]) : undefined;
    return [
      {
        ...at,
        choice,
        rebuilt,
        ...(ratioBefore === undefined ? {} : { ratioBefore }),
        mismatch: now,
        ratio: meanRatio(problem, choice, at.temperature),
        unchangedRatio: ratioOf(choices[morning]) ?? Number.NaN,
        unchangedMismatch: unchanged,
      },
    ];
  });
  const from = worthwhileTime(steps, worthwhile);
  const rebuilds = steps.filter(({ rebuilt }) => rebuilt).length;
  return { steps, rebuilds, ...(from === undefined ? {} : { worthwhileFrom: from }) };
}

/** Time at which the mismatch of the morning's fill crosses the worthwhile one, straight between the times given. */
function worthwhileTime(steps: readonly DayStep[], worthwhile: number): number | undefined {
  for (const [index, { time, unchangedMismatch }] of steps.entries()) {
    if (unchangedMismatch <= worthwhile) continue;
    const before = steps[index - 1];
    if (before === undefined) return time;
    const part = (worthwhile - before.unchangedMismatch) / (unchangedMismatch - before.unchangedMismatch);
    return before.time + part * (time - before.time);
  }
  return undefined;
}
