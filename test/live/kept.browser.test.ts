import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { connect, hasChromium, open, plain, type Rendered, renderedFile, skipReason } from './chromium.js';
import { demoParts, testNotebooks } from './notebook-folders.js';
import { answer, openParts, openSettings, saidOf } from './one-file-reader.js';

const ownParts = `dashpot: 1
about: Invented.
oils: [{ name: thin, base: silicone, viscosity: 300 cSt, at: 25 °C }]
pistons: [{ name: mine, diameter: 11.9 mm, thickness: 2 mm, holes: [{ count: 2, diameter: 1.5 mm }] }]
shocks: [{ name: front, bore: 12 mm, shaft: 3 mm, stroke: 25 mm }]
`;

describe.skipIf(!hasChromium)(`what one file keeps in the browser${skipReason}`, () => {
  let browser: Browser;
  let built: Rendered;

  beforeAll(async () => {
    built = await renderedFile(testNotebooks, demoParts);
    browser = await connect();
  });

  afterAll(async () => {
    await browser?.close();
  });

  it('keeps choices and edits over a reload, and forgets them when asked', async () => {
    const { page, requests, lines } = await open(browser, `${built.address}#all-controls`);
    await openSettings(page);
    await page.locator('#set-slope').fill('90');
    await openParts(page);
    await page
      .locator('#parts-open')
      .setInputFiles({ name: 'mine.yaml', mimeType: 'text/yaml', buffer: Buffer.from(ownParts) });
    await expect.poll(() => answer(page)).toContain('mine at 90 %');
    await page.locator('#parts-which').selectOption({ label: 'Piston mine' });
    await page.locator('#part-pistons-0-name').fill('my own');
    await page.keyboard.press('Enter');
    await expect.poll(() => answer(page)).toContain('my own at 90 %');
    await expect.poll(() => page.url()).toContain('slope=90');
    await page.reload();
    await page.waitForSelector('html.live');
    await expect.poll(() => answer(page)).toContain('my own at 90 %');
    await expect.poll(() => page.locator('#line .wide svg').innerHTML()).toContain('starting case');
    await page.goto(built.address);
    await page.reload();
    await page.waitForSelector('html.live');
    await expect.poll(() => saidOf(page, 'second-page')).toBe('front, my own: my own at 90 %.');
    await openParts(page);
    expect(await plain(page.locator('.kept'))).toContain('kept by this browser, on this device only');
    await page.getByRole('button', { name: 'Forget what is kept' }).click();
    await expect.poll(() => saidOf(page, 'second-page')).toBe('buggy front: two 1.7 at 50 %.');
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
    expect([requests, lines]).toEqual([[], []]);
    await page.context().close();
  });

  it('forgets for good, though a page comes to rest before the browser begins again', async () => {
    const context = await browser.newContext({ offline: true });
    // What waits for a pause is done when the test says so.
    await context.addInitScript(() => {
      const waiting: (() => void)[] = [];
      const { setTimeout } = globalThis;
      Object.assign(globalThis, {
        rest: () => waiting.splice(0).map((work) => work()).length,
        setTimeout: (work: () => void, delay?: number) =>
          delay === 250 ? waiting.push(work) : setTimeout(work, delay),
      });
    });
    const page = await context.newPage();
    await page.goto(`${built.address}#second-page`);
    await page.waitForSelector('html.live');
    await openSettings(page);
    await openParts(page);
    await page.locator('#set-slope').fill('70');
    await expect.poll(() => answer(page)).toContain('at 70 %');
    const rested = await page.getByRole('button', { name: 'Forget what is kept' }).evaluate((button) => {
      if (button instanceof HTMLElement) button.click();
      return (globalThis as unknown as { readonly rest: () => number }).rest();
    });
    expect(rested).toBeGreaterThan(0);
    await expect.poll(() => answer(page)).toContain('at 50 %');
    expect(page.url()).toBe(`${built.address}#second-page`);
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
    await context.close();
  });

  it('says so where the browser keeps nothing, and works all the same', async () => {
    const context = await browser.newContext({ offline: true });
    await context.addInitScript(() => {
      Object.defineProperty(globalThis, 'localStorage', {
        get() {
          throw new DOMException('denied', 'SecurityError');
        },
      });
    });
    const page = await context.newPage();
    await page.goto(`${built.address}#second-page`);
    await expect.poll(() => answer(page)).toContain('at 50 %');
    await openParts(page);
    expect(await plain(page.locator('.kept'))).toContain('This browser keeps nothing');
    expect(await page.getByRole('button', { name: 'Forget what is kept' }).count()).toBe(0);
    await context.close();
  });

  it('begins as it came where something unreadable was kept', async () => {
    const { page } = await open(browser, built.address);
    await page.evaluate(() => {
      const { fingerprint } = JSON.parse(document.getElementById('start')?.textContent ?? '');
      localStorage.setItem(
        `dashpot ${fingerprint}`,
        JSON.stringify({ file: { name: 'x.yaml', text: 'nonsense' } }),
      );
    });
    // The page keeps what it has when it is left, which is nothing: the unreadable must come in after that.
    const kept = await page.evaluate(() => ({ ...localStorage }));
    const other = await browser.newContext({ offline: true });
    await other.addInitScript((entries) => {
      for (const [key, value] of Object.entries(entries)) localStorage.setItem(key, value);
    }, kept);
    const again = await other.newPage();
    await again.goto(`${built.address}#second-page`);
    await expect.poll(() => answer(again)).toBe('buggy front: two 1.7 at 50 %.');
    await other.close();
    await page.context().close();
  });
});
