import { DashpotError } from './dashpot-error.js';

/**
 * Ends of what would have been accepted, in the unit of the value: `from` and `to` belong to it, `above` and `below` do not.
 *
 * @public
 */
export interface Limits {
  readonly from?: number;
  readonly above?: number;
  readonly to?: number;
  readonly below?: number;
}

const noLimits: Limits = {};

/**
 * The one error that bad input gets: it names the field, its value with the unit, and what is accepted.
 *
 * @public
 */
export class InputError extends DashpotError {
  override readonly name = 'InputError';
  /** Path of the field in the caller's own words, for example `piston.holes[0].diameter`. */
  readonly field: string;
  /** The value that was refused. */
  readonly value: unknown;
  /** SI unit of the value; empty for a pure number or a text. */
  readonly unit: string;
  /** What would have been accepted, for example `greater than 0`. */
  readonly accepted: string;
  /** The same as numbers, for a caller who words them in units and names of his own; empty where no number says it. */
  readonly limits: Limits;

  constructor(problem: {
    readonly field: string;
    readonly value: unknown;
    readonly unit?: string;
    readonly accepted: string;
    readonly limits?: Limits;
  }) {
    const unit = problem.unit ?? '';
    const suffix = unit === '' ? '' : ` ${unit}`;
    super(`${problem.field} must be ${problem.accepted}${suffix}, got ${valueText(problem.value, suffix)}`);
    this.field = problem.field;
    this.value = problem.value;
    this.unit = unit;
    this.accepted = problem.accepted;
    this.limits = problem.limits ?? noLimits;
  }
}

/** A value in words; only a number has a unit, and only a simple one is written out: the first 100 letters of a text. */
function valueText(value: unknown, suffix: string): string {
  if (typeof value === 'number') return `${value}${suffix}`;
  if (Object(value) === value) return `a value of type ${typeof value}`;
  return String(value).replace(/(.{100}).+/su, '$1…');
}
