import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { connect, hasChromium, open, plain, rendered, skipReason } from './chromium.js';
import { demoParts } from './notebook-folders.js';

const notebooks = fileURLToPath(new URL('../../notebooks', import.meta.url));

/** What a calliper and a label say: no spring, so no landing. */
const smallest = `dashpot: 1
oils:
  - { name: my oil, base: silicone, viscosity: 350 cSt }
pistons:
  - { name: mine, diameter: 11.9 mm, thickness: 2.5 mm, holes: [{ count: 2, diameter: 1.5 mm }] }
shocks:
  - { name: my shock, bore: 12 mm, shaft: 3 mm, stroke: 25 mm }
`;

describe.skipIf(!hasChromium)(`the lines that a page asks for${skipReason}`, () => {
  let browser: Browser;

  beforeAll(async () => {
    browser = await connect();
  });

  afterAll(async () => {
    await browser?.close();
  });

  it('are copied as they stand, and with them the page answers', async () => {
    const built = await rendered('landing', notebooks, demoParts);
    const { page, requests, lines } = await open(browser, built.address);
    const choose = (text: string) =>
      page
        .locator('#parts-open')
        .setInputFiles({ name: 'mine.yaml', mimeType: 'text/yaml', buffer: Buffer.from(text) });
    await page.locator('.parts summary').click();
    await choose(smallest);
    await expect.poll(() => plain(page.locator('.answer'))).toContain('do not say enough');
    const asked = (await page.locator('pre.lines').textContent()) ?? '';
    expect(asked).toContain('springs:');
    // As a reader would: mark the lines, copy, and paste them at the end of the file.
    await page.evaluate(() => {
      const lines = document.querySelector('pre.lines');
      if (lines !== null) getSelection()?.selectAllChildren(lines);
    });
    const copied = await page.evaluate(() => getSelection()?.toString() ?? '');
    expect(copied.trimEnd()).toBe(asked.trimEnd());
    await choose(`${smallest}${copied}\n`);
    await expect.poll(() => plain(page.locator('.answer'))).toMatch(/^Dropped 100 mm on my oil/u);
    expect([requests, lines]).toEqual([[], []]);
  });
});
