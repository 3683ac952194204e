import { describe, expect, it } from 'vitest';
import type { ChecklistBlock, Page } from '../../lib/page/index.js';
import { renderHtml } from '../../lib/page/index.js';
import { contentOf, hostileName } from './sample-page.js';

const checklist: ChecklistBlock = {
  kind: 'checklist',
  id: 'sheet-1',
  title: `Sheet of ${hostileName}`,
  about: 'Two steps',
  writeIns: [{ label: 'Date', unit: '' }],
  steps: [
    {
      title: 'Pour',
      text: 'Up to the rim',
      aim: '4 ml',
      prevents: 'a short fill',
      writeIns: [
        { label: 'Oil at', unit: '°C' },
        { label: 'Poured', unit: 'ml' },
      ],
    },
    { title: 'Close', text: 'Slowly', prevents: 'creep', writeIns: [] },
  ],
};
const page: Page = { answer: 'Two steps.', blocks: [checklist], sources: [] };
const html = await renderHtml(contentOf(page));

describe('a checklist', () => {
  it('has a box for each step and a line for each thing to write', () => {
    expect(html.match(/<input type="checkbox"/gu)).toHaveLength(2);
    expect(html.match(/<input type="text"/gu)).toHaveLength(3);
  });

  it('names every box and every line', () => {
    const ids = [...html.matchAll(/<input type="\w+" id="([^"]+)"/gu)].map((match) => match[1] ?? '');
    expect(new Set(ids).size).toBe(5);
    for (const id of ids) expect(html).toContain(`for="${id}"`);
  });

  it('says number, fault and unit', () => {
    for (const text of ['4\u00a0ml', 'Prevents a short fill.', 'Poured', '°C']) expect(html).toContain(text);
    expect(html.match(/class="aim"/gu)).toHaveLength(1);
  });

  it('shows hostile names as text', () => {
    expect(html).not.toContain(hostileName);
  });

  it('begins a sheet of its own on paper', () => {
    expect(html).toMatch(/@media print\{[^@]*\.sheet\{[^}]*break-before:page/u);
  });

  it('has an id of its own', async () => {
    await expect(renderHtml(contentOf({ ...page, blocks: [checklist, checklist] }))).rejects.toThrow(/id/u);
  });
});
