import { refuse } from '../../base/checks.js';
import { requireShape } from '../../base/shape.js';
import type { Table } from '../../plot/chart/table.js';
import type { Block } from '../blocks/block.js';
import { allBlocks, pageShape } from '../blocks/checked-page.js';
import type { Page } from '../blocks/page.js';
import { type PageContent, pageContentShape } from './render-html.js';
import { plainCell } from './table-csv.js';

/**
 * The tables of a page by id: those behind the figures, and those in full view.
 *
 * @public
 */
export function pageTables(page: Page): ReadonlyMap<string, Table> {
  requireShape({ page }, { page: pageShape });
  return new Map(
    allBlocks(page).flatMap((block) => {
      if (block.kind === 'figure') return [[block.figure.id, block.figure.table] as const];
      return block.kind === 'table' ? [[block.id, block.table] as const] : [];
    }),
  );
}

/** Version of the format of {@link pageJson}, by Semantic Versioning: docs/page-results.schema.json says what it holds. */
const pageResultsFormat = '1.0.0';

/**
 * The whole page as JSON, for other programs: words, numbers in the units of their headings, and checks, as the packed `page-results.schema.json` says.
 *
 * @param content - the page; pictures and fonts are left out
 * @returns JSON text
 *
 * @public
 */
export function pageJson(content: PageContent): string {
  requireShape({ content }, { content: pageContentShape });
  const { title, question, about, page, parameters, provenance } = content;
  const whole = {
    format: pageResultsFormat,
    title,
    question,
    answer: page.answer,
    parts: about,
    parameters,
    version: provenance.version,
    contentHash: provenance.contentHash,
    blocks: page.blocks.map(plainBlock),
    sources: page.sources,
  };
  try {
    return `${JSON.stringify(whole, null, 1)}\n`;
  } catch {
    // A field that no block has, with something that JSON cannot write.
    return refuse(content, 'content', '', 'plain data in all its fields');
  }
}

function plainBlock(block: Block): unknown {
  if (block.kind === 'reveal') return { ...block, blocks: block.blocks.map(plainBlock) };
  if (block.kind === 'table') return { ...block, table: plainTable(block.table) };
  if (block.kind !== 'figure') return block;
  const { id, title, alt, table } = block.figure;
  return { kind: 'figure', id, title, alt, table: plainTable(table) };
}

function plainTable({ columns, rows }: Table): unknown {
  return {
    columns: columns.map(({ label, unit }) => ({ label, unit })),
    rows: rows.map((row) => columns.map((column, index) => plainCell(column, row[index] ?? null))),
  };
}
