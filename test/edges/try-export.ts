import { inspect } from 'node:util';
import type { Case } from './every-export.js';
import type { GoodCall } from './good-call.js';
import { argumentsWith, type Trial, trialsOf } from './tried-places.js';
import { type Fault, faultOfError, faultOfResult } from './verdict.js';

/** What one trial showed. */
export interface Finding {
  readonly fault: Fault;
  readonly words: string;
}

/** Calls a function with good arguments in which one place at a time is bad. */
export async function findingsOf({ name, run, calls }: Case): Promise<readonly Finding[]> {
  const findings: Finding[] = [];
  for (const good of calls) {
    for (const trial of trialsOf(good)) {
      const { fault, said } = await tried(name, run, good, trial);
      const [first, ...rest] = trial.place;
      const place = `argument ${String(first)}${rest.map((key) => `.${key}`).join('')}`;
      findings.push({
        fault,
        words: `${name}: ${place} = ${told(trial.value)} (${trial.what}): ${fault}, ${said}`,
      });
    }
  }
  return findings;
}

async function tried(
  name: string,
  run: Case['run'],
  good: GoodCall,
  trial: Trial,
): Promise<{ readonly fault: Fault; readonly said: string }> {
  try {
    const args = argumentsWith(good, trial);
    const result = await atEnd(run(...args));
    return { fault: faultOfResult(name, trial, result, run.length), said: told(result) };
  } catch (error) {
    return { fault: faultOfError(trial, error), said: String(error) };
  }
}

/** A search is run to its end: it checks when it begins. */
async function atEnd(result: unknown): Promise<unknown> {
  if (
    typeof result !== 'object' ||
    result === null ||
    !('next' in result) ||
    typeof result.next !== 'function'
  )
    return result;
  const search = result as Iterator<unknown>;
  let step = search.next();
  while (step.done !== true) step = search.next();
  return step.value;
}

function told(value: unknown): string {
  return inspect(value, { depth: 2, breakLength: Number.POSITIVE_INFINITY, getters: false }).slice(0, 80);
}
