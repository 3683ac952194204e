import { InputError } from './input-error.js';

/** Throws unless `value` is a finite number. */
export function requireFinite(value: number, field: string, unit: string): void {
  if (!Number.isFinite(value)) {
    throw new InputError({ field, value, unit, accepted: 'a finite number' });
  }
}

/** Throws unless `value` is finite and above zero. */
export function requirePositive(value: number, field: string, unit: string): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new InputError({ field, value, unit, accepted: 'greater than 0', limits: { above: 0 } });
  }
}

/** Throws unless `value` is finite and zero or above. */
export function requireNotNegative(value: number, field: string, unit: string): void {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
    throw new InputError({ field, value, unit, accepted: '0 or more', limits: { from: 0 } });
  }
}

/** Throws unless `low <= value <= high`. */
export function requireWithin(value: number, low: number, high: number, field: string, unit: string): void {
  if (!(value >= low && value <= high)) {
    throw new InputError({
      field,
      value,
      unit,
      accepted: `${low} to ${high}`,
      limits: { from: low, to: high },
    });
  }
}

/** Throws unless `value` is a whole number of at least 1. */
export function requireCount(value: number, field: string): void {
  if (!(Number.isSafeInteger(value) && value >= 1)) {
    throw new InputError({ field, value, accepted: 'a whole number of 1 or more', limits: { from: 1 } });
  }
}
