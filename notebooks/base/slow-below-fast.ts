import { InputError } from '../../lib/base/input-error.js';
import { shaftSpeed } from './wording.js';

/** Whether a shaft speed is below another, in print too: two that print alike would be one line of a picture twice. */
export function isBelow(speed: number, other: number): boolean {
  return speed < other && shaftSpeed(speed) !== shaftSpeed(other);
}

/** Refuses a slow shaft speed that is not below the fast one. */
export function requireSlowBelowFast({ slow, fast }: { readonly slow: number; readonly fast: number }): void {
  if (isBelow(slow, fast)) return;
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
  if (isBelow(slow, middle)) return;
  throw new InputError({
    field: 'slow',
    value: shaftSpeed(slow),
    accepted: `below middle, ${shaftSpeed(middle)}`,
  });
}
