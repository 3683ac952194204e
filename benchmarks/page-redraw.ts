import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { runCommand } from '../lib/runner/run-command.js';

// From a move of a slider to the end of the redraw, on a page of four figures in Chromium: run of the notebook, texts, tables and pictures.
// Times on the clock grow with the load of the machine; the processor time of the page's own thread hardly does.
const moves = 200;
/** The first moves meet code that is not compiled yet. */
const warmUp = 20;
const fromHere = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

const folder = mkdtempSync(path.join(tmpdir(), 'dashpot-redraw-'));
await runCommand(['four-figures'], {
  workingFolder: folder,
  notebookFolder: fromHere('./page-redraw'),
  demoParts: fromHere('../notebooks/demo-parts.yaml'),
  outFolder: folder,
  version: '0.0.0',
  print: () => undefined,
  printError: (line) => console.error(line),
});
const file = path.join(folder, 'four-figures', 'four-figures.html');
console.log(`page: ${Math.round(statSync(file).size / 1000)} kB`);
const browser = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: ['--headless', '--no-sandbox', '--disable-gpu'],
});
for (const [what, height] of [
  ['a usual window', 768],
  ['a window that shows all four figures', 2600],
] as const) {
  await measure(browser, `${what}, moved 30 times a second`, height, 33);
  await measure(browser, `${what}, moved again at once`, height, 0);
}
await browser.close();
rmSync(folder, { recursive: true });
console.log(`load of the machine: ${(loadavg()[0] ?? Number.NaN).toFixed(1)}`);

async function measure(where: Browser, what: string, height: number, pause: number): Promise<void> {
  const page = await where.newPage({ viewport: { width: 1024, height } });
  await page.goto(pathToFileURL(file).href);
  await page.waitForSelector('html.live');
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const taskTime = async (): Promise<number> => {
    const { metrics } = await session.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
  };
  await page.evaluate(moveSlider, [warmUp, pause] as const);
  const before = await taskTime();
  const times = await page.evaluate(moveSlider, [moves, pause] as const);
  const processor = (1000 * ((await taskTime()) - before)) / moves;
  const sorted = times.sort((a, b) => a - b);
  const at = (part: number): string =>
    `${(sorted[Math.floor(part * (sorted.length - 1))] ?? Number.NaN).toFixed(1)} ms`;
  console.log(
    `${what}: p50 ${at(0.5)}, p95 ${at(0.95)}, least ${at(0)}; mean processor time of the page with layout and paint ${processor.toFixed(1)} ms`,
  );
  await page.close();
}

/** Run in the page: moves the slider so many times, each so long [ms] after the redraw before, and takes the time of each redraw. */
async function moveSlider([count, pause]: readonly [number, number]): Promise<number[]> {
  const slider = document.querySelector<HTMLInputElement>('#set-temperature-slider');
  const all: number[] = [];
  for (let move = 0; move < count && slider !== null; move++) {
    const redrawn = new Promise<number>((resolve) => {
      new PerformanceObserver((list, observer) => {
        for (const { duration } of list.getEntriesByName('redraw')) {
          observer.disconnect();
          resolve(duration);
        }
      }).observe({ entryTypes: ['measure'] });
    });
    slider.value = String(10 + (move % 80) / 2);
    slider.dispatchEvent(new Event('input', { bubbles: true }));
    all.push(await redrawn);
    if (pause > 0) await new Promise((resolve) => setTimeout(resolve, pause));
  }
  return all;
}
