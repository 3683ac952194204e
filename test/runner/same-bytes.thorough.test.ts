import { execFileSync } from 'node:child_process';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, it } from 'vitest';
import { contents, removeFolders, run } from './sample-run.js';

afterAll(removeFolders);

it('a run leaves the same bytes in another process, time zone and locale', async () => {
  const { folder } = await run();
  const script = fileURLToPath(new URL('./print-contents.ts', import.meta.url));
  const environment = {
    PATH: process.env['PATH'],
    TZ: 'Asia/Tokyo',
    LANG: 'tr_TR.UTF-8',
    LC_ALL: 'tr_TR.UTF-8',
  };
  const there = execFileSync(process.execPath, ['--import', 'tsx', script], {
    env: environment,
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  expect(JSON.parse(there)).toEqual(contents(path.join(folder, 'out')));
});
