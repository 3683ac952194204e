import { expect, test } from 'vitest';
import { readParameterValues, renderHtml } from '../../lib/page/index.js';
import { acceptedText, defaultText } from '../../lib/page/parameters/parameter-text.js';
import { contentOf, notebook, parts } from './sample-page.js';

/** What a reader sees, a line for each element. */
const textOf = (html: string): string =>
  html
    .replaceAll(/<(style|script)[\s\S]*?<\/\1>/gu, '')
    .replaceAll(/<[^>]*>/gu, '\n')
    .replaceAll('\u00a0', ' ')
    .replaceAll(/\s*\n\s*/gu, '\n')
    .trim();

// The words around a page, as somebody read them and let them stand; `npm run quick -- -u` writes the file anew.
test('what stands around the answer of a page says what was read', async () => {
  const values = readParameterValues(notebook.parameters, { temperature: '60 °C' }, parts);
  const html = await renderHtml(contentOf(notebook.run(parts, values)));
  await expect(`${textOf(html)}\n`).toMatchFileSnapshot('words/page.txt');
});

test('what a setting accepts and begins at is said for each kind of setting', () => {
  const { temperature, oils, piston } = notebook.parameters;
  expect([temperature, oils, piston].map(acceptedText)).toEqual([
    '−10 °C to 60 °C',
    'names of oils in the parts file, at most 4',
    'the name of one of the pistons in the parts file',
  ]);
  expect([temperature, oils, piston].map(defaultText)).toEqual([
    '20 °C',
    'the first 4 in the file',
    'the first in the file',
  ]);
  const inFile = { ...temperature, inFile: () => 300 };
  expect(defaultText(inFile)).toBe('what the parts file says, or 20 °C,');
  expect(defaultText({ ...oils, atMost: 1 })).toBe('the first in the file');
});
