import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { askFirstFile } from '../../lib/runner/ask-first-file.js';
import {
  connect,
  content,
  hasChromium,
  open,
  plain,
  type Rendered,
  renderedFile,
  skipReason,
} from './chromium.js';
import { measure, violations } from './in-page.js';
import { demoParts, testNotebooks } from './notebook-folders.js';
import { answer, openParts, saidOf } from './one-file-reader.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What a reader types, step by step; the bases of the oils are chosen from a list. */
const typed = ['16 mm', '3.5 mm', '30 mm', '15.9 mm', '3 mm', '1.3 mm', '8', '30 wt', 'silicone', '35 cSt'];
const rest = ['petroleum', '40 °C', '95'];

describe.skipIf(!hasChromium)(`the form of a first file${skipReason}`, () => {
  let browser: Browser;
  let built: Rendered;

  beforeAll(async () => {
    built = await renderedFile(testNotebooks, demoParts);
    browser = await connect();
  });

  afterAll(async () => {
    await browser?.close();
  });

  const step = (page: Page) => plain(page.locator('.step'));
  const fault = (page: Page) => plain(page.locator('#first-fault'));
  const focused = (page: Page) => page.evaluate(() => document.activeElement?.id);
  const save = (page: Page) => page.getByRole('button', { name: 'Save my-parts.yaml' });

  /** Answers the step that is shown by keyboard alone, and goes on. */
  async function type(page: Page, text: string): Promise<void> {
    const before = await step(page);
    if ((await page.locator('fieldset').count()) > 0) {
      // The arrows go through the options; the first is chosen by the space bar.
      await page.keyboard.press('Space');
      if (text === 'petroleum') await page.keyboard.press('ArrowDown');
    } else {
      await page.keyboard.press('ControlOrMeta+A');
      await page.keyboard.type(text);
    }
    await page.keyboard.press('Enter');
    await expect
      .poll(() =>
        page
          .locator('.step')
          .textContent({ timeout: 1000 })
          .catch(() => ''),
      )
      .not.toBe(before);
  }

  /** What the command line writes for the same answers. */
  async function written(answers: readonly string[]): Promise<string> {
    const [folder, left] = [mkdtempSync(path.join(tmpdir(), 'dashpot-form-')), [...answers]];
    try {
      const desk = {
        workingFolder: folder,
        calledAs: 'npx dashpot',
        print: () => undefined,
        nextLine: async () => left.shift(),
      };
      await askFirstFile('mine.yaml', desk);
      return readFileSync(path.join(folder, 'mine.yaml'), 'utf8');
    } finally {
      rmSync(folder, { recursive: true });
    }
  }

  it('asks by keyboard alone, and writes what the command line writes, for all pages at once', async () => {
    const { page, requests, lines } = await open(browser, built.address);
    await page.getByRole('link', { name: 'Begin with your own shock' }).click();
    await expect.poll(() => step(page)).toBe('Step 1 of 10');
    await page.locator('#first-bore').focus();
    for (const text of [...typed, ...rest]) await type(page, text);
    await expect.poll(() => plain(page.locator('#first-answers'))).toContain('Its viscosity index95');
    expect(await focused(page)).toBe('first-end');
    expect(await plain(page.locator('#first-guesses'))).toContain(
      'The oil that stays in the closed shock: fill',
    );
    await page.getByRole('button', { name: 'Write the file' }).click();
    await expect.poll(() => focused(page)).toBe('first-save');
    const [download] = await Promise.all([page.waitForEvent('download'), save(page).click()]);
    expect(download.suggestedFilename()).toBe('my-parts.yaml');
    expect((await content(download)).toString()).toBe(await written([...typed, ...rest]));
    await page.getByRole('link', { name: 'To the questions' }).click();
    await expect.poll(() => saidOf(page, 'second-page')).toBe('my build: my piston at 50 %.');
    await expect.poll(() => saidOf(page, 'all-controls')).toContain('with my oil and second oil');
    await page.getByRole('link', { name: 'All controls' }).first().click();
    await expect.poll(() => answer(page)).toContain('my piston at 50 %');
    expect(await page.locator('.parts b').textContent()).toBe('my-parts.yaml');
    expect([requests, lines]).toEqual([[], []]);
    await page.context().close();
  });

  it('says each fault at its field, goes back, and finds what a change of mind makes impossible', async () => {
    const { page } = await open(browser, `${built.address}#first-file`);
    await page.locator('#first-bore').fill('12');
    await page.getByRole('button', { name: 'Next' }).click();
    await expect.poll(() => fault(page)).toContain('"12" has no unit; write a length');
    expect(await step(page)).toBe('Step 1 of 10');
    expect(await page.locator('#first-bore').getAttribute('aria-invalid')).toBe('true');
    expect(await focused(page)).toBe('first-bore');
    await page.locator('#first-bore').fill('1,200 mm');
    await page.getByRole('button', { name: 'Next' }).click();
    await expect.poll(() => fault(page)).toContain('can mean 1200 mm or 1.2 mm');
    for (const text of ['16 mm', '3.5 mm', '30 mm', '15.9 mm']) await type(page, text);
    expect([await step(page), await fault(page)]).toEqual(['Step 5 of 10', '']);
    for (const label of ['Step 4 of 10', 'Step 3 of 10', 'Step 2 of 10', 'Step 1 of 10']) {
      await page.getByRole('button', { name: 'Back' }).click();
      await expect.poll(() => step(page)).toBe(label);
    }
    expect(await page.getByRole('button', { name: 'Back' }).count()).toBe(0);
    expect(await page.locator('#first-bore').inputValue()).toBe('16 mm');
    await page.locator('#first-bore').fill('12 mm');
    for (const label of ['Step 2 of 10', 'Step 3 of 10', 'Step 4 of 10']) {
      await page.getByRole('button', { name: 'Next' }).click();
      await expect.poll(() => step(page)).toBe(label);
    }
    await page.getByRole('button', { name: 'Next' }).click();
    await expect.poll(() => fault(page)).toMatch(/bore/u);
    expect(await step(page)).toBe('Step 4 of 10');
    await page.context().close();
  });

  it('keeps what was typed over a reload, and forgets it with all the rest', async () => {
    const { page } = await open(browser, `${built.address}#first-file`);
    await page.locator('#first-bore').focus();
    for (const text of typed.slice(0, 2)) await type(page, text);
    await page.locator('#first-stroke').fill('30 m');
    await page.reload();
    await expect.poll(() => page.locator('#first-stroke').inputValue()).toBe('30 m');
    await page.getByRole('button', { name: 'Back' }).click();
    await expect.poll(() => page.locator('#first-shaft').inputValue()).toBe('3.5 mm');
    await page.getByRole('link', { name: 'All questions' }).click();
    await openParts(page);
    await page.getByRole('button', { name: 'Forget what is kept' }).click();
    await page.getByRole('link', { name: 'Begin with your own shock' }).click();
    await expect.poll(() => page.locator('#first-bore').inputValue()).toBe('');
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
    await page.context().close();
  });

  it('is one step from a page that cannot answer, and warns before it puts changed parts aside', async () => {
    const { page } = await open(browser, `${built.address}#wants-plenty`);
    await openParts(page);
    await page.locator('#parts-which').selectOption({ label: 'Oil clear 200' });
    await page.locator('#part-oils-0-name').fill('thin');
    await page.keyboard.press('Enter');
    await expect.poll(() => plain(page.locator('.parts .told'))).toBe('');
    await page.locator('main').getByRole('link', { name: 'Begin with your own shock' }).click();
    await page.locator('#first-bore').focus();
    for (const text of [...typed.slice(0, -1), '']) await type(page, text);
    await expect.poll(() => plain(page.locator('#first-aside'))).toContain('You changed demo-parts.yaml.');
    await page.getByRole('button', { name: 'Write the file' }).click();
    await expect.poll(() => plain(page.locator('#first-told'))).toContain('all pages work with it');
    expect(await page.locator('#first-aside').count()).toBe(0);
    await page.reload();
    await expect.poll(() => plain(page.locator('#first-told'))).toContain('all pages work with it');
    await page.context().close();
  });

  it.each([
    { width: 390, height: 844, colorScheme: 'dark' },
    { width: 1024, height: 768, colorScheme: 'light' },
  ] as const)('is accessible and fits on each kind of step: $width px, $colorScheme', async (place) => {
    const { width, height, colorScheme } = place;
    const { page, requests, lines } = await open(browser, `${built.address}#first-file`, {
      viewport: { width, height },
      colorScheme,
    });
    const check = async (): Promise<void> => {
      expect((await page.evaluate(measure)).scrollWidth).toBeLessThanOrEqual(width);
      expect(await page.evaluate(violations, [])).toEqual([]);
    };
    await page.evaluate(axe);
    await page.getByRole('button', { name: 'Next' }).click();
    await expect.poll(() => fault(page)).toContain('nothing is written');
    await check();
    for (const text of typed.slice(0, 8)) await type(page, text);
    await page.getByRole('button', { name: 'Next' }).click();
    await expect.poll(() => fault(page)).toBe('nothing is written; write silicone or petroleum');
    await check();
    await type(page, 'silicone');
    await type(page, '');
    await page.locator('#first-file-text summary').click();
    await check();
    await page.getByRole('button', { name: 'Write the file' }).click();
    await expect.poll(() => save(page).count()).toBe(1);
    await check();
    expect([requests, lines]).toEqual([[], []]);
    await page.context().close();
  });

  it('is not offered where scripts are off, since it needs them', async () => {
    const { page } = await open(browser, built.address, { javaScriptEnabled: false });
    expect(await page.getByRole('link', { name: 'Begin with your own shock' }).count()).toBe(0);
    await page.context().close();
  });
});
