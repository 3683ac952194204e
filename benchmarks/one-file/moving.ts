import type { Browser, CDPSession } from 'playwright-core';
import { processorTime } from './processor-time.js';

const moves = 30;
/** The first moves meet code that is not compiled yet. */
const warmUp = 6;

/** How long redraws take [ms]: the answer, the tables and the pictures in the window of a phone. */
export interface Moving {
  readonly p50: number;
  readonly p95: number;
  /** Processor time of the page's own thread for one, with layout and paint: half of them are below, 19 of 20. It hardly depends on who else uses the machine. */
  readonly processor: number;
  readonly processor95: number;
  /** Processor time of what follows once the reader pauses: the rest of the page. */
  readonly rest: number;
}

/** Moves one control of a page, about 30 times a second or as fast as it follows; a slider always on to where it has not been, as long as there is room. */
export async function moving(where: Browser, address: string, option: string): Promise<Moving> {
  const page = await where.newPage({ viewport: { width: 390, height: 844 } });
  await page.goto(address);
  await page.waitForSelector('html.live');
  await page.waitForSelector(`#set-${option}`, { state: 'attached' });
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const [clock, processor]: [number[], number[]] = [[], []];
  for (let step = -warmUp; step < moves; step++) {
    const before = await processorTime(session);
    const taken = await page.evaluate(move, option);
    const after = await processorTime(session);
    if (step < 0) continue;
    clock.push(taken);
    processor.push(after.all - before.all);
  }
  const before = await processorTime(session);
  await page.waitForTimeout(400);
  await quiet(session);
  const rest = (await processorTime(session)).all - before.all;
  await page.close();
  const at = (times: readonly number[], part: number): number =>
    times.toSorted((a, b) => a - b)[Math.floor(part * (times.length - 1))] ?? Number.NaN;
  return {
    p50: at(clock, 0.5),
    p95: at(clock, 0.95),
    processor: at(processor, 0.5),
    processor95: at(processor, 0.95),
    rest,
  };
}

/** Waits until the page has nothing more to do. */
async function quiet(session: CDPSession): Promise<void> {
  let [before, now] = [-1, 0];
  while (now - before > 3) {
    before = now;
    await new Promise((resolve) => setTimeout(resolve, 300));
    now = (await processorTime(session)).all;
  }
}

/** Run in the page: moves a slider by a step, or chooses the next of a list, and takes the time of the redraw. */
async function move(option: string): Promise<number> {
  const slider = document.querySelector<HTMLInputElement>(`#set-${option}-slider`);
  const list = document.querySelector<HTMLSelectElement>(`#set-${option}`);
  const redrawn = new Promise<number>((resolve) => {
    new PerformanceObserver((entries, observer) => {
      for (const { duration } of entries.getEntriesByName('redraw')) {
        observer.disconnect();
        resolve(duration);
      }
    }).observe({ entryTypes: ['measure'] });
  });
  if (slider !== null) {
    const back = slider.dataset['back'] !== undefined;
    if (!back && Number(slider.value) + Number(slider.step) > Number(slider.max)) slider.dataset['back'] = '';
    if (slider.dataset['back'] === undefined) slider.stepUp();
    else slider.stepDown();
    slider.dispatchEvent(new Event('input', { bubbles: true }));
  } else if (list !== null) {
    list.selectedIndex = (list.selectedIndex + 1) % list.options.length;
    list.dispatchEvent(new Event('input', { bubbles: true }));
  }
  const taken = await redrawn;
  await new Promise((resolve) => setTimeout(resolve, 33));
  return taken;
}
