import { expect, test } from 'vitest';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { assembleShock } from '../../lib/parts/index.js';
import { seatSentence } from '../../notebooks/spread/seat.js';
import { files } from './answers.js';
import { buildOf } from './landing-cases.js';

const build = buildOf(files.demo, 'buggy front');

/** What is said of the build with a piston of that diameter [m]. */
function said(diameter: number): string {
  const { damper } = assembleShock({
    ...build,
    piston: { ...build.piston, piston: { ...build.piston.piston, diameter } },
  });
  return seatSentence(
    {
      damper,
      oil: createOil(build.oil.definition),
      temperature: 293.15,
      position: 0.01,
      speeds: [0.1],
      tolerances: {},
    },
    0.03,
  );
}

// A rim lets πDh³/(12μL) past and two holes of 1.7 mm 2πd⁴/(128μL): of 1 µm that is 8e-9, of which one and a half more is nothing that prints; of 30 µm it is 2e-4.
test('what a tight piston can do where it sits is said to be next to nothing, that of a usual one in percent', () => {
  expect(said(11.998e-3)).toContain(
    'at most less than 0.001 % more or less than 0.001 % less. Rubbing is not in it.',
  );
  const [, more, less] = /at most ([\d.]+) % more or ([\d.]+) % less\./u.exec(said(11.94e-3)) ?? [];
  expect(Number(more)).toBeGreaterThan(0.001);
  expect(Number(less)).toBeGreaterThan(Number(more));
});
