import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { get, type IncomingMessage } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { draft } from '../../lib/runner/watch/draft.js';
import { type Watch, watchNotebook } from '../../lib/runner/watch/watch.js';
import { connect, hasChromium, plain, skipReason } from './chromium.js';
import { demoParts, testNotebooks } from './notebook-folders.js';

const lib = fileURLToPath(new URL('../../lib/', import.meta.url));
const source = readFileSync(path.join(testNotebooks, 'all-controls.ts'), 'utf8').replaceAll(
  '../../../lib/',
  lib,
);

describe('a page under watch', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'dashpot-watch-'));
  const notebook = path.join(folder, 'all-controls.ts');
  const partsFile = path.join(folder, 'parts.yaml');
  let watching: Watch;

  beforeAll(async () => {
    writeFileSync(notebook, source);
    writeFileSync(partsFile, readFileSync(demoParts));
    watching = await watchNotebook({
      notebookFolder: folder,
      name: 'all-controls',
      partsFile,
      texts: { slope: '60 %' },
      sources: [folder],
    });
  });

  afterAll(async () => {
    await watching?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('is served to this machine only, and only under its own name', async () => {
    expect(new URL(watching.address).hostname).toBe('127.0.0.1');
    expect((await begun('', '127.0.0.1')).statusCode).toBe(200);
    expect((await begun('', 'elsewhere.example')).statusCode).toBe(403);
  });

  it('answers nothing but GET, and says that a text is no other kind of file', async () => {
    const { headers } = await begun('');
    expect(headers['x-content-type-options']).toBe('nosniff');
    for (const method of ['POST', 'PUT', 'DELETE', 'HEAD'])
      expect((await fetch(watching.address, { method })).status).toBe(405);
  });

  it('tells a page at once of a change that it missed while it was loaded', async () => {
    const [text] = await once(await begun('changes-after-7'), 'data');
    expect(String(text)).toContain('data: changed');
  });

  it('shows a name that turns the writing with that sign written out, and of an endless file nothing', async () => {
    const name = 'parts\u202elmay.yaml';
    symlinkSync('/dev/zero', path.join(folder, name));
    const page = await draft(folder, 'all-controls', path.join(folder, name), {});
    onTestFinished(() => page.dispose());
    const text = await page.html(0);
    expect(text).toContain('"partsName":"parts\\\\u202elmay.yaml","partsText":""');
    expect(text).not.toContain('\u202e');
  });

  const begun = (path: string, host = '127.0.0.1'): Promise<IncomingMessage> =>
    new Promise((resolve, reject) => {
      const request = get(watching.address + path, { headers: { host } }, resolve).on('error', reject);
      onTestFinished(() => void request.destroy());
    });

  it.skipIf(!hasChromium)(`follows each save and says what is wrong${skipReason}`, async () => {
    const browser = await connect();
    onTestFinished(() => browser.close());
    const page = await browser.newPage();
    await page.goto(watching.address);
    const main = () => plain(page.locator('main'));
    await expect.poll(main).toContain('two 1.7 at 60 % gives 6.00 N');
    expect(await page.locator('#line svg path').count()).toBeGreaterThan(3);
    const saved = async (file: string, text: string, shown: string): Promise<void> => {
      writeFileSync(file, text);
      await expect.poll(main).toContain(shown);
    };
    await saved(notebook, source.replace('gives', 'yields'), 'two 1.7 at 60 % yields 6.00 N');
    const parts = readFileSync(demoParts, 'utf8');
    await saved(partsFile, parts.replaceAll('two 1.7', 'twin 1.7'), 'twin 1.7 at 60 %');
    await saved(partsFile, 'dashpot: 2', 'parts.yaml:1:10 dashpot');
    await saved(notebook, 'export const', 'Expected identifier');
    writeFileSync(partsFile, parts);
    await saved(notebook, source, 'two 1.7 at 60 % gives 6.00 N');
  });
});
