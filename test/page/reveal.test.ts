import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { html } from '../../lib/page/html/html.js';
import { htmlText } from '../../lib/page/html/html-text.js';
import { pageBody } from '../../lib/page/html/page-body.js';
import {
  type Page,
  pageFigures,
  pageJson,
  pagePassed,
  pageTables,
  readParameterValues,
} from '../../lib/page/index.js';
import { readParts } from '../../lib/parts/index.js';
import { lineChart } from '../../lib/plot/index.js';
import { notebook as lesson } from '../../notebooks/lesson.js';
import { lines } from '../plot/sample-figures.js';
import { contentOf } from './sample-page.js';

const figure = (id: string) => ({ kind: 'figure', figure: lineChart({ ...lines, id }) }) as const;
const page = (passed: boolean): Page => ({
  answer: 'It falls.',
  blocks: [
    figure('before'),
    {
      kind: 'reveal',
      id: 'guess',
      question: 'Does it fall?',
      choices: ['Yes.', 'No.'],
      blocks: [
        figure('inside'),
        { kind: 'table', id: 'numbers', title: 'Numbers', table: { columns: [], rows: [] } },
        { kind: 'check', claim: 'It falls', passed, detail: '1', ifFailed: 'Look again' },
      ],
    },
    figure('after'),
  ],
  sources: [],
});
const markup = (shown: Page): string => {
  const drawn = new Map(pageFigures(shown).map(({ id }) => [id, { wide: '', narrow: '' }]));
  return htmlText(html`${pageBody({ ...contentOf(shown), pictures: drawn })}`);
};

describe('a question to predict', () => {
  it('counts with all that stands behind it', () => {
    expect(pageFigures(page(true)).map(({ id }) => id)).toEqual(['before', 'inside', 'after']);
    expect([...pageTables(page(true)).keys()]).toContain('numbers');
    expect([pagePassed(page(true)), pagePassed(page(false))]).toEqual([true, false]);
    expect(markup(page(false))).toContain('1 of 1 checks failed.');
    expect(JSON.parse(pageJson(contentOf(page(true)))).blocks[1].blocks[0].id).toBe('inside');
  });

  it('is closed, and numbers its figures in reading order', () => {
    const text = markup(page(true));
    expect(text).toContain('<details><summary>Reveal</summary>');
    expect(text.match(/<strong>Figure \d\.<\/strong>/gu)).toEqual(
      [1, 2, 3].map((number) => `<strong>Figure ${number}.</strong>`),
    );
  });
});

describe('the lesson', () => {
  const parts = readParts(readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8'));
  it.each([
    {},
    { wider: '1.2 mm', more: '1', hottest: '5 °C' },
    { oil: 'clear 650', shock: 'long 12', count: '4', diameter: '1 mm' },
    { wider: '1.6 mm', more: '2', hottest: '20 °C' },
  ])('agrees with the calculations by hand: %j', (texts) => {
    const shown = lesson.run(parts, readParameterValues(lesson.parameters, texts, parts));
    expect(pagePassed(shown)).toBe(true);
  });
});
