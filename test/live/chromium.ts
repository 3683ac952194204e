import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Locator, type Page } from 'playwright-core';
import { runCommand } from '../../lib/runner/run-command.js';
import { toolRuns } from '../project/tools.js';

const executablePath = '/usr/bin/chromium';
const flags = [
  'headless',
  'no-sandbox',
  'disable-gpu',
  'disable-quic',
  'no-first-run',
  'disable-background-networking',
  'disable-component-update',
  'disable-sync',
];

/** Whether the browser is there, and what a skipped test says. */
export const hasChromium = toolRuns(executablePath, ['--version']);
export const skipReason = hasChromium ? '' : ` (skipped: no ${executablePath})`;

export function launch(): Promise<Browser> {
  return chromium.launch({ executablePath, args: flags.map((flag) => `--${flag}`) });
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
  page.setDefaultTimeout(20_000);
  const requests: string[] = [];
  const lines: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  page.on('console', (message) => lines.push(message.text()));
  page.on('pageerror', (error) => lines.push(error.message));
  await page.goto(address);
  if (options.javaScriptEnabled !== false && (await page.locator('#program').count()) > 0) {
    await page.waitForSelector('html.live');
    const panel = page.locator('.panel').first();
    if ((await panel.getAttribute('open')) === null) await panel.locator('summary').click();
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

/** The text of an element, its spaces that do not break as plain ones. */
export async function plain(locator: Locator): Promise<string> {
  return ((await locator.textContent()) ?? '').replaceAll('\u00a0', ' ');
}

/** A rendered page in a folder of its own. */
export interface Rendered {
  readonly address: string;
  readonly folder: string;
  readonly remove: () => void;
}

/** Renders one notebook of a folder as the command does. */
export async function rendered(name: string, notebookFolder: string, demoParts: string): Promise<Rendered> {
  const folder = mkdtempSync(path.join(tmpdir(), 'dashpot-live-'));
  const said: string[] = [];
  const exitCode = await runCommand([name], {
    workingFolder: folder,
    notebookFolder,
    demoParts,
    outFolder: folder,
    version: '1.2.3',
    print: (line) => said.push(line),
    printError: (line) => said.push(line),
  });
  if (exitCode !== 0) throw new Error(said.join('\n'));
  return {
    address: pathToFileURL(path.join(folder, name, `${name}.html`)).href,
    folder: path.join(folder, name),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

export const testNotebooks = fileURLToPath(new URL('./notebooks', import.meta.url));
export const realNotebooks = fileURLToPath(new URL('../../notebooks', import.meta.url));
export const demoParts = path.join(realNotebooks, 'demo-parts.yaml');
