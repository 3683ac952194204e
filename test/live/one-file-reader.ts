import type { Page } from 'playwright-core';
import { plain } from './chromium.js';

/** What a reader does with the one file, and sees. */
export const answer = (page: Page): Promise<string> => plain(page.locator('.answer'));

export const saidOf = (page: Page, name: string): Promise<string> => plain(page.locator(`#${name} .said`));

export async function openSettings(page: Page): Promise<void> {
  const panel = page.locator('.panel').first();
  if ((await panel.getAttribute('open')) === null) await panel.locator('summary').click();
}

export async function openParts(page: Page): Promise<void> {
  if ((await page.locator('.parts').getAttribute('open')) === null)
    await page.locator('.parts summary').click();
}
