import { describe, expect, test } from 'vitest';
import { type Page, pageFigures } from '../../lib/page/index.js';
import { indexEntry, oneFile } from '../../lib/runner/build/index-page.js';
import {
  carriedFits,
  type RenderedNotebook,
  renderNotebook,
} from '../../lib/runner/build/render-notebook.js';
import { parts, partsText, notebook as sample } from '../page/sample-page.js';
import { facts, telling } from './made-up-workshop.js';

const file = { name: 'parts.json', text: partsText, parts };
const page: Page = { answer: 'So.', blocks: [], sources: [] };

test('the index has the answer of a page, with its first picture where it has one', () => {
  const rendered = (...pictures: readonly string[]): RenderedNotebook => ({
    page,
    pictures: new Map(pictures.map((name) => [name, { wide: `wide ${name}`, narrow: `narrow ${name}` }])),
    files: new Map(),
  });
  const words = { name: 'sample', title: 'A sample', question: 'What does it show?', answer: 'So.' };
  expect(indexEntry(sample, rendered())).toStrictEqual(words);
  expect(indexEntry(sample, rendered('a', 'b'))).toStrictEqual({ ...words, picture: 'narrow a' });
});

test('the file of all pages needs a program, and a font with the letters of every page', async () => {
  const { programs: _none, ...without } = facts;
  await expect(oneFile([], file, without, '')).rejects.toThrow('one file needs a program');
  const asked: string[] = [];
  const fonts = async (text: string) => {
    asked.push(text);
    return [{ weight: 400, woff2: 'aGVyZQ==' }] as const;
  };
  const html = await oneFile([], file, { ...facts, fonts }, '油');
  expect(asked).toHaveLength(1);
  expect(asked[0]).toContain('油');
  // That of the page itself too.
  expect(asked[0]).toContain('Invented for the tests.');
  expect(html).toContain('aGVyZQ==');
});

describe('a page that is made in memory', () => {
  test('has its data, tables and pictures as files, pictures for print only where they can be made', async () => {
    const { files, page: made } = await renderNotebook(sample, file, {}, facts);
    expect(pageFigures(made)).toHaveLength(1);
    expect([...files.keys()].sort()).toEqual(
      ['force.svg', 'names.csv', 'force.csv', 'sample.html', 'sample.json'].sort(),
    );
    const png = (svg: string) => new Uint8Array([svg.length % 256]);
    const printed = await renderNotebook(sample, file, {}, { ...facts, png });
    expect([...printed.files.keys()].sort()).toEqual([...files.keys(), 'force.png'].sort());
    expect(printed.files.get('force.png')).toEqual(png(String(files.get('force.svg'))));
  });

  test('is live where there is a program, and asks for letters of what is read alone', async () => {
    const asked: string[] = [];
    const fonts = async (text: string) => {
      asked.push(text);
      return [];
    };
    const { programs: _none, ...still } = facts;
    const live = await renderNotebook(telling, file, {}, { ...facts, fonts });
    const dead = await renderNotebook(telling, file, {}, { ...still, fonts });
    const htmlOf = ({ files }: RenderedNotebook): string => String(files.get('telling.html'));
    // The program of these tests is the word itself.
    expect(htmlOf(live)).toContain('>packed<');
    expect(htmlOf(live)).toContain('a program');
    expect(htmlOf(dead)).not.toContain('>packed<');
    for (const text of asked) expect(text).not.toContain('>packed<');
    expect(asked).toHaveLength(2);
    expect(asked[1]).toContain('What is in the file?');
  });

  test('carries what the measurements say, where there are any', () => {
    expect(carriedFits()).toEqual({});
    expect(carriedFits([])).toEqual({});
    const fit = { build: 'front' } as never;
    expect(carriedFits([fit])).toEqual({ fitted: [fit] });
  });
});
