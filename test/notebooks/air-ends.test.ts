import { expect, test } from 'vitest';
import { movingBuild } from '../../notebooks/base/moving-build.js';
import { files } from './answers.js';
import { buildOf } from './landing-cases.js';

const usual = buildOf(files.demo, 'buggy front');
const build = {
  ...usual,
  shock: { ...usual.shock, compensator: { kind: 'air-pocket', airReleasePressure: 12_000 } as const },
};
const of = (end: 'likely' | 'bubbles' | 'early release') => movingBuild(build, 293.15, end).shock;

// The file says 0.12 bar; with bubbles the oil holds to vacuum, released early it lets go at 0.2 bar (both as docs/motion.md has them).
test('where air comes out of the oil: as the file says, at vacuum with bubbles, and early', () => {
  expect(of('likely').releasePressure).toBe(12_000);
  expect(of('bubbles').releasePressure).toBe(0);
  expect(of('early release').releasePressure).toBe(20_000);
});

test('only the end with bubbles has bubbles in its oil', () => {
  expect((['likely', 'bubbles', 'early release'] as const).map((end) => of(end).oil.airFraction)).toEqual([
    0, 0.002, 0,
  ]);
});
