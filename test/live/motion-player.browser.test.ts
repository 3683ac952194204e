import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { connect, hasChromium, open, rendered, skipReason } from './chromium.js';
import { demoParts, realNotebooks } from './notebook-folders.js';

describe.skipIf(!hasChromium)(`a shock at work${skipReason}`, () => {
  let address: string;
  let browser: Browser;

  beforeAll(async () => {
    ({ address } = await rendered('bench-stroke', realNotebooks, demoParts));
    browser = await connect();
  });

  afterAll(async () => {
    await browser?.close();
  });

  it('is moved by arrow keys, says where it is, follows a setting, and shows stills on paper', async () => {
    const { page, lines } = await open(browser, address, { viewport: { width: 1024, height: 768 } });
    const slider = page.locator('.player input');
    await slider.focus();
    const before = await slider.getAttribute('aria-valuetext');
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
    const after = await slider.getAttribute('aria-valuetext');
    expect(before).toMatch(/^0 ms: 2\.5 mm in, at rest/u);
    expect(after).toMatch(/mm in, going in at \d+ mm\/s, pushes out with/u);
    expect(await page.locator('.player svg').count()).toBe(1);
    expect(await page.locator('.stills').isVisible()).toBe(false);
    await page.locator('input[type=number]').nth(1).fill('10');
    await expect.poll(() => slider.getAttribute('aria-valuetext')).not.toBe(after);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.stills').isVisible()).toBe(true);
    expect(await page.locator('.player').isVisible()).toBe(false);
    expect(lines).toEqual([]);
    await page.context().close();
  });

  it('plays on a press and pauses on the next; never where motion is to be reduced', async () => {
    const { page } = await open(browser, address, { viewport: { width: 1024, height: 768 } });
    const button = page.locator('.player button');
    const place = () => page.locator('.player input').inputValue().then(Number);
    expect(await place()).toBe(0);
    await button.click();
    await expect.poll(place).toBeGreaterThan(3);
    await button.click();
    const stopped = await place();
    await page.waitForTimeout(300);
    expect(await place()).toBe(stopped);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    expect(await button.isVisible()).toBe(false);
    await page.context().close();
  });

  it('is whole without scripts', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(address);
    expect(await page.locator('.stills li svg:visible').count()).toBeGreaterThanOrEqual(3);
    await context.close();
  });
});
