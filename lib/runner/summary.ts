import { allBlocks, type CheckBlock, pageFigures } from '../page/index.js';
import type { RenderedNotebook } from './build/render-notebook.js';

/** What the command line says of a page: its figures, its checks, and those that failed. */
export function summary({ page, unanswered }: RenderedNotebook): string {
  if (unanswered !== undefined) return `not answered, since ${unanswered.message}`;
  const figures = pageFigures(page).length;
  const all = allBlocks(page).flatMap((block) => (block.kind === 'check' ? [block] : []));
  const count = (blocks: readonly CheckBlock[]) =>
    `${blocks.filter(({ passed }) => passed).length} of ${blocks.length}`;
  const inner = all.filter(({ consistency }) => consistency === true);
  const outer = all.filter((block) => !inner.includes(block));
  const counts = [
    `${figures} ${figures === 1 ? 'figure' : 'figures'}`,
    ...(outer.length === 0 ? [] : [`${count(outer)} checks passed`]),
    ...(inner.length === 0 ? [] : [`${count(inner)} consistent`]),
  ];
  const failed = all.filter(({ passed }) => !passed).map(({ claim }) => `\n  check failed: ${claim}`);
  return `${counts.join(', ')}${failed.join('')}`;
}
