import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { toolRuns } from '../project/tools.js';

declare module 'vitest' {
  interface ProvidedContext {
    browserAddress: string;
    pagesFolder: string;
  }
}

const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';

// The browser draws its own bars as pages, of which nobody sees anything here; they cost more than half of what a page of ours costs to open.
const ownPages = ['WebUIToolbar', 'WebUIOmniboxPopup', 'WebUIOmniboxAimPopup', 'WebUIOmniboxFullPopup'];

// Chromium obeys the last list only; these are what Playwright turns off by itself so that pages and contexts open and close as it expects.
const asPlaywright = [
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'LensOverlay',
  'MediaRouter',
  'PaintHolding',
  'ThirdPartyStoragePartitioning',
];

const flags = [
  'headless',
  'no-sandbox',
  'disable-gpu',
  'disable-quic',
  'no-first-run',
  'disable-background-networking',
  'disable-component-update',
  'disable-sync',
  `disable-features=${[...ownPages, ...asPlaywright].join(',')}`,
];

/** Starts one browser for all tests that need one; vitest calls this only where such a test runs. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  if (!toolRuns(executablePath, ['--version'])) {
    project.provide('browserAddress', '');
    project.provide('pagesFolder', '');
    return async () => undefined;
  }
  const server = await chromium.launchServer({ executablePath, args: flags.map((flag) => `--${flag}`) });
  project.provide('browserAddress', server.wsEndpoint());
  const pages = mkdtempSync(path.join(tmpdir(), 'dashpot-live-'));
  project.provide('pagesFolder', pages);
  return async () => {
    await server.close();
    rmSync(pages, { recursive: true, force: true });
  };
}
