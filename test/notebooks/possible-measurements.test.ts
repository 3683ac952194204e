import { expect, test } from 'vitest';
import { possibleMeasurements } from '../../notebooks/base/possible-measurements.js';
import { checkRow, problemA, type RowValues } from '../measure/invented-shock.js';

const row = checkRow<{ times: readonly number[]; known: RowValues }, unknown>('shock-A-fit');
const problem = problemA(row.inputs.times, row.inputs.known);

// A weight gathers speed in the first 4 mm, and is stopped 3 mm before the cap; a short shock gives less away (by hand).
test.each([
  [50, 46, 3],
  [25, 21, 2.5],
  [8, 4.8, 0.8],
])('a drop on a stroke of %d mm goes from %d mm to %d mm', (stroke, from, to) => {
  const candidates = possibleMeasurements({
    build: { shock: { stroke: stroke / 1000 } },
    problem,
    temperature: 295.15,
  } as never);
  const drops = candidates.flatMap(({ readings }) => readings.filter(({ kind }) => kind === 'drop'));
  expect(drops.length).toBeGreaterThan(2);
  for (const drop of drops) {
    if (drop.kind !== 'drop') continue;
    expect(1000 * drop.from).toBeCloseTo(from, 9);
    expect(1000 * drop.to).toBeCloseTo(to, 9);
  }
});
