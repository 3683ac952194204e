import { listOf, requireShape } from '../../base/shape.js';
/**
 * Chance of as few runs of like signs or fewer in a random order of the same signs.
 *
 * @param signs - of the residuals, in order; above 0 or not
 * @see exact combinatorics: Swed & Eisenhart, Ann. Math. Statist. 14 (1943) 66 (from memory)
 * @public
 */
export function runsProbability(signs: readonly number[]): number {
  requireShape({ signs }, { signs: listOf('') });
  const plus = signs.filter((sign) => sign > 0).length;
  const minus = signs.length - plus;
  if (plus === 0 || minus === 0) return 1;
  const runs = signs.reduce(
    (count, sign, index) => (index > 0 && sign > 0 !== signs[index - 1]! > 0 ? count + 1 : count),
    1,
  );
  const all = logChoose(plus + minus, plus);
  let chance = 0;
  for (let count = 2; count <= runs; count++) {
    const half = Math.floor(count / 2);
    const ways =
      count % 2 === 0
        ? Math.log(2) + logChoose(plus - 1, half - 1) + logChoose(minus - 1, half - 1)
        : logSum(
            logChoose(plus - 1, half - 1) + logChoose(minus - 1, half),
            logChoose(plus - 1, half) + logChoose(minus - 1, half - 1),
          );
    chance += Math.exp(ways - all);
  }
  return Math.min(1, chance);
}

function logSum(first: number, second: number): number {
  const larger = Math.max(first, second);
  return larger + Math.log(Math.exp(first - larger) + Math.exp(second - larger));
}

/** Logarithm of the number of ways to choose; minus infinity where there is none. */
function logChoose(from: number, chosen: number): number {
  if (chosen < 0 || chosen > from) return Number.NEGATIVE_INFINITY;
  let sum = 0;
  for (let index = 1; index <= chosen; index++) sum += Math.log((from - chosen + index) / index);
  return sum;
}
