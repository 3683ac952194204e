import type { Peak } from '../../lib/motion/bench/bench-stroke.js';
import { millilitres, millimetres } from '../base/bench-wording.js';
import { oilAtTheShaft } from '../base/oil-at-the-shaft.js';
import { celsius, newtons, percent, shaftSpeed } from '../base/wording.js';
import { joules } from './figures.js';
import type { Asked, Stroked } from './stroked.js';

/** Travel and speed of the shaft at a time of the stroke that is shown. */
function placeAt(
  { result, cycle }: Stroked,
  { time }: Peak,
): { readonly travel: number; readonly speed: number } {
  const { times, travels, speeds } = result.trace;
  const index = Math.round(((time - cycle.from) / (cycle.to - cycle.from)) * (times.length - 1));
  return { travel: travels[index] ?? 0, speed: speeds[index] ?? 0 };
}

/** Which stroke is shown: most shocks repeat the second; with foam in the oil it takes more of them. */
export function shownStroke({ result: { cycles }, repeats }: Stroked): string {
  const number = cycles.length;
  const which = number === 2 ? 'second stroke from rest' : `last of ${number} strokes from rest`;
  return `the ${which} is shown${repeats ? '' : ', and the next would still differ'}`;
}

/** `14.1 to 14.4 N`, or one number where both print alike. */
export function newtonsOf(values: readonly number[]): string {
  const [low, high] = [Math.min(...values), Math.max(...values)].map((one) => newtons(one));
  return low === high ? (high ?? '') : `${low?.replace(' N', '')} to ${high}`;
}

/** A force on a shaft that stands, with its direction. */
function pushesOrPulls(force: number): string {
  return force < 0 ? `pulls in with ${newtons(-force)}` : `pushes out with ${newtons(force)}`;
}

/** The force at one speed on the way out, as the shaft gathers that speed and as it loses it; a strong gas pushes all the same. */
export function onTheWayOut(...forces: readonly [gathering: number, losing: number]): string {
  const back = Math.min(...forces) < 0;
  const [gathering, losing] = forces.map((force) => newtons(back ? -force : force));
  return `${back ? 'holds back' : 'still pushes'} with ${gathering} and ${losing}`;
}

/** What the bench would read first. */
export function answerSentence(all: readonly Stroked[], asked: Asked): string {
  const { build, wave, amplitude, frequency, temperature } = asked;
  const [own] = all;
  if (own === undefined) return '';
  const { cycle, figures } = own;
  const fastest = wave === 'sine' ? 2 * Math.PI * frequency * amplitude : 4 * frequency * amplitude;
  const push = newtonsOf(all.map((one) => one.cycle.largestForce.value));
  const pulls = all.map((one) => -one.cycle.smallestForce.value);
  // A strong gas pushes a shaft out that moves slowly, whichever way it goes.
  const back =
    Math.max(...pulls) > 0
      ? `holds back with at most ${newtonsOf(pulls)} coming out`
      : `still pushes with at least ${newtonsOf(pulls.map((one) => -one))} coming out`;
  const speeds = wave === 'sine' ? `up to ${shaftSpeed(fastest)}` : shaftSpeed(fastest);
  return `At ${Number(frequency.toPrecision(3))} Hz and ${millimetres(amplitude)} to each side, ${speeds}, ${build.name} on ${build.oil.name} at ${celsius(temperature)} pushes back with at most ${push} going in and ${back}; each stroke to and fro takes ${joules(cycle.work)}, as a damper of ${Number(figures.equivalentDamping.toPrecision(3))} N·s/m would.`;
}

/** What the loops tell beside their height. */
export function courseSentences(own: Stroked, { wave, amplitude }: Asked): readonly string[] {
  const { cycle, figures, result, moving, stroke } = own;
  const push = placeAt(own, cycle.largestForce);
  const { compression, rebound } = figures;
  const { shock } = moving;
  const gasAt = (travel: number) =>
    shock.layout === 'mixed'
      ? undefined
      : shock.shaftArea * (shock.gas.pressure(shock.shaftArea * travel) - shock.ambientPressure);
  const [fullyIn, fullyOut] = [gasAt(stroke.middle + amplitude), gasAt(stroke.middle - amplitude)];
  const inward = shock.layout === 'shaft-side';
  return [
    `The hardest push comes ${millimetres(push.travel)} in, with the shaft ${push.speed < 0 ? 'coming out' : 'going in'} at ${shaftSpeed(Math.abs(push.speed))}.`,
    ...(wave === 'sine'
      ? [
          `Going in at ${shaftSpeed(compression.speed)} it pushes with ${newtons(compression.gathering)} while the shaft gathers speed and with ${newtons(compression.losing)} while it loses it; coming out at the same speed it ${onTheWayOut(rebound.gathering, rebound.losing)}. A steady curve would have one force for each: this difference is the hysteresis.`,
        ]
      : []),
    `Where the shaft stands for a moment before it turns, it ${pushesOrPulls(figures.forceFullyIn)} all the way in and ${pushesOrPulls(figures.forceFullyOut)} all the way out${fullyIn === undefined || fullyOut === undefined ? '' : `; the gas alone, moved slowly, with ${newtons(fullyIn)} and ${newtons(fullyOut)}`}.`,
    `Gas, cavity and springy oil act as a spring of ${Number((figures.dynamicStiffness / 1000).toPrecision(2))} N/mm beside the damping${fullyIn === undefined || fullyOut === undefined ? '' : `; the gas alone, moved slowly, is one of ${Number(((fullyIn - fullyOut) / (2 * amplitude) / 1000).toPrecision(2))} N/mm`}.`,
    `Speeding up the oil in the holes, as heavy at the shaft as ${oilAtTheShaft(result.inertia)}, takes at most ${newtons(result.inertia.largestForce)}, where the shaft turns; no force here has it in.`,
    cycle.largestCavity > 0
      ? `A cavity of up to ${millilitres(cycle.largestCavity)} is open for ${percent(cycle.cavityShare)} of the stroke; until it is full again, up to ${millimetres(result.lostStroke)} of the way ${inward ? 'in' : 'out'} meet no resistance of the oil.`
      : 'The oil stays whole; no stroke is lost.',
  ];
}
