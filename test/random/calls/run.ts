// Calls of every exported function with one or two odd values in good arguments: npm run random-calls -- [CALLS [SEED [NAME]]]. The same seed gives the same calls.
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Found } from './run-calls.js';

const [calls = 30_000, seed = Math.floor(2 ** 31 * Math.random())] = process.argv.slice(2, 4).map(Number);
const [only = ''] = process.argv.slice(4);
/** Calls that one process makes, and how long one of them may take [ms]. */
const [chunk, patience] = [2000, 240_000];
const folder = mkdtempSync(join(tmpdir(), 'random-calls-'));
/** Where the calls that begin are told: a pipe could be full. */
const log = join(folder, 'calls');
const program = fileURLToPath(new URL('run-calls.ts', import.meta.url));

console.log(`${calls} calls, seed ${seed}`);
const faults: string[] = [];
for (let next = 0; next < calls; ) next = await runFrom(next, Math.min(next + chunk, calls));
rmSync(folder, { recursive: true });
for (const fault of new Set(faults)) console.log(`${faults.filter((one) => one === fault).length} ${fault}`);
console.log(`${faults.length} of ${calls} calls are wrong`);
process.exitCode = faults.length === 0 ? 0 : 1;

/** Runs some of the calls in a process, and returns where to go on: a call that does not end is left behind with its process. */
async function runFrom(from: number, to: number): Promise<number> {
  writeFileSync(log, '');
  const args = ['--import', 'tsx', program, ...[seed, from, to].map(String), log, only];
  const child = spawn(process.execPath, args, { stdio: 'inherit' });
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  let [before, since] = [0, Date.now()];
  const watch = setInterval(() => {
    const { size } = statSync(log);
    if (size !== before) [before, since] = [size, Date.now()];
    else if (Date.now() - since > patience) child.kill('SIGKILL');
  }, 1000);
  await ended;
  clearInterval(watch);
  let at = from;
  for (const line of readFileSync(log, 'utf8').split('\n').filter(Boolean)) {
    const said = JSON.parse(line) as number | Found;
    if (typeof said === 'number') at = said;
    else {
      faults.push(said.fault);
      console.log(line);
    }
  }
  if (at === to) return to;
  faults.push('does not end');
  console.log(`call ${at} does not end`);
  return at + 1;
}
