import { expect, test } from 'vitest';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { nearestSentence } from '../../notebooks/compare-oils/reading.js';
import { labelDoubts } from '../../notebooks/order-plan/doubts.js';

const reference = { name: 'clear 350', temperature: 293.15 };
const said = (name: string, ratio: number, low = ratio, high = ratio) =>
  nearestSentence({ name, ratio, low, high }, 311.15, reference);

test('the oil that comes nearest when it is warm, by how much and by what its label leaves open', () => {
  expect(said('clear 400', 1.04)).toBe('At 38 °C clear 400 comes nearest to clear 350 at 20 °C: 4 % harder.');
  expect(said('clear 300', 0.88)).toBe(
    'At 38 °C clear 300 comes nearest to clear 350 at 20 °C: 12 % softer.',
  );
  expect(said('label 35', 1.001, 0.9, 1.1)).toBe(
    'At 38 °C label 35 comes nearest to clear 350 at 20 °C: as hard (10 % softer to 10 % harder by what its label leaves open).',
  );
  expect(said('clear 350', 0.8)).toBe(
    'At 38 °C no oil of the file comes nearer than clear 350 itself, 20 % softer than at 20 °C.',
  );
  expect(said('clear 350', 1)).toBe(
    'At 38 °C no oil of the file comes nearer than clear 350 itself, as hard as at 20 °C.',
  );
});

test('a bottle that is sold by a label is doubted, alone only where it is filled alone', () => {
  const label = createOil({ base: 'silicone', viscosity: { kind: 'trade-weight', weight: 35 } });
  const plain = createOil({
    base: 'silicone',
    viscosity: { kind: 'silicone', point: { temperature: 298.15, kinematicViscosity: 350e-6 } },
  });
  const problem = {
    bottles: [
      { name: 'label', oil: label },
      { name: 'plain', oil: plain },
    ],
    builds: [],
  };
  const lines = [{ bottle: 0 }, { bottle: 1 }];
  const fills = [{ build: 'x', temperature: 293.15, choice: { first: 0, second: 1, secondShare: 0.5 } }];
  const doubts = labelDoubts(problem as never, { possible: true, lines, fills } as never);
  expect(doubts).toHaveLength(1);
  expect(doubts[0]).toMatch(
    /^label is sold by a label and may hold anything from \d+ cSt to \d+ cSt \(at 25 °C\)\. Measure it/u,
  );
});
