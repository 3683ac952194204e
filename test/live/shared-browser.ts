import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { toolRuns } from '../project/tools.js';

declare module 'vitest' {
  interface ProvidedContext {
    browserAddress: string;
  }
}

const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';

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

/** Starts one browser for all tests that need one; vitest calls this only where such a test runs. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  if (!toolRuns(executablePath, ['--version'])) {
    project.provide('browserAddress', '');
    return async () => undefined;
  }
  const server = await chromium.launchServer({ executablePath, args: flags.map((flag) => `--${flag}`) });
  project.provide('browserAddress', server.wsEndpoint());
  return () => server.close();
}
