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

// By hand, with a friction of 1.2 N that a weight must beat twice: 50 g pull 0.49 N, a gas that pushes 2 N at 22 °C and 1.9 N at 8 °C does the rest warm (2.49 N) and not cold (2.395 N).
test('in the cold a weight is filmed that still falls there', () => {
  const candidates = possibleMeasurements({
    build: { shock: { stroke: 0.025 } },
    problem: {
      ...problem,
      known: { ...problem.known, friction: 1.2 },
      law: () => ({ at: (temperature: number) => ({ gasForce: () => (2 * temperature) / 295.15 }) }),
    },
    temperature: 295.15,
  } as never);
  const names = candidates.map(({ name }) => name);
  expect(names).toContain('film 50 g at 240 frames a second, 3 times');
  expect(names.filter((name) => name.includes('with the shock at'))).toEqual([
    'film 100 g with the shock at 8 °C',
  ]);
});
