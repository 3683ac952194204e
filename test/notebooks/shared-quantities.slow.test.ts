import { describe, expect, it } from 'vitest';
import type { Page } from '../../lib/page/index.js';
import { files, pageOf, tableOf } from './answers.js';
import { byQuantityOf, disagreements } from './shared/said.js';
import { allSaid, notebooks, pagesOf } from './shared/what-pages-say.js';

const expected: Readonly<Record<keyof typeof files, readonly string[]>> = {
  demo: [
    'rebound slow 6',
    'rebound middle 5',
    'pushed in fast 5',
    'push fully in 4',
    'oil of a fill 3',
    'hand 4',
    'ride frequency 2',
  ],
  twoCars: [
    'rebound slow 6',
    'rebound middle 5',
    'pushed in fast 5',
    'push fully in 4',
    'oil of a fill 3',
    'hand 4',
  ],
  smallest: [
    'rebound slow 5',
    'rebound middle 4',
    'pushed in fast 5',
    'push fully in 4',
    'oil of a fill 3',
    'hand 4',
  ],
};

describe('one quantity, one value on all pages', () => {
  it.each(['demo', 'twoCars', 'smallest'] as const)('%s', (name) => {
    const parts = files[name];
    const said = allSaid(parts, pagesOf(parts));
    const counts = byQuantityOf(said);
    // A quantity that is no longer found would agree with itself.
    for (const one of expected[name]) {
      const [, quantity = '', least = 0] = /^(.*) (\d+)$/u.exec(one) ?? [];
      expect(counts.get(quantity)?.length ?? 0, quantity).toBeGreaterThanOrEqual(Number(least));
    }
    expect(disagreements(said)).toEqual([]);
  });

  it('is told where it is not: a force that one page halves', () => {
    const page: Page = pageOf(
      notebooks.find(({ name }) => name === 'compare-oils'),
      files.smallest,
    );
    const pages = new Map([...pagesOf(files.smallest)]);
    const halved = {
      ...page,
      blocks: page.blocks.map((block) =>
        block.kind === 'table' && block.id === 'forces'
          ? {
              ...block,
              table: {
                ...tableOf(page, 'forces'),
                rows: tableOf(page, 'forces').rows.map((row) =>
                  row.map((one) => (typeof one === 'number' ? one / 2 : one)),
                ),
              },
            }
          : block,
      ),
    };
    const said = allSaid(files.smallest, pages.set('compare-oils', halved));
    expect(disagreements(said).map((one) => one.split(':')[0])).toEqual([
      'rebound slow',
      'rebound middle',
      'pushed in fast',
    ]);
  });
});
