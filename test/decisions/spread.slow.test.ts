import { afterAll, describe, expect, it } from 'vitest';
import { designSearch } from '../../lib/decisions/design/design-search.js';
import { finish } from '../../lib/decisions/search/search.js';
import { forceSpread, toleranceShares } from '../../lib/decisions/spread/force-spread.js';
import { startDecisionWorkers } from '../../lib/workers/index.js';
import { design } from './design-case.js';
import { build } from './toleranced.js';

describe('workers', () => {
  const one = startDecisionWorkers(1);
  const two = startDecisionWorkers(2);
  afterAll(() => Promise.all([one.close(), two.close()]));

  it('give the result without workers, whatever their number', async () => {
    const drawing = { count: 5000, seed: 7, sampling: 'random' } as const;
    const spread = finish(forceSpread(build, drawing));
    const shares = finish(toleranceShares(build, 4200, 7));
    const front = finish(designSearch(design));
    for (const workers of [one, two]) {
      expect(await workers.forceSpread(build, drawing)).toEqual(spread);
      expect(await workers.toleranceShares(build, 4200, 7)).toEqual(shares);
      expect(await workers.designSearch(design)).toEqual(front);
    }
  });

  it('tell how far they are and stop when asked to', async () => {
    const seen: number[] = [];
    const drawing = { count: 16_384, seed: 7, sampling: 'low-discrepancy' } as const;
    await two.forceSpread(build, drawing, { onProgress: (done) => seen.push(done) });
    expect(seen).toEqual([0.25, 0.5, 0.75, 1]);
    const stop = new AbortController();
    const running = two.forceSpread(
      build,
      { ...drawing, count: 400_000 },
      {
        signal: stop.signal,
        onProgress: () => stop.abort(new Error('enough')),
      },
    );
    await expect(running).rejects.toThrow('enough');
  });
});
