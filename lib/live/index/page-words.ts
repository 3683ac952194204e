import type { Block } from '../../page/blocks/block.js';
import { blocksOf, type Page } from '../../page/blocks/page.js';
import type { Table } from '../../plot/chart/table.js';

/** All that a page says, sentence by sentence; numbers in tables are left out. */
export function pageWords(page: Page): readonly string[] {
  return [page.answer, ...blocksOf(page).flatMap(blockWords), ...page.sources];
}

function blockWords(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading':
    case 'text':
    case 'lines':
    case 'caution':
      return [block.text];
    case 'list':
    case 'assumptions':
      return block.items;
    case 'figure':
      return [block.figure.title, block.figure.alt];
    case 'motion':
      return [block.title, block.alt];
    case 'table':
      return [block.title, ...(block.note === undefined ? [] : [block.note]), ...tableWords(block.table)];
    case 'check':
      return [block.claim];
    case 'reveal':
      return [block.question, ...block.choices];
    case 'checklist':
      return [
        block.title,
        block.about,
        ...block.steps.flatMap(({ title, text, prevents }) => [`${title}. ${text}`, prevents]),
      ];
  }
}

function tableWords({ columns, rows }: Table): readonly string[] {
  return [
    ...columns.map(({ label }) => label),
    ...rows.flatMap((row) => row.filter((cell) => typeof cell === 'string')),
  ];
}
