import { InputError } from '../../lib/base/input-error.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { type WarmingResult, warmingRun } from '../../lib/motion/heat/warming-run.js';
import type { Build } from '../../lib/parts/parts.js';
import { knownOil, knownShock } from '../base/known.js';
import { celsius } from '../base/wording.js';
import { bodyGuess, type Guessed, type WarmBody } from './body.js';
import type { TrackHeat } from './track.js';

/** What is driven, where and how long. */
export interface Asked {
  readonly build: Build;
  /** Air and oil at the start [K]. */
  readonly air: number;
  /** [s] */
  readonly run: number;
  /** [m/s] */
  readonly wind: number;
  /** Shaft speed at which damping is looked at [m/s]. */
  readonly middle: number;
}

/** A build after a run and as long a rest. */
export interface Warmed {
  readonly result: WarmingResult;
  readonly body: WarmBody;
  /** Wind that reached it while driving [m/s]. */
  readonly wind: number;
  /** Index of the end of the run. */
  readonly runEnd: number;
  /** Speed at which damping is compared [m/s]. */
  readonly speed: number;
  /** Damping over that at the start at a temperature [K], mean of in and out. */
  readonly left: (temperature: number) => number;
  readonly assumptions: readonly string[];
}

/** Oil that hot is beyond every law here, and beyond every race [K]. */
const hottest = 423.15;

/** Warms a build over a run and lets it rest in still air. */
export function warmed(heat: TrackHeat, { build, air, run, wind, middle }: Asked, guessed: Guessed): Warmed {
  const assembled = knownShock(build);
  const oil = knownOil(build.oil.definition);
  const body = bodyGuess(assembled, fluidAt(oil, air).density, guessed);
  const result = warmingRun({
    body: body.body,
    heatCapacity: body.heatCapacity,
    airTemperature: air,
    startTemperature: air,
    parts: [
      { duration: run, windSpeed: body.windShare * wind, power: (t) => heat.bumps(t) + heat.landings(t) },
      { duration: run, windSpeed: 0, power: () => 0 },
    ],
  });
  if (result.highestTemperature > hottest)
    throw new InputError({
      field: 'bumps',
      value: `${Number(heat.bumps(air).toPrecision(2))} W of them and ${Number(heat.landings(air).toPrecision(2))} W of landings`,
      accepted: `fewer or lower ones: the oil would pass ${celsius(hottest)}`,
    });
  const damping = (temperature: number): number => {
    const model = damperModel(assembled.damper, fluidAt(oil, temperature));
    const at = (one: number) => damperForce(model, { speed: one, position: 0 }).dampingForce;
    return at(middle) - at(-middle);
  };
  const atStart = damping(air);
  return {
    result,
    body,
    wind: body.windShare * wind,
    runEnd: (result.times.length - 1) / 2,
    speed: middle,
    left: (temperature) => damping(temperature) / atStart,
    assumptions: assembled.assumptions,
  };
}

/** Temperature at the end of the run [K]. */
export const atRunEnd = ({ result, runEnd }: Warmed): number => result.temperatures[runEnd] ?? Number.NaN;
