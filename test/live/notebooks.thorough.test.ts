import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { optionName } from '../../lib/page/parameters/parameter-text.js';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import { connect, hasChromium, open, renderedFolder, skipReason } from './chromium.js';
import { moveEachControl } from './each-control.js';
import { closeDisclosures, measure, violations } from './in-page.js';
import { demoParts, realNotebooks } from './notebook-folders.js';

const notebooks = await listNotebooks(realNotebooks);
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const places = [
  { width: 1024, height: 768, colorScheme: 'light' },
  { width: 390, height: 844, colorScheme: 'dark' },
] as const;

/** Controls that change nothing with the demo parts, by notebook and option, and why. */
const withoutEffect: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'build-sheet': {
    'ride-height': 'the shock of the build has no lengths in the file, so nothing is said of its shaft',
    'motion-ratio': 'the build has one in the file',
  },
  match: { right: 'the build says at which temperature it feels right' },
  'order-plan': { right: 'the builds say at which temperature they feel right' },
  'day-plan': {
    coldest: 'the file lists a day',
    hottest: 'the file lists a day',
    right: 'the build says at which temperature it feels right',
  },
};

describe.skipIf(!hasChromium)(`each notebook with the demo parts, at length${skipReason}`, () => {
  let browser: Browser;
  let addressOf: (name: string) => string;

  beforeAll(async () => {
    addressOf = await renderedFolder(realNotebooks, demoParts);
    browser = await connect();
  });

  afterAll(async () => {
    await browser?.close();
  });

  it.each(notebooks)(
    '$name: quiet, whole, accessible, every control moves it',
    async ({ name, parameters }) => {
      const [wide, ...others] = places;
      const { page, requests, lines } = await open(browser, addressOf(name), {
        viewport: wide,
        colorScheme: wide.colorScheme,
        reducedMotion: 'reduce',
      });
      const moved = await page.evaluate(moveEachControl);
      expect(moved.map(({ option }) => option)).toEqual(Object.keys(parameters).map(optionName));
      expect(moved.filter(({ fault }) => fault !== '')).toEqual([]);
      expect(moved.filter(({ changed }) => !changed).map(({ option }) => option)).toEqual(
        Object.keys(withoutEffect[name] ?? {}),
      );
      for (const disclosure of await page.locator('.parts:not([open])>summary').all())
        await disclosure.click();
      await page.evaluate(axe);
      // The contrast of a thousand cells takes long, and it is that of the words beside them.
      expect(await page.evaluate(violations, ['color-contrast'])).toEqual([]);
      await page.evaluate(closeDisclosures);
      for (const { width, height, colorScheme } of [wide, ...others]) {
        await page.setViewportSize({ width, height });
        await page.emulateMedia({ colorScheme });
        const found = await page.evaluate(measure);
        expect(found.scrollWidth).toBeLessThanOrEqual(width);
        expect(found.outside).toEqual([]);
        expect(found.fonts).toEqual(['Inter 400 loaded', 'Inter 600 loaded']);
        expect(await page.evaluate(violations, [])).toEqual([]);
      }
      expect([requests, lines]).toEqual([[], []]);
      await page.context().close();
    },
  );
});
