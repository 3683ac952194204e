import type { core } from 'zod/mini';
import type { FieldPath, Finding } from '../source/finding.js';

/** Adds a problem to a value under check; the path is relative to that value. */
export function report(payload: core.ParsePayload, path: FieldPath, message: string): void {
  payload.issues.push({ code: 'custom', path: [...path], message, input: payload.value });
}

/** Turns what the schema found into findings: one for each field, and one for each unknown key. */
export function schemaFindings(issues: readonly core.$ZodIssue[], start: FieldPath = []): readonly Finding[] {
  return issues.flatMap((issue): Finding[] => {
    const path = [...start, ...issue.path];
    if (issue.code !== 'unrecognized_keys') return [{ path, message: issue.message }];
    // The message has a line for each key, in the order of the keys: see record.ts.
    const lines = issue.message.split('\n');
    return issue.keys.map((key, index) => ({
      path: [...path, key],
      message: lines[index] ?? issue.message,
      atKey: true,
    }));
  });
}
