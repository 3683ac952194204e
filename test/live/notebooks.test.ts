import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { listNotebooks } from '../../lib/runner/notebook-list.js';
import { runCommand } from '../../lib/runner/run-command.js';
import { demoParts, hasChromium, launch, open, realNotebooks, skipReason } from './chromium.js';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 300_000 });

const notebooks = await listNotebooks(realNotebooks);
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const places = [
  { width: 1024, height: 768, colorScheme: 'light' },
  { width: 390, height: 844, colorScheme: 'dark' },
] as const;
/** The largest page [bytes]. */
const largestPage = 600_000;

describe.skipIf(!hasChromium)(`each notebook with the demo parts, in a browser${skipReason}`, () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'dashpot-notebooks-'));
  const fileOf = (name: string): string => path.join(folder, name, `${name}.html`);
  let browser: Browser;

  beforeAll(async () => {
    const said: string[] = [];
    await runCommand([], {
      workingFolder: folder,
      notebookFolder: realNotebooks,
      demoParts,
      outFolder: folder,
      version: '1.2.3',
      print: () => undefined,
      printError: (line) => said.push(line),
    });
    expect(said).toEqual([]);
    browser = await launch();
  });

  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it.each(notebooks.map(({ name }) => name))('%s: quiet, whole, accessible', async (name) => {
    const [wide, ...others] = places;
    const { page, requests, lines } = await open(browser, pathToFileURL(fileOf(name)).href, {
      viewport: wide,
      colorScheme: wide.colorScheme,
      reducedMotion: 'reduce',
    });
    const slider = page.locator('.panel input[type=range]').first();
    if ((await slider.count()) > 0) {
      const whole = () => page.locator('main').textContent();
      const before = await whole();
      await slider.press('ArrowRight');
      await slider.press('ArrowRight');
      await expect.poll(whole).not.toBe(before);
    }
    expect(await page.locator('.fault').textContent()).toBe('');
    for (const disclosure of await page.locator('.parts:not([open])>summary').all()) await disclosure.click();
    await page.evaluate(axe);
    for (const { width, height, colorScheme } of [wide, ...others]) {
      await page.setViewportSize({ width, height });
      await page.emulateMedia({ colorScheme });
      const found = await page.evaluate(measure);
      expect(found.scrollWidth).toBeLessThanOrEqual(width);
      expect(found.outside).toEqual([]);
      expect(found.fonts).toEqual(['Inter 400 loaded', 'Inter 600 loaded']);
      expect(await page.evaluate(violations)).toEqual([]);
    }
    expect([requests, lines]).toEqual([[], []]);
    await page.context().close();
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
    expect(await page.evaluate(violations)).toEqual([]);
    expect([requests, lines]).toEqual([[], []]);
    await page.context().close();
  });

  it.each(notebooks.map(({ name }) => name))('%s is small', (name) => {
    expect(statSync(fileOf(name)).size).toBeLessThanOrEqual(largestPage);
  });
});

/** Run in the page: its width, its fonts, and the texts that leave their picture. */
function measure() {
  const shown = [...document.querySelectorAll('figure svg')].filter(
    (svg) => svg.getBoundingClientRect().width > 0,
  );
  const outside = shown.flatMap((svg) => {
    const box = svg.getBoundingClientRect();
    return [...svg.querySelectorAll('text')].filter((text) => {
      const own = text.getBoundingClientRect();
      return own.left < box.left || own.right > box.right || own.top < box.top || own.bottom > box.bottom;
    });
  });
  return {
    scrollWidth: document.documentElement.scrollWidth,
    fonts: [...document.fonts].map((font) => `${font.family} ${font.weight} ${font.status}`),
    outside: outside.map((text) => text.textContent),
  };
}

/** Run in the page: what axe finds against WCAG 2.2 A and AA and its own good practice. */
async function violations(): Promise<readonly string[]> {
  const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
  const { violations: found } = await axe.run();
  return found.flatMap(({ id, nodes }) =>
    nodes.slice(0, 3).map(({ html }) => `${id}: ${html.slice(0, 200)}`),
  );
}
