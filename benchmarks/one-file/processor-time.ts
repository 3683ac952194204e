import type { CDPSession } from 'playwright-core';

/** Processor time of a page's own thread so far, all of it and that of scripts [ms]. */
export async function processorTime(
  session: CDPSession,
): Promise<{ readonly all: number; readonly scripts: number }> {
  const { metrics } = await session.send('Performance.getMetrics');
  const of = (wanted: string): number =>
    1000 * (metrics.find(({ name }) => name === wanted)?.value ?? Number.NaN);
  return { all: of('TaskDuration'), scripts: of('ScriptDuration') };
}
