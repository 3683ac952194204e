import { type OilCase, typicalDamping } from '../base/oil-forces.js';
import { celsius, percent } from '../base/wording.js';

/** The oil that comes nearest to a wanted force at a temperature, and by how much it misses. */
export interface Nearest {
  readonly name: string;
  /** Force over the wanted force, less 1. */
  readonly error: number;
}

/** The oil whose force at a temperature and shaft speed is nearest to a wanted force, by ratio. */
export function nearestOil(
  cases: readonly OilCase[],
  temperature: number,
  speed: number,
  wanted: number,
): Nearest | undefined {
  let nearest: Nearest | undefined;
  for (const one of cases) {
    const error = typicalDamping(one, temperature, speed) / wanted - 1;
    if (nearest === undefined || Math.abs(Math.log1p(error)) < Math.abs(Math.log1p(nearest.error))) {
      nearest = { name: one.part.name, error };
    }
  }
  return nearest;
}

/** Part of its rebound damping that an oil loses between two temperatures; in compression a torn oil would hide it. */
export function lossFromColdToHot(one: OilCase, cold: number, hot: number, speed: number): number {
  return 1 - typicalDamping(one, hot, -speed) / typicalDamping(one, cold, -speed);
}

/** "At 38 °C clear 400 damps within 4 % of clear 350 at 20 °C." */
export function nearestSentence(
  nearest: Nearest,
  temperature: number,
  reference: { readonly name: string; readonly temperature: number },
): string {
  const distance = Math.abs(nearest.error);
  const miss = percent(Math.ceil(100 * distance) / 100);
  const when = `At ${celsius(temperature)}`;
  if (nearest.name === reference.name) {
    const changed = distance < 0.005 ? 'unchanged' : `${miss} ${nearest.error > 0 ? 'stiffer' : 'softer'}`;
    return `${when} no other oil comes nearer than ${reference.name} itself, ${changed}.`;
  }
  const how = distance < 0.005 ? 'just as' : `within ${miss} of`;
  return `${when} ${nearest.name} damps ${how} ${reference.name} at ${celsius(reference.temperature)}.`;
}
