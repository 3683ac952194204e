import { expect, test } from 'vitest';
import type { Landed } from '../../notebooks/base/landed.js';
import { drawnParts, travelFigure } from '../../notebooks/landing/figures.js';
import { files } from './answers.js';
import { buildOf } from './landing-cases.js';

/** A landing that goes in evenly by 20 mm in 0.6 s, recorded in so many parts. */
function landing(parts: number): Landed {
  const even = (whole: number) =>
    Float64Array.from({ length: parts + 1 }, (_, place) => (whole * place) / parts);
  return {
    moving: { build: buildOf(files.demo, 'buggy front') },
    outcome: { trace: { times: even(0.6), travels: even(0.02) }, largestTravel: { value: 0.02 } },
  } as unknown as Landed;
}

test('a line has as many points as are drawn, from the touch to the end, however fine its trace', () => {
  for (const parts of [drawnParts, 4 * drawnParts]) {
    const { rows } = travelFigure([landing(parts)], 0.018).table;
    expect(rows).toHaveLength(241);
    expect(rows[0]).toEqual([0, 0]);
    expect(rows[60]?.map(Number)).toEqual([expect.closeTo(0.15, 12), expect.closeTo(0.005, 12)]);
    expect(rows.at(-1)?.map(Number)).toEqual([expect.closeTo(0.6, 12), expect.closeTo(0.02, 12)]);
  }
});
