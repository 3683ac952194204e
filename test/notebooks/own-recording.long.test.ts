import { describe, expect, test } from 'vitest';
import { moveCorner } from '../../lib/motion/index.js';
import { pageFigures } from '../../lib/page/index.js';
import { withCourse } from '../../lib/parts/course-entry.js';
import { readParts } from '../../lib/parts/index.js';
import { cornerOf, movingBuild } from '../../notebooks/base/moving-build.js';
import { notebook as benchStroke } from '../../notebooks/bench-stroke.js';
import { notebook as landing } from '../../notebooks/landing.js';
import { fileTexts, numbersIn, pageOf, tableOf, wordsOf } from './answers.js';
import { referenceShock } from './reference-shock.js';

const at20 = { temperature: '20 °C' };

/** A sine about a middle, from all the way out on, 2000 rows a second. */
const sine = (frequency: number, cycles: number, middle = 12, amplitude = 10) =>
  [
    'time (s),travel (mm)',
    ...Array.from({ length: (2000 * cycles) / frequency + 1 }, (_, index) => {
      const time = index / 2000;
      return `${time},${middle - amplitude * Math.cos(2 * Math.PI * frequency * time)}`;
    }),
  ].join('\n');
const strokeFile = (record: string, zeroAt?: string, text = referenceShock) =>
  readParts(withCourse(text, 'recorded-stroke', { record, ...(zeroAt === undefined ? {} : { zeroAt }) }));
const groundFile = (record: string, text = fileTexts.demo) =>
  readParts(withCourse(text, 'recorded-ground', { record }));
const ratio = (value: number | undefined, expected: number) => Math.abs((value ?? Number.NaN) / expected - 1);

describe('own recording on bench-stroke', () => {
  test('a recorded sine of 10 Hz: force, heat and cavity of the two independent programs within 2 %', () => {
    const page = pageOf(benchStroke, strokeFile(sine(10, 2)), at20);
    const [, push, , heat, cavity, lost] = (tableOf(page, 'recorded-figures').rows[0] ?? []).map(Number);
    // 1.105 J a cycle; 2 π · 10 Hz · 10 mm = 628 mm/s.
    for (const off of [ratio(push, 38), ratio(heat, 2 * 1.105), ratio(cavity, 0.41e-6), ratio(lost, 3.9e-3)])
      expect(off).toBeLessThan(0.02);
    expect(page.answer).toMatch(
      /^Moved as recorded, 0\.2 s long, 2 mm to 22 mm in, up to 62[89] mm\/s in and 62[89] mm\/s out, front on oil at 20 °C pushes out/u,
    );
    const [mean = 0] = numbersIn(page.answer, /of heat, ([\d.]+) W on the mean/u);
    expect(ratio(mean, 11.05)).toBeLessThan(0.03);
  });

  test('where the travel is counted from is what zero-at says; the hardest push is named with its place', () => {
    const page = pageOf(benchStroke, strokeFile(sine(1, 1, 8), '4 mm'), at20);
    // 1 Hz about the middle stays whole: 2.60 N in, 2.39 N out.
    const [, push, pull, , cavity] = (tableOf(page, 'recorded-figures').rows[0] ?? []).map(Number);
    expect(ratio(push, 2.6)).toBeLessThan(0.02);
    expect(ratio(pull, 2.39)).toBeLessThan(0.02);
    expect(cavity).toBe(0);
    expect(page.answer).toContain('2 mm to 22 mm in');
    expect(wordsOf(page)).toContain('The oil stays whole all through the recording');
    const [place = 0, time = 0] = numbersIn(
      page.answer,
      /pushes out with at most [\d.to ]+ N \(([\d.]+) mm in, at ([\d.]+) s\)/u,
    );
    expect(ratio(place, 12 - 10 * Math.cos(2 * Math.PI * time))).toBeLessThan(0.02);
  });

  test.each([
    [
      'beyond the stroke',
      sine(1, 1, 12, 13),
      undefined,
      /within the stroke of short, 0 to 24 mm in; "zero-at" says how far the shaft is in where the travel is 0, got −1 mm in row 1/u,
    ],
    ['beyond it by the zero', sine(1, 1, 12, 10), '4 mm', /"zero-at" says.*got 24\.\d+ mm in row \d+/u],
    [
      'a jump',
      'time (s),travel (mm)\n0,2\n0.0005,12\n0.1,12',
      undefined,
      /without jumps, at most 10000 mm\/s.*got 20000 mm\/s in row 2/u,
    ],
    [
      'more than the gas has room for',
      sine(120, 3, 11, 10),
      undefined,
      /room for: shaft and cavity together ask for more than its [\d.]+ ml, and the rest of the stroke for another [\d.]+ ml; let out oil, or ride it warmer or slower, got a ride that locks at 0\.0\d+ s, [\d.]+ mm in/u,
    ],
  ])('%s is refused by the key and the row', (_, record, zeroAt, said) => {
    expect(() => pageOf(benchStroke, strokeFile(record, zeroAt), { temperature: '0 °C' })).toThrow(said);
  });

  test('gaps and coarse digits are warned of', () => {
    const lines = sine(2, 1).split('\n');
    const gap = wordsOf(
      pageOf(benchStroke, strokeFile(lines.filter((_, row) => row < 301 || row > 400).join('\n')), at20),
    );
    expect(gap).toMatch(/Between rows 300 and 301 of the recording nothing is written for 0\.051 s/u);
    const coarse = lines.map((line, row) =>
      row === 0 ? line : line.replace(/,.*/u, (cell) => `,${Number(cell.slice(1)).toFixed(1)}`),
    );
    // 0.1 mm in half a millisecond.
    expect(wordsOf(pageOf(benchStroke, strokeFile(coarse.join('\n')), at20))).toContain(
      'pretends 200 mm/s from row to row: what is slower than that is noise, and so are its forces. Record one digit more, or leave out every other row.',
    );
  });
});

