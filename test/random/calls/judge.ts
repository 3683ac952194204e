import { DashpotError, InputError } from '../../../lib/index.js';
import { declaredOptional } from '../../edges/verdict.js';
import { gone, OwnError } from './odd-values.js';
import type { Put, RandomCall } from './random-call.js';

const mayNeverEnd = ['dissolutionTime', 'dropTime'];

/** What is wrong with a result, or nothing. */
export function faultOfAnswer({ name, run, puts }: RandomCall, result: unknown): string | undefined {
  if (!(mayNeverEnd.includes(name) && result === Number.POSITIVE_INFINITY) && !isFinite_(result, 9))
    return 'a result that is not finite';
  // Instead of uncertainties it takes the rows of a covariance.
  const rows = name === 'propagate' && puts.some(({ name: odd }) => odd === 'in a list');
  const accepted = rows ? undefined : puts.find((put) => put.wrongType && !mayLack(name, run.length, put));
  return accepted && `takes ${accepted.name}`;
}

/** What is wrong with an error, or nothing. */
export function faultOfThrown({ puts }: RandomCall, error: unknown): string | undefined {
  if (error instanceof OwnError) return undefined;
  if (!(error instanceof DashpotError)) return error instanceof Error ? error.name : 'throws no error';
  if (error.name === 'ConvergenceError' || error.name === 'IntegrationError') return error.name;
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the very signs that are looked for
  if (/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/u.test(error.message))
    return 'raw signs in the message';
  if (!(error instanceof InputError) || puts.length > 1) return undefined;
  const [{ place, value, wrongType, good }] = puts as [Put];
  if (Object(value) === value || Object(good) === good || !wrongType || value === gone) return undefined;
  const named = place.findLast((key) => typeof key === 'string');
  if (named !== undefined && !error.field.includes(named)) return `names ${error.field}`;
  return Object.is(error.value, value) ? undefined : 'tells another value';
}

function mayLack(name: string, optionalFrom: number, { place, value }: Put): boolean {
  const last = place.at(-1);
  if (value === gone && typeof last === 'number') return true;
  if (value !== undefined && value !== gone) return false;
  if (place.length > 1) return declaredOptional.has(String(last));
  return Number(last) >= optionalFrom || (name === 'sobolSequence' && last === 1);
}

function isFinite_(value: unknown, depth: number): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (depth === 0 || typeof value !== 'object' || value === null || value instanceof Error) return true;
  if (value instanceof Float64Array) return value.every(Number.isFinite);
  if (ArrayBuffer.isView(value)) return true;
  const inner = value instanceof Map ? [...value.values()] : Object.values(value);
  return inner.every((one) => isFinite_(one, depth - 1));
}
