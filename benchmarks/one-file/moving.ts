import type { Browser } from 'playwright-core';
import { processorTime } from './processor-time.js';

const moves = 30;
/** The first moves meet code that is not compiled yet. */
const warmUp = 6;

/** How long redraws take [ms]: the answer, the tables and the pictures in the window. */
export interface Moving {
  readonly p50: number;
  readonly p95: number;
  /** Processor time of the page's own thread for one, with layout and paint, and the part of it in scripts. */
  readonly processor: number;
  readonly scripts: number;
}

/** Moves one control of a page, 30 times a second or as fast as it follows. */
export async function moving(where: Browser, address: string, option: string): Promise<Moving> {
  const page = await where.newPage({ viewport: { width: 1024, height: 768 } });
  await page.goto(address);
  await page.waitForSelector('html.live');
  await page.waitForSelector(`#set-${option}`, { state: 'attached' });
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await page.evaluate(move, [option, warmUp] as const);
  const before = await processorTime(session);
  const sorted = (await page.evaluate(move, [option, moves] as const)).sort((a, b) => a - b);
  const after = await processorTime(session);
  await page.close();
  const at = (part: number): number => sorted[Math.floor(part * (sorted.length - 1))] ?? Number.NaN;
  return {
    p50: at(0.5),
    p95: at(0.95),
    processor: (after.all - before.all) / moves,
    scripts: (after.scripts - before.scripts) / moves,
  };
}

/** Run in the page: moves a slider a little, or chooses the next of a list, so many times 30 times a second, and takes the time of each redraw. */
async function move([option, count]: readonly [string, number]): Promise<number[]> {
  const slider = document.querySelector<HTMLInputElement>(`#set-${option}-slider`);
  const list = document.querySelector<HTMLSelectElement>(`#set-${option}`);
  const all: number[] = [];
  for (let step = 0; step < count; step++) {
    const redrawn = new Promise<number>((resolve) => {
      new PerformanceObserver((entries, observer) => {
        for (const { duration } of entries.getEntriesByName('redraw')) {
          observer.disconnect();
          resolve(duration);
        }
      }).observe({ entryTypes: ['measure'] });
    });
    if (slider !== null) {
      if (step % 10 < 5) slider.stepUp();
      else slider.stepDown();
      slider.dispatchEvent(new Event('input', { bubbles: true }));
    } else if (list !== null) {
      list.selectedIndex = (list.selectedIndex + 1) % list.options.length;
      list.dispatchEvent(new Event('input', { bubbles: true }));
    }
    all.push(await redrawn);
    await new Promise((resolve) => setTimeout(resolve, 33));
  }
  return all;
}
