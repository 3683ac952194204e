import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readParts } from '../../lib/parts/index.js';
import { embeddedFonts } from '../../lib/runner/build/fonts.js';
import { renderNotebook } from '../../lib/runner/build/render-notebook.js';
import { notebook } from '../../notebooks/build-sheet.js';
import { connect, hasChromium, skipReason } from '../live/chromium.js';

/** A4 less the margins of a sheet, in CSS px: 210 − 2 · 13 mm and 297 − 2 · 11 mm, 96 px an inch. */
const paper = { width: Math.floor((184 / 25.4) * 96), height: Math.floor((275 / 25.4) * 96) };

const text = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const parts = readParts(text);
const facts = { version: '0', notices: [], fonts: embeddedFonts };

describe.skipIf(!hasChromium)(`a sheet on paper${skipReason}`, () => {
  it('takes one page of A4, whatever the build', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'dashpot-sheet-'));
    const browser = await connect();
    try {
      const page = await browser.newPage({ viewport: { width: paper.width, height: paper.height } });
      await page.emulateMedia({ media: 'print' });
      for (const build of parts.builds) {
        const file = { name: 'demo-parts.yaml', text, parts };
        const { files } = await renderNotebook(notebook, file, { build: build.name }, facts);
        const path = join(folder, 'sheet.html');
        writeFileSync(path, files.get('build-sheet.html') ?? '');
        await page.goto(pathToFileURL(path).href);
        const sheets = await page.locator('section.sheet').all();
        expect(sheets).toHaveLength(build.quantity);
        for (const sheet of sheets) {
          const box = await sheet.boundingBox();
          expect(box?.height, build.name).toBeLessThanOrEqual(paper.height);
          expect(box?.height, build.name).toBeGreaterThan(paper.height / 2);
        }
      }
    } finally {
      await browser.close();
      rmSync(folder, { recursive: true });
    }
  });
});
