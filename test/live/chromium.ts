import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { buffer } from 'node:stream/consumers';
import { setTimeout } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';
import {
  type Browser,
  type BrowserContextOptions,
  chromium,
  type Download,
  type Locator,
  type Page,
} from 'playwright-core';
import { inject } from 'vitest';
import { runCommand } from '../../lib/runner/run-command.js';

/** Where the browser that all tests share listens; empty where there is none. */
const address = inject('browserAddress');

/** Where the pages are that tests share; it goes with the browser. */
const pages = inject('pagesFolder');

/** Whether the browser is there, and what a skipped test says. */
export const hasChromium = address !== '';
export const skipReason = hasChromium ? '' : ' (skipped: no Chromium)';

/** A session in the shared browser; closing it closes its own pages only. */
export function connect(): Promise<Browser> {
  return chromium.connect(address);
}

/** A page under watch: what it asked for and complained of. */
export interface Watched {
  readonly page: Page;
  readonly requests: readonly string[];
  readonly lines: readonly string[];
}

/** Opens a file, offline, waits until it is live unless it carries no program or scripts are off, and opens its settings. */
export async function open(
  browser: Browser,
  address: string,
  options: BrowserContextOptions = {},
): Promise<Watched> {
  const context = await browser.newContext({
    viewport: { width: 1024, height: 768 },
    offline: true,
    ...options,
  });
  const page = await context.newPage();
  page.setDefaultTimeout(150_000);
  const requests: string[] = [];
  const lines: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  page.on('console', (message) => lines.push(message.text()));
  page.on('pageerror', (error) => lines.push(error.message));
  await page.goto(address);
  if (options.javaScriptEnabled !== false && (await page.locator('.program').count()) > 0) {
    await page.waitForSelector('html.live');
    const panel = page.locator('.panel').first();
    if ((await panel.count()) > 0 && (await panel.getAttribute('open')) === null)
      await panel.locator('summary').click();
  }
  const outside = (url: string): boolean =>
    url.split('#')[0] !== address.split('#')[0] && !/^(?:data|blob):/u.test(url);
  return {
    page,
    lines,
    get requests() {
      return requests.filter(outside);
    },
  };
}

/** What a page hands over as a download; the file itself is kept by the browser. */
export async function content(download: Download): Promise<Buffer> {
  return buffer(await download.createReadStream());
}

/** The text of an element, its spaces that do not break as plain ones. */
export async function plain(locator: Locator): Promise<string> {
  return ((await locator.textContent()) ?? '').replaceAll('\u00a0', ' ');
}

/** Where a rendered page is. All tests that ask for the same one get the same file, so nobody writes there. */
export interface Rendered {
  readonly address: string;
}

/** Renders one notebook of a folder as the command does; where all of them are rendered anyway, it is one of those. */
export function rendered(name: string, notebookFolder: string, partsFile: string): Promise<Rendered> {
  const page = path.join(name, `${name}.html`);
  const all = placeOf([], notebookFolder, partsFile);
  const args = existsSync(all) || existsSync(beingMade(all)) ? [] : [name];
  return written(args, page, notebookFolder, partsFile);
}

/** Renders all notebooks of a folder into one file as the command does. */
export function renderedFile(notebookFolder: string, partsFile: string): Promise<Rendered> {
  return written([], 'dashpot.html', notebookFolder, partsFile);
}

/** Renders all notebooks of a folder as the command does, and gives where the page of each is. */
export async function renderedFolder(
  notebookFolder: string,
  partsFile: string,
): Promise<(name: string) => string> {
  const { address } = await renderedFile(notebookFolder, partsFile);
  return (name) => new URL(`${name}/${name}.html`, address).href;
}

/** Where the pages of a run go, the same for whoever asks for it. */
function placeOf(args: readonly string[], notebookFolder: string, partsFile: string): string {
  const asked = JSON.stringify([args, notebookFolder, readFileSync(partsFile, 'utf8')]);
  return path.join(pages, createHash('sha256').update(asked).digest('hex'));
}

/** What says that a process is rendering there. */
const beingMade = (folder: string): string => `${folder}-being-made`;

async function written(
  args: readonly string[],
  file: string,
  notebookFolder: string,
  partsFile: string,
): Promise<Rendered> {
  const folder = placeOf(args, notebookFolder, partsFile);
  while (!existsSync(folder))
    if (takes(beingMade(folder)))
      try {
        await render(args, folder, notebookFolder, partsFile);
      } finally {
        rmSync(beingMade(folder), { recursive: true });
      }
    else await setTimeout(100);
  return { address: pathToFileURL(path.join(folder, file)).href };
}

/** Whether this process is the first to make a folder. */
function takes(folder: string): boolean {
  try {
    mkdirSync(folder);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

/** Renders beside the place and moves there what is whole. */
async function render(
  args: readonly string[],
  folder: string,
  notebookFolder: string,
  partsFile: string,
): Promise<void> {
  const outFolder = mkdtempSync(path.join(pages, 'rendering-'));
  const said: string[] = [];
  const exitCode = await runCommand(args, {
    workingFolder: outFolder,
    notebookFolder,
    demoParts: partsFile,
    outFolder,
    version: '1.2.3',
    print: (line) => said.push(line),
    printError: (line) => said.push(line),
  });
  // A page that the parts cannot answer is no failure of the file that has it.
  if (exitCode === 2 || (exitCode === 1 && args.length > 0)) throw new Error(said.join('\n'));
  renameSync(outFolder, folder);
}
