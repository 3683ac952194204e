import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { programOf } from './carried-program.js';
import { connect, hasChromium, open, plain, type Rendered, renderedFile, skipReason } from './chromium.js';
import { measure, violations } from './in-page.js';
import { demoParts, testNotebooks } from './notebook-folders.js';
import { answer, openParts, openSettings, saidOf } from './one-file-reader.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

describe.skipIf(!hasChromium)(`all pages in one file, in a browser${skipReason}`, () => {
  let browser: Browser;
  let built: Rendered;

  beforeAll(async () => {
    built = await renderedFile(testNotebooks, demoParts);
    browser = await connect();
  });

  afterAll(async () => {
    await browser?.close();
  });

  const heading = (page: Page) => plain(page.locator('h1'));
  const link = (page: Page, name: string) => page.getByRole('link', { name }).first();

  it('says the first sentence of each page without scripts', async () => {
    const { page } = await open(browser, built.address, { javaScriptEnabled: false });
    expect(await saidOf(page, 'all-controls')).toContain('at 50 % gives 5.00 N');
    expect(await saidOf(page, 'second-page')).toBe('buggy front: two 1.7 at 50 %.');
    expect(await plain(page.locator('.caution').first())).toContain('Scripts are off here');
    expect(await page.locator('button, input, select').count()).toBe(0);
    await page.context().close();
  });

  it('shows the first picture of each page before its program runs, and while nothing is changed', async () => {
    const stills = '.index .thumbnail svg path';
    const { page: printed } = await open(browser, built.address, { javaScriptEnabled: false });
    const drawn = await printed.locator(stills).evaluateAll((all) => all.map((one) => one.getAttribute('d')));
    expect(drawn.length).toBeGreaterThan(4);
    expect(await printed.locator('.not-yet').isVisible()).toBe(false);
    await printed.context().close();
    const { page } = await open(browser, built.address);
    expect(await page.locator('.not-yet').isVisible()).toBe(false);
    const shown = () => page.locator(stills).evaluateAll((all) => all.map((one) => one.getAttribute('d')));
    expect(await shown()).toEqual(drawn);
    await page.locator('#find').fill('second page');
    await expect.poll(() => page.locator('.index li').count()).toBe(1);
    await page.locator('#find').fill('');
    await expect.poll(shown).toEqual(drawn);
    await link(page, 'All controls').click();
    await openSettings(page);
    await page.locator('#set-slope').fill('80');
    await expect.poll(() => answer(page)).toContain('at 80 %');
    await link(page, 'All questions').click();
    await expect.poll(() => saidOf(page, 'all-controls')).toContain('at 80 %');
    expect(await page.locator('.thumbnail').count()).toBe(0);
    await link(page, 'All controls').click();
    await page.getByRole('button', { name: 'Back to the start' }).click();
    await expect.poll(() => answer(page)).toContain('at 50 %');
    await link(page, 'All questions').click();
    await expect.poll(shown).toEqual(drawn);
    await page.context().close();
  });

  it('says that it is not ready yet, until its program has taken over or cannot begin', async () => {
    const { page } = await open(browser, built.address, { bypassCSP: true });
    const states = await page.evaluate(() => {
      const root = document.documentElement;
      const seen = (): string => getComputedStyle(document.querySelector('.not-yet') as Element).display;
      const live = seen();
      root.classList.remove('live');
      const before = seen();
      dispatchEvent(new ErrorEvent('error'));
      return [live, before, seen()];
    });
    expect(states).toEqual(['none', 'block', 'none']);
    await page.context().close();
  });

  it('leads from the index to a page, on to the next, and back', async () => {
    const { page, requests, lines } = await open(browser, built.address);
    expect(await heading(page)).toBe('Damping, question by question');
    await link(page, 'All controls').click();
    await expect.poll(() => heading(page)).toBe('All controls');
    expect(await page.evaluate(() => document.activeElement?.localName)).toBe('h1');
    await expect.poll(() => page.locator('#line .wide svg path').count()).toBeGreaterThan(2);
    expect(await answer(page)).toContain('at 50 % gives 5.00 N');
    await page.locator('.way.end').getByRole('link', { name: 'Next: A second page' }).click();
    await expect.poll(() => heading(page)).toBe('A second page');
    expect(await page.title()).toContain('A second page');
    await page.goBack();
    await expect.poll(() => heading(page)).toBe('All controls');
    await link(page, 'All questions').click();
    await expect.poll(() => heading(page)).toBe('Damping, question by question');
    expect(await page.locator('#all-controls').count()).toBe(1);
    expect([requests, lines]).toEqual([[], []]);
    await page.context().close();
  });

  it('shows on each page what was chosen on another, and on the index too', async () => {
    const { page } = await open(browser, `${built.address}#all-controls`);
    await openSettings(page);
    await page.locator('#set-slope').fill('80');
    await expect.poll(() => answer(page)).toContain('at 80 %');
    await link(page, 'Next: A second page').click();
    await expect.poll(() => answer(page)).toBe('buggy front: two 1.7 at 80 %.');
    await openSettings(page);
    expect(await page.locator('#set-slope').inputValue()).toBe('80');
    await page.locator('#set-build').selectOption('big buggy front');
    await expect.poll(() => answer(page)).toBe('big buggy front: eight 1.4 at 80 %.');
    await link(page, 'All questions').click();
    await expect.poll(() => saidOf(page, 'second-page')).toBe('big buggy front: eight 1.4 at 80 %.');
    await expect.poll(() => saidOf(page, 'all-controls')).toContain('eight 1.4 at 80 %');
    await link(page, 'All controls').click();
    await expect.poll(() => answer(page)).toContain('eight 1.4 at 80 %');
    await page.getByRole('button', { name: 'Back to the start' }).click();
    await expect.poll(() => answer(page)).toContain('two 1.7 at 50 %');
    await page.context().close();
  });

  it('says what a page goes without, and what it keeps', async () => {
    const { page } = await open(browser, `${built.address}#all-controls?slope=150+%25`);
    await expect.poll(() => answer(page)).toContain('at 150 %');
    await link(page, 'Next: A second page').click();
    await expect.poll(() => answer(page)).toContain('at 50 %');
    expect(await plain(page.locator('.fault'))).toContain(
      'slope: "150 %" is out of range; accepted is 0% to 100%',
    );
    await page.goBack();
    await expect.poll(() => answer(page)).toContain('at 150 %');
    await page.context().close();
  });

  it('has an address for a setting of a page, which says all of it', async () => {
    const first = await open(browser, `${built.address}#second-page`);
    await openSettings(first.page);
    await first.page.locator('#set-slope').fill('70');
    await first.page.locator('#set-build').selectOption('big buggy front');
    await expect
      .poll(() => first.page.url())
      .toMatch(/#second-page\?build=big\+buggy\+front&slope=70\+%25$/u);
    const other = await open(browser, first.page.url());
    await expect.poll(() => answer(other.page)).toBe('big buggy front: eight 1.4 at 70 %.');
    await other.page.goto(`${built.address}#second-page?slope=999+%25`);
    await expect.poll(() => plain(other.page.locator('.fault'))).toContain('out of range');
    expect(await answer(other.page)).toBe('big buggy front: eight 1.4 at 70 %.');
    await first.page.context().close();
    await other.page.context().close();
  });

  it('finds a question, and a word that only a page says', async () => {
    const { page } = await open(browser, built.address);
    const names = () => page.locator('.index li').evaluateAll((all) => all.map(({ id }) => id));
    await page.locator('#find').fill('COME along');
    await expect.poll(names).toEqual(['second-page']);
    expect(await plain(page.locator('.count'))).toContain('1 of 3 pages');
    await page.locator('#find').fill('heron');
    await expect.poll(names).toEqual(['second-page']);
    expect(await plain(page.locator('.found'))).toBe('“A heron stands in the shallows.”');
    await page.locator('#find').fill('gannet');
    await expect.poll(names).toEqual([]);
    await page.locator('#find').fill('');
    await expect.poll(names).toEqual(['all-controls', 'second-page', 'wants-plenty']);
    await page.context().close();
  });

  it('keeps a page that it cannot answer, which says why and answers once the parts say more', async () => {
    const { page } = await open(browser, built.address);
    expect(await saidOf(page, 'wants-plenty')).toContain('do not say enough');
    await link(page, 'A page in want').click();
    await expect
      .poll(() => plain(page.locator('main')))
      .toContain('first oil must be "plenty", got clear 200');
    await openParts(page);
    await page.locator('#parts-which').selectOption({ label: 'Oil clear 200' });
    await page.locator('#part-oils-0-name').fill('plenty');
    await page.keyboard.press('Enter');
    await expect.poll(() => answer(page)).toBe('There is plenty.');
    await page.context().close();
  });

  it('keeps what was typed and opened on a page while the reader is on another', async () => {
    const { page } = await open(browser, `${built.address}#all-controls`);
    await page.locator('#line summary').click();
    await link(page, 'Next: A second page').click();
    await expect.poll(() => heading(page)).toBe('A second page');
    await page.goBack();
    await expect.poll(() => heading(page)).toBe('All controls');
    expect(await page.locator('#line details').getAttribute('open')).not.toBeNull();
    await page.context().close();
  });

  it('admits no script and no style but its own, by their hashes, and no connection', () => {
    const text = readFileSync(fileURLToPath(built.address), 'utf8');
    const [, policy = ''] = /http-equiv="Content-Security-Policy" content="([^"]*)"/u.exec(text) ?? [];
    const hashed = (part: string): string => `'sha256-${createHash('sha256').update(part).digest('base64')}'`;
    const [, loader = ''] = /<script>([\s\S]*?)<\/script>/u.exec(text) ?? [];
    const [, style = ''] = /<style>([\s\S]*?)<\/style>/u.exec(text) ?? [];
    expect(policy).toBe(
      `default-src 'none'; script-src ${hashed(loader)} ${hashed(programOf(text))}; img-src blob:; require-trusted-types-for 'script'; trusted-types program; style-src ${hashed(style)}; font-src data:; base-uri 'none'; form-action 'none'`,
    );
  });

  it('is accessible and fits, wide and narrow, light and dark', async () => {
    const { page, requests, lines } = await open(browser, built.address);
    await page.evaluate(axe);
    for (const [width, colorScheme, hash, title] of [
      [1024, 'light', '', 'Damping, question by question'],
      [390, 'dark', '', 'Damping, question by question'],
      [1024, 'dark', 'all-controls', 'All controls'],
      [390, 'light', 'all-controls', 'All controls'],
      [390, 'light', 'wants-plenty', 'A page in want'],
    ] as const) {
      await page.setViewportSize({ width, height: 800 });
      await page.emulateMedia({ colorScheme });
      await page.evaluate((to) => {
        location.hash = to;
      }, hash);
      await expect.poll(() => heading(page)).toBe(title);
      await page.evaluate(() => {
        for (const part of document.querySelectorAll('details')) part.setAttribute('open', '');
      });
      expect((await page.evaluate(measure)).scrollWidth, `${hash} ${width}`).toBeLessThanOrEqual(width);
      expect(await page.evaluate(violations, []), `${hash} ${width} ${colorScheme}`).toEqual([]);
    }
    expect([requests, lines]).toEqual([[], []]);
    await page.context().close();
  });

  it('prints the page that is read, without controls and without the way to others', async () => {
    const { page } = await open(browser, `${built.address}#second-page?slope=70+%25`);
    await expect.poll(() => answer(page)).toContain('at 70 %');
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.way, .controls, .index').filter({ visible: true }).count()).toBe(0);
    expect(await page.locator('h1').filter({ visible: true }).textContent()).toBe('A second page');
    expect(await plain(page.locator('.settings'))).toContain('Slope70%');
    await page.context().close();
  });
});
