import { expect, test } from 'vitest';
import { cameOutAs, sayingMeasured } from '../../lib/page/measured-builds.js';
import { readParts } from '../../lib/parts/index.js';
import { smallFile } from '../parts/small-file.js';

const measured = { viscosity: 385e-6, holes: 0.992, friction: 0.25, doubt: 0.034 };

test('what a measured build came out as', () => {
  expect(cameOutAs(measured)).toBe(
    'oil of 385 cSt at 25 °C, holes 0.8 % smaller than stated, friction 0.25 N; its damping at 300 mm/s is good to 3.4 % either way (19 of 20)',
  );
  expect(cameOutAs({ ...measured, holes: 1.012 })).toContain('holes 1.2 % larger than stated');
  expect(cameOutAs({ ...measured, holes: 1 })).toContain('holes as stated');
});

test('a page says it before the last of what it rests on, or at its end', () => {
  const plain = readParts(smallFile);
  const parts = { ...plain, builds: plain.builds.map((build) => ({ ...build, measured })) };
  const said = (...kinds: readonly ('text' | 'assumptions')[]) => {
    const blocks = kinds.map((kind) =>
      kind === 'text' ? ({ kind, text: 'text' } as const) : ({ kind, items: ['of the page'] } as const),
    );
    const page = sayingMeasured({ answer: 'a', blocks, sources: [] }, parts, {}, {});
    return page.blocks.map((block) => (block.kind === 'assumptions' ? block.items.length : block.kind));
  };
  expect(said('assumptions', 'text', 'assumptions', 'text')).toEqual([1, 'text', 2, 'text']);
  expect(said('text')).toEqual(['text', 1]);
});
