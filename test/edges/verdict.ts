import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { visibleText } from '../../lib/base/visible-text.js';
import { ConvergenceError, DashpotError, InputError } from '../../lib/index.js';
import { IntegrationError } from '../../lib/motion/index.js';
import type { Trial } from './tried-places.js';

/** What is wrong with what a call did; nothing where all is well. */
export type Fault =
  | 'raw signs'
  | 'other error'
  | 'not finite'
  | 'accepted'
  | 'wrong place'
  | 'accepts it'
  | undefined;

const lib = fileURLToPath(new URL('../../lib', import.meta.url));

/** Names that the sources declare with a question mark: what may be left out. */
export const declaredOptional: ReadonlySet<string> = new Set(
  readdirSync(lib, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .flatMap((name) => [...readFileSync(`${lib}/${name}`, 'utf8').matchAll(/readonly (\w+)\?:/gu)])
    .map(([, name = '']) => name),
);

/** Results that the reference says are infinite: a time that never ends. */
const mayNeverEnd = ['dissolutionTime', 'dropTime'];

/** Judges a call that returned. */
export function faultOfResult(name: string, trial: Trial, result: unknown, optionalFrom: number): Fault {
  if (!isAllFinite(result, 6) && !(mayNeverEnd.includes(name) && result === Infinity)) return 'not finite';
  if (['other number', 'other length', 'another form'].includes(trial.what)) return undefined;
  const last = trial.place.at(-1);
  const mayLack =
    trial.place.length === 1
      ? Number(last) >= optionalFrom || (name === 'sobolSequence' && last === 1)
      : declaredOptional.has(String(last));
  return trial.what === 'missing' && mayLack ? undefined : 'accepted';
}

/** Judges a call that threw. */
export function faultOfError({ what, value, place }: Trial, error: unknown): Fault {
  // Of accepted input a search settles, and input that has no answer is bad input.
  if (error instanceof ConvergenceError || error instanceof IntegrationError) return 'other error';
  if (!(error instanceof DashpotError)) return 'other error';
  if (visibleText(error.message) !== error.message) return 'raw signs';
  if (!(error instanceof InputError)) return undefined;
  // A number that is not whole is refused by that, whatever its size.
  const asksWhole = /whole number|index/u.test(error.accepted) && !Number.isSafeInteger(error.value);
  if (!asksWhole && (wordsAccept(error) || limitsAccept(error))) return 'accepts it';
  if (['other number', 'other length', 'another form'].includes(what)) return undefined;
  // Of an object or a list in a wrong place its insides may be missed.
  if (typeof value === 'object' && value !== null) return undefined;
  // Of two columns that may each be missing, the refusal names what it would take instead.
  if (what === 'missing' && declaredOptional.has(String(place.at(-1)))) return undefined;
  const named = place.findLast((key) => typeof key === 'string');
  if (named !== undefined && !error.field.includes(String(named))) return 'wrong place';
  return Object.is(error.value, value) ? undefined : 'wrong place';
}

const number = '(-?\\d+(?:\\.\\d+)?(?:e[+-]?\\d+)?)';
/** Words of a bound, and whether they set a lowest or a highest value. */
const bounds: readonly (readonly [RegExp, 'lowest' | 'highest'])[] = [
  [new RegExp(`(?:greater than|above)[^\\d,;-]*${number}`, 'u'), 'lowest'],
  [new RegExp(`${number} or more`, 'u'), 'lowest'],
  [new RegExp(`${number} to `, 'u'), 'lowest'],
  [new RegExp(`${number} to [^\\d,;-]*${number}`, 'u'), 'highest'],
  [new RegExp(`below[^\\d,;-]*${number}`, 'u'), 'highest'],
  [new RegExp(`at most[^\\d,;-]*${number}`, 'u'), 'highest'],
];

/** Whether what a refusal says would do takes the very number that it refused: then it says the wrong way round. */
export function wordsAccept({ value, accepted }: InputError): boolean {
  // "Some time or more after another" is no bound by itself.
  if (typeof value !== 'number' || !Number.isFinite(value) || accepted.includes(' after ')) return false;
  const held = bounds.flatMap(([words, side]) => {
    const found = words
      .exec(accepted)
      ?.slice(1)
      .at(side === 'lowest' ? 0 : -1);
    if (found === undefined) return [];
    return [side === 'lowest' ? value > Number(found) : value < Number(found)];
  });
  return held.length > 0 && held.every(Boolean);
}

/** The same of its limits as numbers. */
function limitsAccept({ value, limits: { from, above, to, below } }: InputError): boolean {
  if (typeof value !== 'number' || !Number.isFinite(value)) return false;
  const [lowest, highest] = [above ?? from, below ?? to];
  if (lowest === undefined && highest === undefined) return false;
  return value > (lowest ?? -Infinity) && value < (highest ?? Infinity);
}

function isAllFinite(value: unknown, depth: number): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (depth === 0 || typeof value !== 'object' || value === null) return true;
  if (ArrayBuffer.isView(value)) return [...(value as Float64Array)].every(Number.isFinite);
  return Object.values(value).every((one) => isAllFinite(one, depth - 1));
}
