import { describe, expect, it } from 'vitest';
import { orderPlan } from '../../lib/decisions/order/order-plan-by-program.js';
import { startDecisionWorkers } from '../../lib/workers/index.js';
import { problem } from './order-case.js';

describe('order plan with worker threads', () => {
  it('gives the same plan with worker threads', async () => {
    const workers = startDecisionWorkers(2);
    try {
      const question = problem({});
      expect(await workers.orderPlan(question)).toEqual(await orderPlan(question));
    } finally {
      await workers.close();
    }
  });

  it('ends the solver in its thread when asked to, and the threads work on', async () => {
    const workers = startDecisionWorkers(1);
    try {
      const question = problem({});
      const stop = new AbortController();
      const seen: number[] = [];
      const running = workers.orderPlan(question, {
        signal: stop.signal,
        onProgress: (done) => {
          seen.push(done);
          // All demands are known; next comes the solver.
          if (done >= 0.7) setTimeout(() => stop.abort(new Error('enough')), 5);
        },
      });
      await expect(running).rejects.toThrow('enough');
      expect(seen.at(-1)).toBeCloseTo(0.7, 12);
      const again: number[] = [];
      const plan = await workers.orderPlan(question, { onProgress: (done) => again.push(done) });
      expect(plan.possible).toBe(true);
      expect(again).toEqual(again.toSorted((a, b) => a - b));
      expect(again.at(-1)).toBe(1);
    } finally {
      await workers.close();
    }
  });
});
