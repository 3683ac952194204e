import { InputError, type Limits } from './input-error.js';

/** Beyond these no quantity of this library lies, in SI: a power of it would leave what a number can hold. */
const largest = 1e24;
export const smallest = 1e-30;

/** Throws the one error of bad input. */
export function refuse(
  value: unknown,
  field: string,
  unit: string,
  accepted: string,
  limits?: Limits,
): never {
  throw new InputError({ field, value, unit, accepted, ...(limits && { limits }) });
}

/** Throws unless `value` is a finite number. */
export function requireFinite(value: number, field: string, unit: string): void {
  if (!Number.isFinite(value)) refuse(value, field, unit, 'a finite number');
  if (Math.abs(value) > largest)
    refuse(value, field, unit, `${-largest} to ${largest}`, { from: -largest, to: largest });
}

/** Throws unless `value` is finite and above zero. */
export function requirePositive(value: number, field: string, unit: string): void {
  if (!(Number.isFinite(value) && value > 0)) refuse(value, field, unit, 'greater than 0', { above: 0 });
  requireWithin(value, smallest, largest, field, unit);
}

/** Throws unless `value` is finite and zero or above. */
export function requireNotNegative(value: number, field: string, unit: string): void {
  if (!(Number.isFinite(value) && value >= 0)) refuse(value, field, unit, '0 or more', { from: 0 });
  requireWithin(value, 0, largest, field, unit);
}

/** Throws unless `speed` moves something, either way. */
export function requireMoving(speed: number, field: string): void {
  requireFinite(speed, field, 'm/s');
  if (Math.abs(speed) < smallest) refuse(speed, field, 'm/s', `either way and at least ${smallest}`);
}

/** Throws unless `low <= value <= high`. */
export function requireWithin(value: number, low: number, high: number, field: string, unit: string): void {
  if (!(Number.isFinite(value) && value >= low && value <= high))
    refuse(value, field, unit, `${low} to ${high}`, { from: low, to: high });
}

/** The most of anything that is counted: beyond it a list would not end. */
const largestCount = 1e6;

/** Throws unless `value` is a whole number of at least 1, and a list of that length could be made. */
export function requireCount(value: number, field: string): void {
  if (!(Number.isSafeInteger(value) && value >= 1))
    refuse(value, field, '', 'a whole number of 1 or more', { from: 1 });
  requireWithin(value, 1, largestCount, field, '');
}

/** Throws unless `value` is an object with fields of its own, which a list, a date, a map or a boxed number is not. */
export function requireRecord(value: unknown, field: string): void {
  if ({}.toString.call(value) !== '[object Object]') refuse(value, field, '', 'an object');
}

/** Throws unless `value` is a list, plain or of typed numbers. */
export function requireNumbers(value: unknown, field: string): void {
  if (!(ArrayBuffer.isView(value) && 'length' in value)) requireList(value, field);
}

/** Throws unless `value` is a plain list. A typed one makes numbers of all that is made of it. */
export function requireList(value: unknown, field: string): void {
  if (!Array.isArray(value)) refuse(value, field, '', 'a list');
}

/** Throws unless `value` is a plain list and each of it passes; a hole in it is something missing. */
export function requireEach<One>(
  value: readonly One[],
  field: string,
  check: (one: One, field: string) => void,
): void {
  requireList(value, field);
  for (const [index, one] of value.entries()) check(one, `${field}[${index}]`);
}

/** Throws unless `value` is one of the words. */
export function requireWord(value: unknown, words: readonly string[], field: string): void {
  if (!words.includes(value as string)) refuse(value, field, '', `one of ${words.join(', ')}`);
}

/** Throws unless `value` is of a kind that `typeof` tells. */
export function requireKind(value: unknown, kind: 'boolean' | 'function' | 'string', field: string): void {
  if (typeof value !== kind) refuse(value, field, '', `a ${kind}`);
}
