import { expect, test } from 'vitest';
import { allBlocks, defineNotebook, type Notebook } from '../../lib/page/index.js';
import { runNotebook } from '../../lib/page/run-notebook.js';
import { readParts } from '../../lib/parts/index.js';
import { useMeasured } from '../../lib/parts/use-measured.js';
import { notebook as buildSheet } from '../../notebooks/build-sheet.js';
import { notebook as compareOils } from '../../notebooks/compare-oils.js';
import { notebook as whatYouHave } from '../../notebooks/what-you-have.js';
import { files, fileTexts } from './answers.js';

const used = readParts(useMeasured(fileTexts.demo));
const rear = used.builds.find(({ name }) => name === 'buggy rear');
const said = (notebook: unknown, parts = used, texts: Readonly<Record<string, string>> = {}) => {
  const { page } = runNotebook(notebook as Notebook, parts, texts);
  const items = allBlocks(page).flatMap((block) => (block.kind === 'assumptions' ? block.items : []));
  return { page, lines: items.filter((item) => item.includes('is taken as measured, not as stated')) };
};

test('a page of a measured build takes it as measured, and says what that is and how good', () => {
  const { page, lines } = said(buildSheet, used, { build: 'buggy rear' });
  expect(lines).toHaveLength(1);
  const { viscosity = 0, holes = 0, friction = 0, doubt = 0 } = rear?.measured ?? {};
  expect(lines[0]?.replaceAll('\u00a0', ' ')).toBe(
    `buggy rear is taken as measured, not as stated: oil of ${Number((1e6 * viscosity).toPrecision(3))} cSt at 25 °C, holes ${Number((100 * (holes - 1)).toPrecision(2))} % larger than stated, friction ${Number(friction.toPrecision(2))} N; its damping at 300 mm/s is good to ${Number((100 * doubt).toPrecision(2))} % either way (19 of 20). Gas, gap and lengths are as stated.`,
  );
  // Thinner oil and larger holes: the weight comes out sooner than on the sheet of the parts as stated.
  const timeOf = (text: string): number => Number(/pull the shaft out in ([\d.]+)/u.exec(text)?.[1]);
  const before = said(buildSheet, files.demo, { build: 'buggy rear' });
  expect(timeOf(page.answer)).toBeLessThan(timeOf(before.page.answer));
  expect(before.lines).toEqual([]);
});

test('a page of another build says nothing of it, and one of all builds does', () => {
  expect(said(buildSheet, used, { build: 'buggy front' }).lines).toEqual([]);
  // The oil of the build is one of those compared unless chosen otherwise.
  const others = said(compareOils, used, { oils: 'clear 350' });
  expect(others.lines).toEqual([]);
  expect(said(compareOils).lines).toHaveLength(1);
  const all = defineNotebook({
    name: 'all',
    order: 1,
    title: 'All',
    question: 'All?',
    parameters: {},
    run: () => ({ answer: '', blocks: [], sources: [] }),
  });
  expect(said(all).lines).toHaveLength(1);
  expect(said(all, files.demo).page.blocks).toEqual([]);
});

test('the page of the measurements begins at the parts as stated, and comes out the same', () => {
  const { page, lines } = said(whatYouHave);
  expect(lines).toEqual([]);
  expect(page).toEqual(said(whatYouHave, files.demo).page);
});
