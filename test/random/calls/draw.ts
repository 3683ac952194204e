import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Numbers that a seed gives. */
export interface Draw {
  /** A number from 0 to 1. */
  readonly part: () => number;
  /** One of a list. */
  readonly one: <Thing>(of: readonly Thing[]) => Thing;
}

/** The numbers of one call, the same whichever calls went before. */
export function drawOf(seed: number, call: number): Draw {
  const generator = xoroshiro128plus(Math.imul(seed, 0x9e3779b1) ^ Math.imul(call + 1, 0x85ebca6b));
  const part = (): number => (generator.next() >>> 0) / 2 ** 32;
  for (let index = 0; index < 8; index++) part();
  return { part, one: <Thing>(of: readonly Thing[]) => of[Math.floor(of.length * part())] as Thing };
}
