import { distance } from 'fastest-levenshtein';
import { listOf, requireShape, someText } from '../../base/shape.js';

const longestCompared = 80;
const mostOffered = 3;

/**
 * The known names that a mistyped one may have meant, nearest first, three at most.
 *
 * Near means: apart by no more than a third of the longer name's letters in insertions, deletions and
 * replacements (Levenshtein 1966), letter case not counted.
 *
 * @param name - the name as written
 * @param known - the names that exist
 * @example
 * ```ts
 * nearNames('piton', ['piston', 'spring'])[0]; // 'piston': one letter away
 * ```
 * @public
 */
export function nearNames(name: string, known: readonly string[]): readonly string[] {
  requireShape({ name, known }, { name: someText, known: listOf(someText) });
  if (name.length > longestCompared) return [];
  const wanted = name.toLowerCase();
  return known
    .map((candidate) => ({ candidate, apart: distance(wanted, candidate.toLowerCase()) }))
    .filter(({ candidate, apart }) => apart <= Math.ceil(Math.max(name.length, candidate.length) / 3))
    .sort((a, b) => a.apart - b.apart || (a.candidate < b.candidate ? -1 : 1))
    .slice(0, mostOffered)
    .map(({ candidate }) => candidate);
}
