import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  connect,
  content,
  hasChromium,
  open,
  plain,
  type Rendered,
  rendered,
  skipReason,
} from './chromium.js';
import { demoParts, testNotebooks } from './notebook-folders.js';

describe.skipIf(!hasChromium)(`a live page in a browser${skipReason}`, () => {
  let browser: Browser;
  let built: Rendered;

  beforeAll(async () => {
    built = await rendered('all-controls', testNotebooks, demoParts);
    browser = await connect();
  });

  afterAll(async () => {
    await browser?.close();
  });

  const answer = (page: Page) => plain(page.locator('.answer'));

  it('starts as it was rendered: nothing moves until a control does', async () => {
    const still = await open(browser, built.address, { javaScriptEnabled: false });
    const live = await open(browser, built.address);
    const picture = (page: Page) => page.locator('#line .wide').innerHTML();
    expect(await picture(live.page)).toBe(await picture(still.page));
    expect(await answer(live.page)).toBe(await answer(still.page));
    expect(await live.page.locator('.panel input, .panel select').count()).toBeGreaterThan(8);
    expect(await still.page.locator('button, input, select').count()).toBe(0);
    await still.page.context().close();
    await live.page.context().close();
  });

  it('changes what each control should change', async () => {
    const { page, requests, lines } = await open(browser, built.address);
    const texts: string[] = [await answer(page)];
    const after = async (act: () => Promise<unknown>): Promise<void> => {
      await act();
      await expect.poll(() => answer(page)).not.toBe(texts.at(-1));
      texts.push(await answer(page));
    };
    await after(() => page.locator('#set-slope-slider').press('ArrowRight'));
    expect(texts.at(-1)).toContain('at 55 % gives 5.50 N');
    await after(() => page.locator('#set-slope').fill('120'));
    expect(texts.at(-1)).toContain('at 120 % gives 12.00 N');
    expect(await plain(page.locator('main'))).toContain('Steeper than it looks.');
    expect(await plain(page.locator('#line figcaption'))).toContain('It ends at 12.00 N.');
    expect(await plain(page.locator('#ends td:not(.words)').first())).toBe('12');
    await after(() => page.locator('#set-law').selectOption('bent'));
    expect(await page.locator('#line .wide div').getAttribute('aria-label')).toContain('A bent line');
    await after(() => page.locator('#set-piston').selectOption({ index: 1 }));
    await after(() => page.locator('#set-oils-0').uncheck());
    expect(await page.locator('#dots .wide svg').innerHTML()).toContain('starting case');
    await page.locator('#set-count').fill('4');
    await expect.poll(() => plain(page.locator('.assumptions'))).toContain('4 points.');
    expect([requests, lines]).toEqual([[], []]);
    await page.context().close();
  });

  it('says when a check fails, and how', async () => {
    const { page } = await open(browser, built.address);
    await page.locator('#set-slope').fill('160');
    await expect.poll(() => plain(page.locator('main'))).toContain('Check failed.');
    expect(await plain(page.locator('main'))).toContain('1 of 1 checks failed.');
    await page.context().close();
  });

  it('keeps its axes still while the data stay within those of the start, and widens them when they do not', async () => {
    const { page } = await open(browser, built.address);
    const ticks = async (): Promise<string> =>
      (await page.locator('#line .wide svg text').allTextContents())
        .filter((text) => /^\d+$/u.test(text))
        .join(' ');
    const paths = () =>
      page.locator('#line .wide path').evaluateAll((all) => all.map((one) => one.getAttribute('d')).join());
    const [before, drawn] = [await ticks(), await paths()];
    await page.locator('#set-slope').fill('25');
    await expect.poll(paths).not.toBe(drawn);
    expect(await ticks()).toBe(before);
    await page.locator('#set-slope').fill('200');
    await expect.poll(ticks).not.toBe(before);
    await page.context().close();
  });

  it('keeps its state in the address, and goes back to the start', async () => {
    const { page } = await open(browser, built.address);
    const before = await answer(page);
    await page.locator('#set-slope').fill('80');
    await page.locator('#set-oils-1').uncheck();
    await expect.poll(() => page.url()).toMatch(/#slope=80\+%25&oils=/u);
    const [shared, text] = [page.url(), await answer(page)];
    const other = await open(browser, shared);
    await expect.poll(() => answer(other.page)).toBe(text);
    expect(await other.page.locator('#set-slope').inputValue()).toBe('80');
    await page.getByRole('button', { name: 'Back to the start' }).click();
    await expect.poll(() => answer(page)).toBe(before);
    expect(await page.locator('#line .wide svg').innerHTML()).not.toContain('starting case');
    await expect.poll(() => new URL(page.url()).hash).toBe('');
    await other.page.context().close();
    await page.context().close();
  });

  it('answers an address that asks for nonsense with a sentence, and stays as it was', async () => {
    const { page, lines } = await open(browser, `${built.address}#slope=9000+%25&oils=<b>none</b>&nothing=1`);
    await expect.poll(() => plain(page.locator('.fault'))).toContain('out of range');
    expect(await plain(page.locator('.fault'))).toContain('<b>none</b>');
    expect(await page.locator('.fault b').count()).toBe(0);
    expect(await answer(page)).toContain('at 50 %');
    await page.locator('#set-slope').fill('95');
    await expect.poll(() => plain(page.locator('.fault'))).toContain('slope must be anything but 0.95');
    await page.locator('#set-slope').fill('90');
    await expect.poll(() => plain(page.locator('.fault'))).toBe('');
    expect(lines).toEqual([]);
    await page.context().close();
  });

  it('copies numbers and saves pictures', async () => {
    const { page, requests, lines } = await open(browser, built.address, {
      permissions: ['clipboard-read', 'clipboard-write'],
    });
    await page.locator('#set-slope').fill('100');
    await expect.poll(() => answer(page)).toContain('at 100 %');
    await page.getByRole('button', { name: 'Copy numbers, ends' }).click();
    await expect
      .poll(() => page.evaluate(() => navigator.clipboard.readText()))
      .toContain('Oil,"Force, N"\r\n');
    const saved = async (name: string): Promise<Buffer> => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name }).click(),
      ]);
      return content(download);
    };
    const svg = (await saved('Save SVG, line')).toString();
    expect(svg).toMatch(/^<svg /u);
    expect(svg).toContain('starting case');
    const png = await saved('Save PNG, dots');
    // Signature and width of PNG (ISO/IEC 15948, 5.2 and 11.2.2): twice the wide layout.
    expect(png.subarray(1, 4).toString()).toBe('PNG');
    expect(png.readUInt32BE(16)).toBe(2 * 680);
    expect([requests, lines]).toEqual([[], []]);
    await page.context().close();
  });

  it('leaves alone what a reader opened, and fills it', async () => {
    const { page } = await open(browser, built.address);
    await page.locator('#line summary').click();
    await page.locator('#set-slope').fill('100');
    await expect.poll(() => plain(page.locator('#line details td').last())).toBe('30.0');
    expect(await page.locator('#line details').getAttribute('open')).not.toBeNull();
    // The closed one is filled when it is opened.
    await page.locator('#dots summary').click();
    expect(await plain(page.locator('#dots details'))).toContain('10');
    await page.context().close();
  });

  it('prints its state, its settings in words, and no control', async () => {
    const { page } = await open(browser, built.address, { viewport: { width: 390, height: 844 } });
    await page.locator('#set-slope').fill('75');
    await expect.poll(() => answer(page)).toContain('at 75 %');
    await expect.poll(() => page.locator('#line .wide svg').innerHTML()).toContain('starting case');
    await page.emulateMedia({ media: 'print' });
    expect(await plain(page.locator('.settings'))).toContain('75%');
    expect(await page.locator('button:visible, input:visible, select:visible, .narrow:visible').count()).toBe(
      0,
    );
    expect((await page.pdf()).subarray(0, 5).toString()).toBe('%PDF-');
    await page.context().close();
  });

  it('draws the same pictures step by step as at once', async () => {
    const stepped = await open(browser, built.address);
    for (const slope of ['75', '190', '120', '85']) {
      await stepped.page.locator('#set-slope').fill(slope);
      await expect.poll(() => answer(stepped.page)).toContain(`at ${slope} %`);
    }
    await stepped.page.locator('#set-count').fill('7');
    await stepped.page.locator('#set-count').fill('6');
    await stepped.page.locator('#set-oils-2').uncheck();
    await expect.poll(() => stepped.page.url()).toContain('oils=');
    const once = await open(browser, stepped.page.url());
    await expect.poll(() => answer(once.page)).toBe(await answer(stepped.page));
    const pictures = (page: Page) => page.evaluate(allPictures);
    await expect.poll(() => pictures(stepped.page)).toEqual(await pictures(once.page));
    await once.page.context().close();
    await stepped.page.context().close();
  });

  it('redraws into what a fresh start would draw', async () => {
    const { page } = await open(browser, built.address);
    await page.locator('#set-slope').fill('75');
    await expect.poll(() => answer(page)).toContain('at 75 %');
    await page.getByRole('button', { name: 'Back to the start' }).click();
    await expect.poll(() => answer(page)).toContain('at 50 %');
    const fresh = await open(browser, built.address);
    expect(await page.evaluate(markupOfMain)).toBe(await fresh.page.evaluate(markupOfMain));
    await fresh.page.context().close();
    await page.context().close();
  });
});

/** Run in the page: its middle without controls and pictures. */
function markupOfMain(): string | undefined {
  const main = document.querySelector('main')?.cloneNode(true);
  if (!(main instanceof Element)) return undefined;
  for (const part of main.querySelectorAll('.controls, .wide, .narrow')) part.remove();
  return main.innerHTML;
}

/** Run in the page: the marks of its pictures as texts, in any order: Vega appends those that come later. */
function allPictures(): readonly string[] {
  return [...document.querySelectorAll('figure .wide svg :is(path, line, text)')]
    .filter((mark) => mark.getAttribute('fill') !== 'transparent')
    .map((mark) => {
      const { x, y, width, height } = mark.getBoundingClientRect();
      const place = [x, y + scrollY, width, height].map((size) => Math.round(10 * size) / 10);
      const look = ['d', 'fill', 'stroke', 'stroke-dasharray'].map((name) => mark.getAttribute(name) ?? '');
      return [mark.localName, mark.textContent, ...place, ...look].join(' ');
    })
    .sort();
}
