import { describe, expect, test } from 'vitest';
import fill from './fill-checks.json' with { type: 'json' };
import flow from './flow-checks.json' with { type: 'json' };
import fluid from './fluid-checks.json' with { type: 'json' };
import measure from './measure-checks.json' with { type: 'json' };
import { motionRows } from './motion-rows.js';

// Many tests find their rows by a pattern or a prefix; one that vanished from the file would be missed by none of them.
const files: readonly [name: string, rows: readonly { readonly id: string }[], count: number][] = [
  ['fill', fill.checks, 14],
  ['flow', flow.checks, 129],
  ['fluid', fluid.checks, 232],
  ['measure', measure.checks, 109],
  ['motion', motionRows, 83],
];

describe.each(files)('%s-checks.json', (_, rows, count) => {
  test(`has its ${count} rows, each once`, () => {
    expect(rows).toHaveLength(count);
    expect(new Set(rows.map(({ id }) => id)).size).toBe(count);
  });
});

test('rows of measurement, by group', () => {
  const counts = new Map<string, number>();
  for (const { group } of measure.checks) counts.set(group, (counts.get(group) ?? 0) + 1);
  expect(Object.fromEntries(counts)).toEqual({
    identifiability: 13,
    refuse: 12,
    quantiles: 11,
    'shock-forward': 10,
    gum: 9,
    design: 8,
    cup: 7,
    ball: 5,
    'monte-carlo': 4,
    goodness: 4,
    outliers: 3,
    timing: 3,
    sampling: 3,
    dyno: 3,
    'shock-fit': 3,
    'shock-posterior': 3,
    repeatability: 2,
    prior: 2,
    robust: 1,
    'shock-robust': 1,
    'shock-model': 1,
    'shock-coverage': 1,
  });
});
