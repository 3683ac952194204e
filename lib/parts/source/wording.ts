import { literal } from './literal.js';
import { nearNames } from './near-names.js';

/** Says that a value is missing, empty or of the wrong kind. */
export function wrongKind(value: unknown, wanted: string): string {
  if (value === undefined) return `is missing; write ${wanted}`;
  if (value === null) return `is empty; write ${wanted}`;
  return mustBe(wanted, value);
}

/** The form of nearly all errors: what is accepted, and what was there. */
export function mustBe(accepted: string, value: unknown): string {
  return `must be ${accepted}, got ${literal(value)}`;
}

/** Says that a name or key does not exist, and which near ones do. */
export function unknownName(fault: string, name: string, known: readonly string[], listed: string): string {
  const near = nearNames(name, known);
  if (near.length > 0) return `${fault}; did you mean ${near.map(literal).join(' or ')}?`;
  return known.length > 0 && known.length <= 16
    ? `${fault}; ${listed} ${known.map(literal).join(', ')}`
    : fault;
}