describe('own ground on landing', () => {
  const ground = (...rows: readonly (readonly [number, number])[]) =>
    ['time (s),height (mm)', ...rows.map((row) => row.join(','))].join('\n');

  test('ground that rises slowly moves nothing: the tyre carries the weight of the corner', () => {
    const page = pageOf(landing, groundFile(ground([0, 100], [10, 103], [20, 100])));
    const text = wordsOf(page);
    // Demo corner: 420 g and a wheel guessed at 80 g would be 4.9 N.
    const [mean = 0, most = 0] = numbersIn(
      text,
      /presses on the ground with ([\d.]+) N on the mean and ([\d.]+) N at most/u,
    );
    const mass = groundFile(ground([0, 0], [1, 0], [2, 0])).builds[0]?.corner?.sprungMass ?? 0;
    const [wheel = 0] = numbersIn(text, /Wheel with hub ([\d.]+) g/u);
    expect(ratio(mean, (mass + wheel / 1000) * 9.80665)).toBeLessThan(0.01);
    expect(ratio(most, mean)).toBeLessThan(0.03);
    expect(page.answer).toMatch(
      /^Over the recorded ground, 20 s long and 3 mm from its lowest to its highest, buggy front goes in/u,
    );
    expect(page.answer).toContain('the wheel stays on the ground');
  });

  test('higher ground pushes harder, goes further in and lifts the wheel', () => {
    const bump = (height: number) =>
      pageOf(landing, groundFile(ground([0, 0], [0.02, height], [0.05, 0], [0.1, 0])));
    const read = (height: number) =>
      numbersIn(bump(height).answer, /goes in ([\d.]+).* pushes out with up to (\d+)/u);
    const [[low = 0, softly = 0], [high = 0, hard = 0]] = [read(4), read(25)];
    expect(high).toBeGreaterThan(low + 2);
    expect(hard).toBeGreaterThan(2 * softly);
    expect(bump(25).answer).toMatch(/the wheel leaves the ground/u);
    expect(bump(2).answer).toContain('the wheel stays on the ground');
  });

  test('gives the least and the most that air in the oil may make of it', () => {
    const file = groundFile(ground([0, 0], [0.02, 25], [0.05, 0], [0.1, 0]));
    const page = pageOf(landing, file, { temperature: '20 °C' });
    const [build] = file.builds;
    if (build === undefined) throw new Error('no build');
    const heights = [0, 0.025, 0, 0];
    const ends = (['likely', 'bubbles', 'early release'] as const).map((end) =>
      moveCorner(
        movingBuild(build, 293.15, end).shock,
        cornerOf(build).corner,
        { kind: 'table', times: [0, 0.02, 0.05, 0.1], heights },
        { duration: 5, tolerance: 1e-5 },
      ),
    );
    const span = (of: (one: (typeof ends)[number]) => number) => {
      const values = ends.map(of).sort((a, b) => a - b);
      return [values[0] ?? 0, values[2] ?? 0];
    };
    const [least = 0, most = 0] = span(({ largestShockForce }) => largestShockForce.value);
    const said = numbersIn(
      page.answer,
      /pushes out with up to (?:between )?(\d+)(?: N)?(?: to | and )(\d+) N/u,
    );
    expect(said).toEqual([Math.round(least), Math.round(most)]);
    expect(least).toBeLessThan(most - 1);
  });

  test('packs down or rides up as the drawn travel says', () => {
    const said = (...rows: readonly (readonly [number, number])[]) => {
      const page = pageOf(landing, groundFile(ground(...rows)));
      const { chart } = pageFigures(page).find(({ id }) => id === 'ground-travel') ?? {};
      const series = chart?.kind === 'line' ? chart.shows.series : [];
      const travel = (series.find(({ name }) => name === 'shaft')?.points ?? []).map(({ y }) => y);
      return { text: wordsOf(page), mean: travel.reduce((sum, one) => sum + one, 0) / travel.length };
    };
    const atRest = said([0, 0], [0.5, 0], [1, 0]).mean;
    expect(said([0, 0], [0.5, 0], [1, 0]).text).toContain('it neither packs down nor rides up');
    // A step up throws the body up; down one the body falls and sinks in.
    const up = said([0, 0], [0.5, 0], [0.52, 60], [0.8, 60]);
    expect(up.mean).toBeLessThan(atRest - 1e-3);
    expect(up.text).toContain('it rides up by');
    const down = said([0, 8], [0.1, 8], [0.12, 0], [0.2, 0]);
    expect(down.mean).toBeGreaterThan(atRest + 1e-4);
    expect(down.text).toContain('it packs down by');
  });

  test('ground beyond reason is refused by its row, and without ground the page says nothing of it', () => {
    expect(() => pageOf(landing, groundFile('time (s),height (m)\n0,0\n0.1,20\n0.2,0'))).toThrow(
      /recorded-ground must be at most 500 mm above or below the ground of the first row; look at the unit of the height, got 20000 mm in row 2/u,
    );
    expect(wordsOf(pageOf(landing, readParts(fileTexts.demo)))).not.toContain('recorded ground');
  });
});
