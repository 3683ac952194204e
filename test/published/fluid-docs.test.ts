import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { computedBlocks } from './fluid-docs.js';

// With UPDATE_DOCS=1 a run writes the blocks; otherwise a page that differs from what the code computes fails.
test.each(computedBlocks)('%s shows what the code computes: %s', (page, block, compute) => {
  const file = fileURLToPath(new URL(`../../docs/${page}`, import.meta.url));
  const text = readFileSync(file, 'utf8');
  const [start, end] = [`<!-- computed: ${block} -->\n`, '\n<!-- end -->'];
  const from = text.indexOf(start) + start.length;
  const to = text.indexOf(end, from);
  expect(from, `${start.trim()} in ${page}`).toBeGreaterThan(start.length);
  expect(to).toBeGreaterThan(0);
  if (process.env['UPDATE_DOCS'] === '1')
    writeFileSync(file, text.slice(0, from) + compute() + text.slice(to));
  else expect(text.slice(from, to)).toBe(compute());
});
