import { readFileSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
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
