import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { renderSvg } from '../../lib/plot/index.js';
import { sampleFigures } from './sample-figures.js';

/** Fingerprint of all sample pictures. */
async function fingerprint(): Promise<string> {
  const hash = createHash('sha256');
  for (const figure of sampleFigures)
    for (const layout of ['wide', 'narrow'] as const) hash.update(await renderSvg(figure, layout));
  return hash.digest('hex');
}

it('a drawing has the same bytes in another process, time zone and locale', async () => {
  const here = await fingerprint();
  const script = fileURLToPath(new URL('./print-fingerprint.ts', import.meta.url));
  const environment = {
    PATH: process.env['PATH'],
    TZ: 'Asia/Tokyo',
    LANG: 'de_DE.UTF-8',
    LC_ALL: 'de_DE.UTF-8',
  };
  const there = execFileSync(process.execPath, ['--import', 'tsx', script], {
    env: environment,
    encoding: 'utf8',
  });
  expect(there.trim()).toBe(here);
});
