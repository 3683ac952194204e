import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { runCommand } from '../lib/runner/run-command.js';

// From a move of a slider to the end of the redraw, on a page of four figures in Chromium: run of the notebook, texts, tables and pictures.
const moves = 200;
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
const page = await browser.newPage({
  viewport: { width: 1024, height: Number(process.env['HEIGHT'] ?? 768) },
});
await page.goto(pathToFileURL(file).href);
await page.waitForSelector('html.live');
const times = await page.evaluate(async (count) => {
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
  }
  return all;
}, moves);
await browser.close();
rmSync(folder, { recursive: true });

// The first moves meet code that is not compiled yet.
const sorted = times.slice(20).sort((a, b) => a - b);
const at = (part: number): string =>
  `${(sorted[Math.floor(part * (sorted.length - 1))] ?? Number.NaN).toFixed(1)} ms`;
console.log(
  `redraw of four figures, ${sorted.length} moves: p50 ${at(0.5)}, p95 ${at(0.95)}, least ${at(0)}`,
);
console.log(`load of the machine: ${(loadavg()[0] ?? Number.NaN).toFixed(1)}`);
