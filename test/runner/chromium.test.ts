import { existsSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { removeFolders, run } from './sample-run.js';

const executablePath = '/usr/bin/chromium';
const missing = !existsSync(executablePath);
const flags = [
  'headless',
  'no-sandbox',
  'disable-gpu',
  'disable-quic',
  'no-first-run',
  'disable-background-networking',
  'disable-component-update',
  'disable-sync',
];

describe.skipIf(missing)(`a page in a browser${missing ? ` (skipped: no ${executablePath})` : ''}`, () => {
  let browser: Browser;
  let address: string;

  beforeAll(async () => {
    const { folder } = await run('sample');
    address = pathToFileURL(path.join(folder, 'out', 'sample', 'sample.html')).href;
    browser = await chromium.launch({ executablePath, args: flags.map((flag) => `--${flag}`) });
  }, 60_000);

  afterAll(async () => {
    await browser.close();
    removeFolders();
  });

  it.each([
    { width: 1024, height: 768, scripts: true },
    { width: 390, height: 844, scripts: true },
    { width: 390, height: 844, scripts: false },
  ])(
    'at $width px, scripts $scripts: asks for nothing, complains of nothing, does not scroll sideways, keeps texts in',
    async ({ width, height, scripts }) => {
      const context = await browser.newContext({
        viewport: { width, height },
        offline: true,
        javaScriptEnabled: scripts,
      });
      const page = await context.newPage();
      const requests: string[] = [];
      const lines: string[] = [];
      page.on('request', (request) => requests.push(request.url()));
      page.on('console', (message) => lines.push(message.text()));
      page.on('pageerror', (error) => lines.push(error.message));
      await page.goto(address);
      expect(requests.filter((url) => url !== address && !url.startsWith('data:'))).toEqual([]);
      expect(lines).toEqual([]);
      const found = await page.evaluate(measure);
      expect(found.scrollWidth).toBeLessThanOrEqual(width);
      expect(found.fonts).toEqual(['Inter 400 loaded', 'Inter 600 loaded']);
      expect(found.pictures).toBe(1);
      expect(found.texts).toBeGreaterThan(10);
      expect(found.outside).toEqual([]);
      await context.close();
    },
    60_000,
  );
});

/** Run in the page: its width, fonts, the pictures shown, and the texts that leave their picture. */
function measure() {
  const shown = [...document.querySelectorAll('figure svg')].filter(
    (svg) => svg.getBoundingClientRect().width > 0,
  );
  const texts = shown.flatMap((svg) => [...svg.querySelectorAll('text')].map((text) => ({ svg, text })));
  const outside = texts.filter(({ svg, text }) => {
    const box = svg.getBoundingClientRect();
    const own = text.getBoundingClientRect();
    return own.left < box.left || own.right > box.right || own.top < box.top || own.bottom > box.bottom;
  });
  return {
    scrollWidth: document.documentElement.scrollWidth,
    fonts: [...document.fonts].map((font) => `${font.family} ${font.weight} ${font.status}`),
    pictures: shown.length,
    texts: texts.length,
    outside: outside.map(({ text }) => text.textContent),
  };
}
