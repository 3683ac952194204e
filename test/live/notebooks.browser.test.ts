import { readFileSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { choicesIn } from '../../lib/live/case/choices.js';
import { htmlText } from '../../lib/page/html/html-text.js';
import { pageBody } from '../../lib/page/html/page-body.js';
import { optionName, pageFigures } from '../../lib/page/index.js';
import { runNotebook } from '../../lib/page/run-notebook.js';
import { partsFile } from '../../lib/parts/parts-file.js';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import { draftHtml } from '../../lib/runner/watch/draft-html.js';
import { programOf, programPieces } from './carried-program.js';
import { connect, hasChromium, open, plain, renderedFile, skipReason } from './chromium.js';
import { measure, violations } from './in-page.js';
import { demoParts, realNotebooks } from './notebook-folders.js';

const notebooks = await listNotebooks(realNotebooks);
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const places = [
  { width: 1024, height: 768, colorScheme: 'light' },
  { width: 390, height: 844, colorScheme: 'dark' },
] as const;
/** What loads a page again, under whatever name a bundler gives the rest. */
const reloads = /EventSource|\breload\b/u;
/** The largest page, and the file of all pages [bytes]. */
const largestPage = 450_000;
const largestFile = 900_000;

describe.skipIf(!hasChromium)(`each notebook with the demo parts, in a browser${skipReason}`, () => {
  let folder: string;
  const fileOf = (name: string): string => path.join(folder, name, `${name}.html`);
  let browser: Browser;

  beforeAll(async () => {
    const { address } = await renderedFile(realNotebooks, demoParts);
    folder = path.dirname(fileURLToPath(address));
    browser = await connect();
  });

  afterAll(async () => {
    await browser?.close();
  });

  it.each(places)('the index at $width px, $colorScheme: leads to all of them, accessible', async (place) => {
    const { width, height, colorScheme } = place;
    const address = pathToFileURL(path.join(folder, 'index.html')).href;
    const { page, requests, lines } = await open(browser, address, {
      viewport: { width, height },
      colorScheme,
    });
    const links = await page.locator('a').evaluateAll((all) => all.map((link) => link.getAttribute('href')));
    expect(links).toEqual(notebooks.map(({ name }) => `${name}/${name}.html`));
    const ids = await page.locator('[id]').evaluateAll((all) => all.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
    expect((await page.evaluate(measure)).scrollWidth).toBeLessThanOrEqual(width);
    await page.evaluate(axe);
    expect(await page.evaluate(violations, [])).toEqual([]);
    expect([requests, lines]).toEqual([[], []]);
    await page.context().close();
  });

  it.each(notebooks.map(({ name }) => name))('%s is small, and never loads itself again', (name) => {
    const page = readFileSync(fileOf(name), 'utf8');
    expect(statSync(fileOf(name)).size).toBeLessThanOrEqual(largestPage);
    const program = programOf(page);
    expect(program).toContain('redraw');
    expect(page).not.toMatch(reloads);
    expect(program).not.toMatch(reloads);
  });

  it('are all in the one file: on a phone, quiet, each with the answer of its single page', async () => {
    const address = pathToFileURL(path.join(folder, 'dashpot.html')).href;
    const { page, requests, lines } = await open(browser, address, { viewport: { width: 390, height: 844 } });
    for (const { name, title } of notebooks) {
      await page.evaluate((hash) => {
        location.hash = hash;
      }, name);
      await expect.poll(() => page.locator('h1').textContent(), { message: name }).toBe(title);
      const single = JSON.parse(readFileSync(path.join(folder, name, `${name}.json`), 'utf8'));
      await expect.poll(() => plain(page.locator('.answer')), { message: name }).toBe(single.answer);
      expect((await page.evaluate(measure)).scrollWidth, name).toBeLessThanOrEqual(390);
    }
    expect([requests, lines]).toEqual([[], []]);
    await page.context().close();
  });

  it('say after a move of a slider what the command line would, as soon as the reader pauses', async () => {
    const address = pathToFileURL(path.join(folder, 'dashpot.html')).href;
    const { page, lines } = await open(browser, address);
    const printed = await browser.newPage();
    const file = partsFile('demo-parts.yaml', readFileSync(demoParts, 'utf8'));
    let compared = 0;
    for (const notebook of notebooks) {
      const first = Object.entries(notebook.parameters).find(([, { kind }]) => kind === 'quantity');
      if (first === undefined) continue;
      // Each page by itself: what was chosen on another would hold here too.
      await page.evaluate((hash) => {
        location.hash = hash;
      }, `${notebook.name}?`);
      await expect.poll(() => page.locator('h1').textContent()).toBe(notebook.title);
      await page.evaluate(moveSlider, `#set-${optionName(first[0])}-slider`);
      const fragment = new URL(page.url()).hash.split('?')[1] ?? '';
      expect(fragment, notebook.name).not.toBe('');
      const run = runNotebook(notebook, file.parts, choicesIn(fragment, notebook.parameters));
      const pictures = new Map(pageFigures(run.page).map(({ id }) => [id, { wide: '', narrow: '' }]));
      const body = pageBody({ ...run, about: file.parts.about, pictures });
      await printed.setContent(`<main>${htmlText(body)}</main>`);
      expect(await page.evaluate(wordsOfMain), notebook.name).toEqual(await printed.evaluate(wordsOfMain));
      compared += 1;
    }
    expect(compared).toBeGreaterThan(15);
    expect(lines).toEqual([]);
    await printed.close();
    await page.context().close();
  });

  it('are small all in one file too, with the same common program', () => {
    const file = readFileSync(path.join(folder, 'dashpot.html'), 'utf8');
    expect(Buffer.byteLength(file)).toBeLessThanOrEqual(largestFile);
    const [common] = programPieces(file);
    for (const { name } of notebooks) {
      const [first] = programPieces(readFileSync(fileOf(name), 'utf8'));
      expect(first === common, name).toBe(true);
    }
    expect(common?.length).toBeGreaterThan(100_000);
  });

  it('are told apart from a page under watch, which does', () => {
    expect(draftHtml('match', {}, { partsName: '', partsText: '', texts: {} }, 0)).toMatch(reloads);
  });
});

/** Run in the page: moves a slider a few steps, one after the other, and waits until the page is whole again. */
async function moveSlider(selector: string): Promise<void> {
  const slider = document.querySelector<HTMLInputElement>(selector);
  if (slider === null) throw new TypeError(`no slider ${selector}`);
  for (const part of document.querySelectorAll('main > :not(.controls) details'))
    part.setAttribute('open', '');
  const way = Number(slider.value) + 3 * Number(slider.step) <= Number(slider.max) ? 1 : -1;
  let moved = 0;
  for (let step = 0; step < 3; step++) {
    moved = performance.now();
    if (way > 0) slider.stepUp();
    else slider.stepDown();
    slider.dispatchEvent(new Event('input', { bubbles: true }));
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  // On a busy machine the page may be whole between two moves: it is the last one that counts, and what follows its redraw.
  const after = async (name: string, since: number): Promise<number> => {
    for (;;) {
      const found = performance.getEntriesByName(name).find(({ startTime }) => startTime >= since);
      if (found !== undefined) return found.startTime + found.duration;
      await new Promise(requestAnimationFrame);
    }
  };
  await after('whole', await after('redraw', moved));
}

/**
 * Run in the page: what its middle says, block by block, without controls, pictures, the rows behind them and what a check compared: late in a landing, and in draws by chance, those hang on the last digit of a power, which
 * is not the same in Node and in every browser.
 */
function wordsOfMain(): readonly string[] {
  const main = document.querySelector('main')?.cloneNode(true);
  if (!(main instanceof Element)) return [];
  for (const part of main.querySelectorAll('.controls, .wide, .narrow, .tools, .player, details, .detail'))
    part.remove();
  return [...main.children].map(({ textContent }) => textContent.trim());
}
