import { InputError } from '../../lib/base/input-error.js';
import { shaftSpeed } from './wording.js';

/** Refuses a slow shaft speed that is not below the fast one. */
export function requireSlowBelowFast({ slow, fast }: { readonly slow: number; readonly fast: number }): void {
  if (slow < fast) return;
  throw new InputError({
    field: 'slow',
    value: shaftSpeed(slow),
    accepted: `below fast, ${shaftSpeed(fast)}`,
  });
}

/** Refuses a slow shaft speed that is not below the middle one. */
export function requireSlowBelowMiddle({
  slow,
  middle,
}: {
  readonly slow: number;
  readonly middle: number;
}): void {
  if (slow < middle) return;
  throw new InputError({
    field: 'slow',
    value: shaftSpeed(slow),
    accepted: `below middle, ${shaftSpeed(middle)}`,
  });
}
