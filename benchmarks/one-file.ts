import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { type Browser, type CDPSession, chromium, type Page } from 'playwright-core';
import { optionName } from '../lib/page/index.js';
import { listNotebooks } from '../lib/runner/build/notebook-list.js';
import { runCommand } from '../lib/runner/run-command.js';

// The file of all pages in Chromium: how large it is, how soon it shows its first figure, how long a page takes to follow another build and
// a slider. Times on the clock grow with the load of the machine; the processor time of the page's own thread hardly does. All pages are
// measured side by side in one run, and the ratio is that to the page of the middle.
const moves = 30;
/** The first moves meet code that is not compiled yet. */
const warmUp = 6;
const openings = 7;
const fromHere = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

const notebooks = await listNotebooks(fromHere('../notebooks'));
const folder = mkdtempSync(path.join(tmpdir(), 'dashpot-one-file-'));
await runCommand([], {
  workingFolder: folder,
  notebookFolder: fromHere('../notebooks'),
  demoParts: fromHere('../notebooks/demo-parts.yaml'),
  outFolder: folder,
  version: '0.0.0',
  print: () => undefined,
  printError: (line) => console.error(line),
});
const file = path.join(folder, 'dashpot.html');
const address = pathToFileURL(file).href;
console.log(
  `one file of ${notebooks.length} pages: ${Math.round(statSync(file).size / 1000)} kB (900 at most)`,
);
const largest = Math.max(
  ...notebooks.map(({ name }) => statSync(path.join(folder, name, `${name}.html`)).size),
);
console.log(`the largest single page: ${Math.round(largest / 1000)} kB (450 at most)`);

const browser = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: ['--headless', '--no-sandbox', '--disable-gpu'],
});
await firstFigure(browser);
const rows = [];
for (const notebook of notebooks) {
  const page = await browser.newPage({ viewport: { width: 1024, height: 768 } });
  await page.goto(`${address}#${notebook.name}`);
  await page.waitForSelector('html.live');
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const names = Object.entries(notebook.parameters);
  const slider = names.find(([, { kind }]) => kind === 'quantity')?.[0];
  const build = names.some(([name, { kind }]) => name === 'build' && kind === 'part') ? 'build' : undefined;
  rows.push({
    name: notebook.name,
    slider: slider === undefined ? undefined : await measured(page, session, optionName(slider)),
    build: build === undefined ? undefined : await measured(page, session, build),
  });
  await page.close();
}
await browser.close();
rmSync(folder, { recursive: true });

type Measure = Awaited<ReturnType<typeof measured>>;
for (const kind of ['slider', 'build'] as const) {
  const found = rows.flatMap((row) => (row[kind] === undefined ? [] : [{ name: row.name, ...row[kind] }]));
  const middle = found.map(({ processor }) => processor).sort((a, b) => a - b)[Math.floor(found.length / 2)];
  console.log(kind === 'slider' ? '\na slider moved (16 ms at p95)' : '\nanother build (150 ms at p95)');
  for (const one of found) console.log(line(one, middle ?? Number.NaN));
}
console.log(`\nload of the machine: ${(loadavg()[0] ?? Number.NaN).toFixed(1)}`);

function line({ name, p50, p95, processor }: Measure & { readonly name: string }, middle: number): string {
  return `${name.padEnd(18)} p50 ${p50.toFixed(1).padStart(6)} ms, p95 ${p95.toFixed(1).padStart(6)} ms, processor ${processor.toFixed(1).padStart(6)} ms, ${(processor / middle).toFixed(1)} times the page of the middle`;
}

/** From the request for the file to the first figure on the screen. */
async function firstFigure(where: Browser): Promise<void> {
  const times: number[] = [];
  for (let opening = 0; opening < openings; opening++) {
    const page = await where.newPage({ viewport: { width: 390, height: 844 } });
    await page.addInitScript(() => {
      const watch = new MutationObserver(() => {
        if (document.querySelector('figure svg path') === null) return;
        performance.mark('figure');
        watch.disconnect();
      });
      watch.observe(document, { childList: true, subtree: true });
    });
    await page.goto(`${address}#compare-oils`);
    await page.waitForSelector('figure svg path', { state: 'attached' });
    times.push(await page.evaluate(() => performance.getEntriesByName('figure')[0]?.startTime ?? Number.NaN));
    await page.close();
  }
  const sorted = times.sort((a, b) => a - b);
  console.log(
    `first figure after ${at(sorted, 0.5).toFixed(0)} ms (median of ${openings}), least ${at(sorted, 0).toFixed(0)} ms (1000 at most)`,
  );
}

function at(sorted: readonly number[], part: number): number {
  return sorted[Math.floor(part * (sorted.length - 1))] ?? Number.NaN;
}

async function measured(page: Page, session: CDPSession, option: string) {
  const taskTime = async (): Promise<number> => {
    const { metrics } = await session.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
  };
  await page.evaluate(move, [option, warmUp] as const);
  const before = await taskTime();
  const sorted = (await page.evaluate(move, [option, moves] as const)).sort((a, b) => a - b);
  const processor = (1000 * ((await taskTime()) - before)) / moves;
  return { p50: at(sorted, 0.5), p95: at(sorted, 0.95), processor };
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
