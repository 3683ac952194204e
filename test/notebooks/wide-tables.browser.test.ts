import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readParts } from '../../lib/parts/index.js';
import { embeddedFonts } from '../../lib/runner/build/fonts.js';
import { renderNotebook } from '../../lib/runner/build/render-notebook.js';
import { notebook as benchStroke } from '../../notebooks/bench-stroke.js';
import { notebook as compareOils } from '../../notebooks/compare-oils.js';
import { notebook as whatToChange } from '../../notebooks/what-to-change.js';
import { connect, hasChromium, skipReason } from '../live/chromium.js';

const text = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const file = { name: 'demo-parts.yaml', text, parts: readParts(text) };
const facts = { version: '0', notices: [], fonts: embeddedFonts };

describe.skipIf(!hasChromium)(`tables of many columns${skipReason}`, () => {
  it.each([compareOils, benchStroke, whatToChange])(
    '$name: no column is out of sight at 390 or 1100 px',
    async (notebook) => {
      const folder = mkdtempSync(join(tmpdir(), 'dashpot-tables-'));
      const browser = await connect();
      try {
        const { files } = await renderNotebook(notebook, file, {}, facts);
        const path = join(folder, 'page.html');
        writeFileSync(path, files.get(`${notebook.name}.html`) ?? '');
        const page = await browser.newPage();
        await page.goto(pathToFileURL(path).href);
        for (const width of [390, 1100]) {
          await page.setViewportSize({ width, height: 900 });
          const tables = await page.evaluate(() => {
            for (const one of document.querySelectorAll('details')) one.open = true;
            return [...document.querySelectorAll('table')]
              .filter((table) => table.offsetParent !== null)
              .map((table) => ({
                columns: table.rows[0]?.cells.length ?? 0,
                cut: table.scrollWidth - (table.parentElement?.clientWidth ?? 0),
              }));
          });
          expect(Math.max(...tables.map(({ columns }) => columns))).toBeGreaterThanOrEqual(5);
          expect(tables.filter(({ cut }) => cut > 1)).toEqual([]);
        }
      } finally {
        await browser.close();
        rmSync(folder, { recursive: true });
      }
    },
  );
});
