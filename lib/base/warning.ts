import type { WarningCode } from './warning-codes.js';

/**
 * Says that a result stands outside the range in which its law was shown to hold, or that a physical limit
 * is passed. A warning never changes the result.
 *
 * @public
 */
export interface Warning {
  /** Stable name for programs, for example `hole-reynolds-number-high`. */
  readonly code: WarningCode;
  /** One sentence for a person. */
  readonly message: string;
  /** The value that passed the limit, SI. */
  readonly value: number;
  /** The limit it passed, SI. */
  readonly limit: number;
}

/** Shared so that a result without warnings costs no allocation. */
export const noWarnings: readonly Warning[] = Object.freeze([]);

/** Keeps the first warning of each code, in the order given. */
export function distinctWarnings(warnings: readonly Warning[]): readonly Warning[] {
  const byCode = new Map<string, Warning>();
  for (const warning of warnings) {
    if (!byCode.has(warning.code)) byCode.set(warning.code, warning);
  }
  return [...byCode.values()];
}
