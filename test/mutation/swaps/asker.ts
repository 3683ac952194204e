import { type ChildProcess, fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Question, Verdict } from './warm.js';

/** One warm process that runs tests with a fault, and is started anew where a fault keeps it from coming to an end. */
export interface Asker {
  /** @param patience - how long it may take [ms] */
  readonly ask: (question: Question, patience: number) => Promise<Verdict>;
  readonly end: () => void;
}

const warm = fileURLToPath(new URL('./warm.ts', import.meta.url));

export function startAsker(): Asker {
  let child: ChildProcess | undefined;
  const stop = (): void => {
    // Its tests run in a process of their own, which would go on: both are one group.
    if (child?.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
    child = undefined;
  };
  const ask = (question: Question, patience: number): Promise<Verdict> => {
    child ??= fork(warm, {
      execArgv: ['--import', 'tsx'],
      serialization: 'advanced',
      detached: true,
      stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    });
    const asked = child;
    return new Promise((resolve, reject) => {
      const done = (): void => {
        clearTimeout(limit);
        asked.removeAllListeners();
      };
      const limit = setTimeout(() => {
        done();
        stop();
        resolve({ endless: true, passed: {} });
      }, patience);
      asked.once('message', (verdict: Verdict) => {
        done();
        resolve(verdict);
      });
      asked.once('exit', (code) => {
        done();
        child = undefined;
        reject(new Error(`the warm process ended with ${code}`));
      });
      asked.send(question);
    });
  };
  return { ask, end: stop };
}
