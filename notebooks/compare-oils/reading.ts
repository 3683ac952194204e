import { celsius, percent, shaftSpeed } from '../base/wording.js';
import { type Conditions, holdsBack, type OilInShock } from './oils.js';

/** The oil that comes nearest to a wanted force at a temperature: its force over that force, with the range that its label leaves open. */
export interface Nearest {
  readonly name: string;
  readonly ratio: number;
  readonly low: number;
  readonly high: number;
}

/** The oil whose rebound damping at a temperature and shaft speed is nearest to a wanted force, by ratio. */
export function nearestOil(
  oils: readonly OilInShock[],
  temperature: number,
  speed: number,
  wanted: number,
): Nearest | undefined {
  const distance = ({ ratio }: Nearest): number => Math.abs(Math.log(ratio));
  const found = oils.map((oil): Nearest => {
    const { typical, low, high } = holdsBack(oil, temperature, speed);
    return { name: oil.name, ratio: typical / wanted, low: low / wanted, high: high / wanted };
  });
  return found.sort((one, other) => distance(one) - distance(other))[0];
}

/** Part of its rebound damping that an oil loses between two temperatures. */
export function lossFromColdToHot(oil: OilInShock, cold: number, hot: number, speed: number): number {
  return 1 - holdsBack(oil, hot, speed).typical / holdsBack(oil, cold, speed).typical;
}

/** "At 38 °C clear 400 damps 4 % harder than clear 350 at 20 °C." */
export function nearestSentence(
  { name, ratio, low, high }: Nearest,
  temperature: number,
  reference: { readonly name: string; readonly temperature: number },
): string {
  const when = `At ${celsius(temperature)}`;
  const before = `${reference.name} at ${celsius(reference.temperature)}`;
  const open =
    high - low < 0.01 ? '' : ` (${comparison(low)} to ${comparison(high)} by what its label leaves open)`;
  if (name === reference.name)
    return `${when} no oil of the file comes nearer than ${name} itself, ${comparison(ratio)} than at ${celsius(reference.temperature)}${open}.`.replace(
      'as hard than',
      'as hard as',
    );
  return `${when} ${name} comes nearest to ${before}: ${comparison(ratio)}${open}.`;
}

/** `4 % harder`, `12 % softer`, `as hard`. */
function comparison(ratio: number): string {
  const off = percent(Math.abs(ratio - 1));
  if (off === percent(0)) return 'as hard';
  return `${off} ${ratio > 1 ? 'harder' : 'softer'}`;
}

/** What the reference oil loses over the day, at the middle speed and what happens there. */
export function lossSentence(
  reference: OilInShock,
  { coldest, hottest, middle }: Conditions,
  event: string,
): string {
  const lost = lossFromColdToHot(reference, coldest, hottest, middle);
  return `In rebound at ${shaftSpeed(middle)}${event} ${reference.name} loses ${percent(lost)} of its damping from ${celsius(coldest)} to ${celsius(hottest)}.`;
}

/** Which oil of the file brings the reference damping back when it is cold, and when it is hot. */
export function nearestSentences(
  reference: OilInShock,
  oils: readonly OilInShock[],
  at: Conditions,
): readonly string[] {
  const wanted = holdsBack(reference, at.temperature, at.middle).typical;
  return [at.coldest, at.hottest].flatMap((temperature) => {
    const nearest = nearestOil(oils, temperature, at.middle, wanted);
    if (nearest === undefined) return [];
    return [nearestSentence(nearest, temperature, { name: reference.name, temperature: at.temperature })];
  });
}
