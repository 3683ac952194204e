import { describe, expect, test } from 'vitest';
import { pageFigures } from '../../lib/page/index.js';
import type { Parts } from '../../lib/parts/index.js';
import { notebook as benchStroke } from '../../notebooks/bench-stroke.js';
import { notebook as buildSheet } from '../../notebooks/build-sheet.js';
import { notebook as cavitation } from '../../notebooks/cavitation.js';
import { notebook as fillAndBleed } from '../../notebooks/fill-and-bleed.js';
import { notebook as landing } from '../../notebooks/landing.js';
import { notebook as lesson } from '../../notebooks/lesson.js';
import { mixText } from '../../notebooks/match/mix.js';
import { changedFile, files, fileTexts, numbersIn, pageOf } from './answers.js';

// Numbers that a sentence states, worked out by hand from the demo file.

describe('the build sheet of the rear', () => {
  const said = JSON.stringify(
    pageOf(buildSheet, files.demo, { build: 'buggy rear', rideHeight: '8 mm' }).blocks,
  );

  test.each([
    // π/4 12² 42 + 650 − 320 − π/4 3² 2 mm³ less the cap: 4.416 ml poured, for two shocks and ten times; 88.3 ml are two bottles.
    ['oil of a season', '8.83 ml for all 2, 88.32 ml for 10 rebuilds, 2 bottles of 60 ml'],
    // Half of 0.18 + 0.14 N.
    ['friction', 'weaker than the seal friction of 0.16 N'],
    // 2 · 0.24 N / (0.36 N/mm · 0.68) = 1.96 mm, and for 10 g 2 · 0.098 N / (0.36 · 0.68) = 0.80 mm.
    [
      'ride height',
      'Breakaway friction of 0.24 N lets the car stop anywhere within 2 mm of ride height at the wheel',
    ],
    ['a sticky seal', '16 g by the parts file; each 10 g more blurs ride height by 0.8 mm'],
    // 49 − 11 − 2 − 8 mm.
    ['shaft that shows', 'At ride height, 8 mm in, 28 mm of shaft show'],
    // 90 % and 10 % of 30 mm.
    ['stretch', 'Time it from 27 mm in to 3 mm in'],
    // Half of 12 − 11.94 mm.
    ['gap', 'Gap 0.03 mm all round'],
    // Twice 0.1 s.
    ['the hand', 'the hand ± 0.2 s'],
    ['bubbles', 'in bubbles from 0.1 to 2 mm across'],
    ['air drawn in', 'each opening draws in 10 % of the first air again'],
  ])('%s', (_, sentence) => expect(said).toContain(sentence));

  test('pushing and letting out lie twice the friction apart at each place', () => {
    const places = [...said.matchAll(/([\d.]+) mm in, (−?\d+) g and (−?\d+) g:/gu)];
    expect(places.map(([, place]) => Number(place))).toEqual([7.5, 15, 22.5, 7.5, 15, 22.5]);
    for (const [, , down, up] of places) {
      const [pushed, left] = [down, up].map((text) => Number(text?.replace('−', '-')));
      // 0.32 N are 32.6 g.
      expect(Math.abs((pushed ?? 0) - (left ?? 0) - 32.6)).toBeLessThan(1.1);
    }
  });
});

test('bubbles stay under the smallest hole of a piston that has two sizes', () => {
  const over = (file: Parts) => {
    const said = JSON.stringify(pageOf(buildSheet, file, { build: 'buggy rear, mixed holes' }).blocks);
    return numbersIn(said, /A bubble over ([\d.]+) mm stays under the smallest hole/u)[0];
  };
  const one = (diameter: string) =>
    changedFile(
      fileTexts.demo,
      /\{ count: 2, diameter: 1\.5 mm \}\n.*\n/u,
      `{ count: 4, diameter: ${diameter} }\n`,
    );
  expect(over(files.demo)).toBe(over(one('1.2 mm')));
  expect(over(files.demo)).not.toBe(over(one('1.5 mm')));
});

test('guesses of a car and its stops', () => {
  const page = pageOf(landing, files.demo);
  const said = JSON.stringify(page.blocks);
  expect(said).toContain(
    'Wheel with hub 90 g (50 to 150), tyre 4 N/mm (1.5 to 10) and stops of 60 N/mm are guesses',
  );
  // The last 12 % of 24 mm.
  expect(said).toContain('The bump stop is touched 3 mm before the end of the stroke');
  expect(said).toContain('the bump stop begins at 21.1 mm');
});

test('how much less force a habit leaves is that of its two forces', () => {
  const said = JSON.stringify(pageOf(cavitation, files.demo).blocks);
  const [inward = 0, out = 1, less = 0] = numbersIn(
    said,
    /and ([\d.]+) N instead of the [\d.]+ mm\/s and ([\d.]+) N of a shock closed fully out: (\d+) % less force/u,
  );
  expect(Math.abs(less - 100 * (1 - inward / out))).toBeLessThan(0.6);
});

test('the spring of the gas alone is the difference of its two pushes over the way between', () => {
  const said = JSON.stringify(pageOf(benchStroke, files.demo, { amplitude: '10 mm' }).blocks);
  const [fullyIn = 0, fullyOut = 0] = numbersIn(
    said,
    /the gas alone, moved slowly, with ([\d.]+) N and ([\d.]+) N/u,
  );
  const [rate = 0] = numbersIn(said, /the gas alone, moved slowly, is one of ([\d.]+) N\/mm/u);
  expect(Math.abs(rate / ((fullyIn - fullyOut) / 20) - 1)).toBeLessThan(0.03);
});

test('the dead band that is said is that of its picture at 5 % of air', () => {
  const figure = pageFigures(pageOf(fillAndBleed, files.demo, { build: 'buggy rear' })).find(
    ({ id }) => id === 'dead-band',
  );
  const row = figure?.table.rows.find(([air]) => Math.abs(Number(air) - 0.05) < 1e-9) ?? [];
  const said = numbersIn(
    figure?.alt ?? '',
    /With 5 % of air .* after ([\d.]+) mm pushed in and ([\d.]+) mm pulled out/u,
  );
  expect(said.map((travel) => travel / 1000)).toEqual(
    row.slice(1).map((travel) => expect.closeTo(Number(travel), 5)),
  );
});

test('a blend with what its rules leave open', () => {
  const said = (low: number, high: number) =>
    JSON.stringify(mixText({ recipe: '1 ml of a', low, high, typical: 1e-4 }));
  expect(said(0.9, 1.2)).toContain('the true viscosity may lie 10 % below to 20 % above');
  expect(said(0.998, 1.003)).toContain('The rules for blends agree on it within 1 %');
});

test('the pictures of the lesson go from rest to the middle speed', () => {
  const [figure] = pageFigures(pageOf(lesson, files.demo, { middle: '300 mm/s' }));
  const rows = figure?.table.rows ?? [];
  expect([rows[0]?.[0], rows.at(-1)?.[0]].map(Number)).toEqual([0, expect.closeTo(0.3, 12)]);
});
