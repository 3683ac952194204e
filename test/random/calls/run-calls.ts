// Makes the calls of a range and tells, a line of JSON each, which it begins and what is wrong with one: run-calls.ts SEED FROM TO LOG [NAME].
import { appendFileSync } from 'node:fs';
import { faultOfAnswer, faultOfThrown } from './judge.js';
import { type RandomCall, randomCall } from './random-call.js';

/** What is wrong with a call. */
export interface Found {
  readonly count: number;
  readonly name: string;
  readonly fault: string;
  readonly places: readonly string[];
  readonly said: string;
}

const [seed = 0, from = 0, to = 0] = process.argv.slice(2, 5).map(Number);
const [log = '', only = ''] = process.argv.slice(5);

for (let count = from; count < to; count++) {
  tell(count);
  const call = randomCall(seed, count, only);
  const before = process.cpuUsage().user;
  const { fault, said } = await tried(call);
  const seconds = (process.cpuUsage().user - before) / 1e6;
  if (fault !== undefined) report(count, call, fault, said);
  if (seconds > 5) report(count, call, 'slow', `${seconds.toFixed(1)} s`);
}
tell(to);

function report(count: number, { entry, name, puts }: RandomCall, fault: string, said: string): void {
  const places = puts.map(({ place, name: odd, value }) => `${place.join('.')} = ${odd} ${told(value)}`);
  tell({ count, name: `${entry} ${name}`, fault, places, said: said.slice(0, 200) } satisfies Found);
}

/** At once, so that it is told even where the call after it never ends. */
function tell(what: number | Found): void {
  appendFileSync(log, `${JSON.stringify(what)}\n`);
}

async function tried(
  call: RandomCall,
): Promise<{ readonly fault: string | undefined; readonly said: string }> {
  try {
    const result = await atEnd(call.run(...call.args));
    return { fault: faultOfAnswer(call, result), said: told(result) };
  } catch (error) {
    return {
      fault: faultOfThrown(call, error),
      said: error instanceof Error ? (error.stack ?? '') : 'no error',
    };
  }
}

async function atEnd(result: unknown): Promise<unknown> {
  if (typeof (result as { readonly next?: unknown } | null)?.next !== 'function') return result;
  const search = result as Iterator<unknown>;
  let step = search.next();
  while (step.done !== true) step = search.next();
  return step.value;
}

function told(value: unknown): string {
  if (typeof value === 'number') return String(value);
  if (typeof value === 'symbol' || typeof value === 'function') return typeof value;
  try {
    return (JSON.stringify(value) ?? String(value)).slice(0, 80);
  } catch {
    return typeof value;
  }
}
