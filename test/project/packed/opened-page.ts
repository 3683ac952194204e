import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { toolRuns } from '../tools.js';

export const hasBrowser = toolRuns('chromium', ['--version']);

/** Opens a page and reads its answer, then turns its first slider up by ten steps and reads it again. */
export async function openedPage(file: string): Promise<{ readonly first: string; readonly warmer: string }> {
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
  try {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(file).href);
    await page.waitForSelector('html.live');
    const answer = page.locator('main .answer');
    const read = async (): Promise<string> =>
      ((await answer.textContent()) ?? '').replaceAll('\u00a0', ' ').trim();
    const first = await read();
    const panel = page.locator('.panel').first();
    if ((await panel.getAttribute('open')) === null) await panel.locator('summary').click();
    const slider = page.locator('input[type=range]').first();
    await slider.focus();
    for (let step = 0; step < 10; step++) await page.keyboard.press('ArrowRight');
    await page.waitForFunction(
      (before) =>
        document.querySelector('main .answer')?.textContent?.replaceAll('\u00a0', ' ').trim() !== before,
      first,
    );
    return { first, warmer: await read() };
  } finally {
    await browser.close();
  }
}
