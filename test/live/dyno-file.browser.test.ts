import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readParts } from '../../lib/parts/index.js';
import { fileTexts } from '../notebooks/answers.js';
import { dynoRecord } from '../notebooks/dyno-record.js';
import {
  connect,
  content,
  hasChromium,
  open,
  plain,
  type Rendered,
  rendered,
  skipReason,
  type Watched,
} from './chromium.js';
import { demoParts } from './notebook-folders.js';

const notebooks = fileURLToPath(new URL('../../notebooks', import.meta.url));

describe.skipIf(!hasChromium)(`a dyno file opened in a page${skipReason}`, () => {
  let browser: Browser;
  let built: Rendered;
  let watched: Watched;
  let page: Page;

  beforeAll(async () => {
    built = await rendered('what-you-have', notebooks, demoParts);
    browser = await connect();
    watched = await open(browser, built.address);
    ({ page } = watched);
    await page.locator('.parts summary').click();
  });

  afterAll(async () => {
    await browser?.close();
  });

  const choose = (text: string) =>
    page
      .locator('#dyno-open')
      .setInputFiles({ name: 'run 3.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  const record = dynoRecord(readParts(fileTexts.demo), 'buggy front', 22, {
    thicker: 1.1,
    friction: 0.25,
    zero: 0,
    noise: 0.1,
  });

  it('is refused with its row, and nothing changes', async () => {
    const before = await plain(page.locator('.answer'));
    await page.locator('#dyno-build').selectOption('buggy front');
    await choose('speed (mm/s);force (N)\n10;1\n20;\n30;3\n40;4');
    await expect.poll(() => plain(page.locator('.fault'))).toContain('force must be a number in row 2');
    expect(await plain(page.locator('.answer'))).toBe(before);
  });

  it('becomes a measured shock, which the settings choose, and the saved file holds it', async () => {
    await page.locator('#dyno-temperature').fill('22 °C');
    await page.locator('#dyno-zero').fill('4 mm');
    await choose(record);
    await expect
      .poll(() => plain(page.locator('.dyno .told')))
      .toContain('run 3.csv is the last of the measurements');
    await page.locator('#set-which').fill('3');
    await expect.poll(() => plain(page.locator('.answer'))).toContain('buggy front behaves like');
    // Made once the reader pauses, since it is out of the window.
    await expect
      .poll(() => plain(page.locator('main')))
      .toContain('What the dyno shows, against the fitted shock');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save parts file' }).click(),
    ]);
    const saved = readParts((await content(download)).toString());
    expect(saved.measurements?.at(-1)?.dyno?.record.force).toHaveLength(500);
    expect([watched.requests, watched.lines]).toEqual([[], []]);
  });
});
