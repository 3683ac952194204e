import type { WarmingResult } from '../../lib/motion/heat/warming-run.js';
import { celsius, percent, shaftSpeed } from '../base/wording.js';
import type { TrackHeat } from './track.js';
import { type Asked, atRunEnd, type Warmed } from './warmed.js';

const kelvins = (difference: number): string => `${difference.toFixed(1)} K`;
const minutes = (time: number): string => `${Number((time / 60).toPrecision(2))} min`;

/** How warm, and how much damping is left. */
export function answerSentence(likely: Warmed, ends: readonly Warmed[], { build, air, run }: Asked): string {
  const rises = ends.map((one) => atRunEnd(one) - air);
  const end = atRunEnd(likely);
  const left = likely.left(end);
  const lost =
    left > 0.995
      ? 'and the damping is what it was'
      : `and ${percent(1 - left)} of the damping at ${shaftSpeed(likely.speed)} is gone`;
  return `In ${minutes(run)} the oil of ${build.name}, ${build.oil.name}, warms from ${celsius(air)} to ${celsius(end)}, ${kelvins(end - air)} above the air (${Math.min(...rises).toFixed(1)} to ${kelvins(Math.max(...rises))} by what nobody measured), ${lost}.`;
}

/** Time from the start of a stretch of the line until a temperature is passed [s]; undefined where it is not. */
export function timeAt(
  { times, temperatures }: Pick<WarmingResult, 'times' | 'temperatures'>,
  from: number,
  to: number,
  temperature: number,
): number | undefined {
  for (let i = from + 1; i <= to; i++) {
    const [before = 0, after = 0] = [temperatures[i - 1], temperatures[i]];
    if ((before - temperature) * (after - temperature) > 0 || before === after) continue;
    const share = (temperature - before) / (after - before);
    return (times[i - 1] ?? 0) + share * ((times[i] ?? 0) - (times[i - 1] ?? 0)) - (times[from] ?? 0);
  }
  return undefined;
}

/** What follows from it. */
export function meaningSentences(
  likely: Warmed,
  still: Warmed,
  { air, run, wind }: Asked,
  heat: TrackHeat,
): readonly string[] {
  const end = atRunEnd(likely);
  const rise = end - air;
  const power = heat.bumps(air) + heat.landings(air);
  const last = likely.result.times.length - 1;
  if (power === 0) return ['Without bumps and landings nothing warms the oil.'];
  const half = timeAt(likely.result, 0, likely.runEnd, air + rise / 2);
  const cooled = timeAt(likely.result, likely.runEnd, last, air + rise / 2);
  return [
    `The track makes ${Number(power.toPrecision(2))} W of heat in this shock, ${percent(heat.bumps(air) / power)} of it by bumps; ${half === undefined ? '' : `half of the rise is there after ${minutes(half)}`}.`,
    'Thinner oil makes hardly less heat: what a car falls or is thrown up it has to lose, whatever the oil.',
    wind > 0
      ? `Without any wind it would be ${celsius(atRunEnd(still))}, ${kelvins(atRunEnd(still) - end)} more.`
      : 'No wind cools it.',
    cooled === undefined
      ? `Parked in still air for ${minutes(run)} it does not lose half of that.`
      : `Parked in still air it loses half of that in ${minutes(cooled)}.`,
    `For the day plan: its temperatures are those of the oil. Count ${kelvins(rise)} on top of the air for the end of such a run and nothing for its start; choose the oil for what lies between, about ${celsius(air + rise / 2)} at this air.`,
  ];
}
