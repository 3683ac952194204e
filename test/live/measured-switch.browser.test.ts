import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  connect,
  hasChromium,
  open,
  plain,
  type Rendered,
  rendered,
  renderedFile,
  skipReason,
} from './chromium.js';
import { demoParts, realNotebooks, testNotebooks } from './notebook-folders.js';
import { answer, openParts, openSettings, saidOf } from './one-file-reader.js';

const use = (page: Page) => page.locator('#parts-use');
const help = (page: Page) => plain(page.locator('#parts-use-help'));
const stated = 'buggy rear: four 1.3 thin at 50 %.';
const measured = 'buggy rear: four 1.3 thin, as measured in buggy rear at 50 %.';

describe.skipIf(!hasChromium)(`shocks as stated or as measured, in a page${skipReason}`, () => {
  let browser: Browser;
  let built: Rendered;

  beforeAll(async () => {
    built = await renderedFile(testNotebooks, demoParts);
    browser = await connect();
  });

  afterAll(async () => {
    await browser?.close();
  });

  const edit = async (page: Page, viscosity: string): Promise<void> => {
    await page.locator('#parts-which').selectOption({ label: 'Oil clear 350' });
    await page.locator('.part input[data-path*=viscosity]').fill(viscosity);
    await page.keyboard.press('Enter');
  };

  it('are chosen once for all pages, kept, carried by the address, and compared with the stated ones', async () => {
    const { page, requests, lines } = await open(browser, `${built.address}#second-page?build=buggy+rear`);
    await expect.poll(() => answer(page)).toBe(stated);
    await openParts(page);
    expect(await use(page).inputValue()).toBe('stated');
    expect(await help(page)).toMatch(/^buggy rear: oil of 3\d\d cSt at 25 °C, holes .* larger than stated/u);
    await use(page).selectOption('measured');
    await expect.poll(() => answer(page)).toBe(measured);
    expect(await page.locator('#line .wide svg').innerHTML()).toContain('starting case');
    await expect.poll(() => page.url()).toContain('use=measured');
    const other = await open(browser, page.url());
    await expect.poll(() => answer(other.page)).toBe(measured);
    await other.page.context().close();
    await page.getByRole('link', { name: 'All questions' }).first().click();
    await expect.poll(() => saidOf(page, 'second-page')).toBe(measured);
    await page.reload();
    await page.waitForSelector('html.live');
    await expect.poll(() => saidOf(page, 'second-page')).toBe(measured);
    await openParts(page);
    expect(await use(page).inputValue()).toBe('measured');
    await use(page).selectOption('stated');
    await expect.poll(() => saidOf(page, 'second-page')).toBe(stated);
    expect([requests, lines]).toEqual([[], []]);
    await page.context().close();
  });

  it('offer as parts to change those of the file only', async () => {
    const { page } = await open(browser, `${built.address}#second-page?build=buggy+rear&use=measured`);
    await expect.poll(() => answer(page)).toBe(measured);
    await openParts(page);
    const parts = await page.locator('#parts-which option').allTextContents();
    expect(parts).toContain('Oil clear 350');
    expect(parts.filter((name) => name.includes('as measured'))).toEqual([]);
    await openSettings(page);
    // A part that only the measured shock has is chosen no more once that is gone.
    expect(await page.locator('#set-piston').inputValue()).toBe('four 1.3 thin, as measured in buggy rear');
    await page.locator('#set-build').selectOption('buggy front');
    await page.locator('#set-piston').selectOption('four 1.3 thin, as measured in buggy rear');
    await expect
      .poll(() => answer(page))
      .toBe('buggy front: four 1.3 thin, as measured in buggy rear at 50 %.');
    await use(page).selectOption('stated');
    await expect.poll(() => answer(page)).toBe('buggy front: two 1.7 at 50 %.');
    expect(await plain(page.locator('.fault'))).toBe('');
    await page.context().close();
  });

  it('are as stated where an edit took the ground from the fit, which the switch says, and as measured again without it', async () => {
    const { page } = await open(browser, `${built.address}#second-page?build=buggy+rear&use=measured`);
    await expect.poll(() => answer(page)).toBe(measured);
    await openParts(page);
    await edit(page, '400 cSt');
    await expect.poll(() => answer(page)).toBe(stated);
    expect(await use(page).isDisabled()).toBe(true);
    expect(await use(page).inputValue()).toBe('stated');
    expect(await help(page)).toBe(
      'buggy rear: changed since the measurements were fitted, so taken as stated; make the pages anew to fit them again.',
    );
    await edit(page, '350 cSt');
    await expect.poll(() => answer(page)).toBe(measured);
    expect(await use(page).isEnabled()).toBe(true);
    // An edit of what the fit does not rest on leaves it.
    await page.locator('#parts-which').selectOption({ label: 'Oil clear 200' });
    await page.locator('#parts-copy').fill('another oil');
    await page.locator('#parts-copy').press('Enter');
    await expect.poll(() => plain(page.locator('.told'))).toContain('is in the list');
    expect(await answer(page)).toBe(measured);
    expect(await use(page).inputValue()).toBe('measured');
    await page.getByRole('button', { name: 'Parts of this page' }).click();
    await expect.poll(() => answer(page)).toBe(measured);
    await page.context().close();
  });

  it('are no question where nothing was measured, or on the page of the measurements alone', async () => {
    const { page } = await open(browser, `${built.address}#second-page`);
    await openParts(page);
    await page.locator('#parts-open').setInputFiles({
      name: 'mine.yaml',
      mimeType: 'text/yaml',
      buffer: Buffer.from(
        'dashpot: 1\nabout: Invented.\noils: [{ name: thin, base: silicone, viscosity: 300 cSt, at: 25 °C }]\npistons: [{ name: mine, diameter: 11.9 mm, thickness: 2 mm, holes: [{ count: 2, diameter: 1.5 mm }] }]\nshocks: [{ name: front, bore: 12 mm, shaft: 3 mm, stroke: 25 mm }]\n',
      ),
    });
    await expect.poll(() => answer(page)).toContain('mine');
    expect(await use(page).isVisible()).toBe(false);
    await page.context().close();
    const alone = await rendered('what-you-have', realNotebooks, demoParts);
    const own = await open(browser, alone.address);
    await openParts(own.page);
    expect(await use(own.page).isVisible()).toBe(false);
    await own.page.context().close();
  });

  it('let a real page answer for the measured shock, and say so', async () => {
    const sheet = await rendered('build-sheet', realNotebooks, demoParts);
    const { page, lines } = await open(browser, `${sheet.address}#build=buggy+rear`);
    const time = async (): Promise<number> =>
      Number(/pull the shaft out in ([\d.]+)/u.exec(await answer(page))?.[1]);
    await expect.poll(time).toBeGreaterThan(0);
    const before = await time();
    await openParts(page);
    await use(page).selectOption('measured');
    // Thinner oil and larger holes let the weight come out sooner.
    await expect.poll(time).toBeLessThan(before);
    expect(await plain(page.locator('main'))).toContain('buggy rear is taken as measured, not as stated');
    expect(lines).toEqual([]);
    await page.context().close();
  });
});
