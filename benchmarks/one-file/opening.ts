import type { Browser } from 'playwright-core';
import { processorTime } from './processor-time.js';

/** One opening of a file; times since the request [ms]. */
export interface Opening {
  /** First picture in the document, and on the screen: a still that the file came with, or one that its program drew. */
  readonly figure: number;
  readonly painted: number;
  /** The program has taken over, and has drawn its first figure. */
  readonly live: number;
  readonly drawn: number;
  /** Processor time of the page's own thread until then, and the part of it in scripts. */
  readonly processor: number;
  readonly scripts: number;
}

/** Opens a page from disk as a reader does, nothing of it known yet. */
export async function opening(where: Browser, address: string): Promise<Opening> {
  const context = await where.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await page.addInitScript(() => {
    // No function with a name: what compiles this file would wrap it in a helper that the page lacks.
    new MutationObserver(() => {
      const live = document.documentElement?.classList.contains('live') === true;
      for (const [name, isThere] of [
        ['figure', document.querySelector('figure svg path, .thumbnail svg path') !== null],
        ['live', live],
        ['drawn', live && document.querySelector('figure svg path') !== null],
      ] as const) {
        if (!isThere || performance.getEntriesByName(name).length > 0) continue;
        performance.mark(name);
        if (name === 'figure') requestAnimationFrame(() => setTimeout(() => performance.mark('painted')));
      }
    }).observe(document, {
      childList: true,
      subtree: true,
      attributes: true,
      attributeFilter: ['class', 'd'],
    });
  });
  await page.goto(address, { waitUntil: 'commit' });
  await page.waitForFunction(
    () =>
      performance.getEntriesByName('drawn').length > 0 && performance.getEntriesByName('painted').length > 0,
  );
  const spent = await processorTime(session);
  const times = await page.evaluate(() =>
    Object.fromEntries(performance.getEntriesByType('mark').map(({ name, startTime }) => [name, startTime])),
  );
  await context.close();
  const at = (name: string): number => times[name] ?? Number.NaN;
  return {
    figure: at('figure'),
    painted: at('painted'),
    live: at('live'),
    drawn: at('drawn'),
    processor: spent.all,
    scripts: spent.scripts,
  };
}
