import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { connect, hasChromium, open, plain, rendered, skipReason } from './chromium.js';
import { demoParts } from './notebook-folders.js';

const notebooks = fileURLToPath(new URL('../../notebooks', import.meta.url));
const file = (text: string) => ({ name: 'ride.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });

describe.skipIf(!hasChromium)(`a recording opened in a page${skipReason}`, () => {
  let browser: Browser;

  beforeAll(async () => {
    browser = await connect();
  });

  afterAll(async () => {
    await browser?.close();
  });

  it('moves the shock of bench-stroke from where its travel is 0, and is refused by its row', async () => {
    const built = await rendered('bench-stroke', notebooks, demoParts);
    const { page, requests, lines } = await open(browser, built.address);
    await page.locator('.parts summary').click();
    const before = await plain(page.locator('.answer'));
    const record = 'time (s);travel (mm)\n0;0\n0,05;8\n0,1;2\n';
    await page.locator('#course-zero').fill('20 mm');
    await page.locator('#course-open').setInputFiles(file(record));
    await expect.poll(() => plain(page.locator('.fault'))).toContain('got 28 mm in row 2');
    expect(await plain(page.locator('.answer'))).toBe(before);
    await page.locator('#course-zero').fill('4 mm');
    await page.locator('#course-open').setInputFiles(file(record));
    await expect
      .poll(() => plain(page.locator('.answer')))
      .toContain('Moved as recorded, 0.1 s long, 4 mm to 12 mm in');
    expect(await plain(page.locator('.course .told'))).toContain('ride.csv is part of the parts now');
    expect([requests, lines]).toEqual([[], []]);
  });

  it('lies under the corner of landing', async () => {
    const built = await rendered('landing', notebooks, demoParts);
    const { page } = await open(browser, built.address);
    await page.locator('.parts summary').click();
    await page.locator('#course-open').setInputFiles(file('time (s),height (mm)\n0,0\n0.1,20\n0.2,0'));
    await expect.poll(() => plain(page.locator('.answer'))).toContain('Over the recorded ground, 0.2 s long');
  });
});
