import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { pagePassed } from '../../lib/page/index.js';
import { notebook } from '../../notebooks/landing.js';
import { pageOfText, tableOf } from './answers.js';

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const pageOf = (text: string, texts: Readonly<Record<string, string>> = {}) =>
  pageOfText(notebook, text, texts);
const rowsOf = (page: ReturnType<typeof pageOf>, id: string) => tableOf(page, id).rows;
// Invented: so heavy that a landing from high up presses the stop in until the piston has no oil before it.
const heavy = `dashpot: 1
oils: [{ name: thin, base: silicone, viscosity: 20 cSt }]
pistons: [{ name: wide, diameter: 11.92 mm, thickness: 2.4 mm, holes: [{ count: 4, diameter: 2 mm }] }]
shocks: [{ name: front, bore: 12 mm, shaft: 3 mm, stroke: 12 mm }]
springs: [{ name: stiff, rate: 5 N/mm, free-length: 60 mm }]
builds: [{ name: front, shock: front, piston: wide, oil: thin, spring: stiff, corner: { mass: 4 kg, motion-ratio: 1 } }]
`;
const travelIn = (answer: string): number => Number(/goes in ([\d.]+)/u.exec(answer)?.[1]);

describe('landing', () => {
  // Two independent programs (C with CVODE, Python with SciPy Radau) let this corner, with 380 mm²/s and an exponent of 1.4, land from 150 mm: 16.5 mm in, 66.0 N, no stop. The page's
  // gas is a little softer (its exponent follows from its size), so that the shaft goes a little further.
  test('150 mm: near the two independent programs, and the steady curve with a cap would have said 15 N and bottomed', () => {
    const { answer } = pageOf(demo, { drop: '150 mm' });
    expect(travelIn(answer) / 16.5).toBeGreaterThan(0.98);
    expect(travelIn(answer) / 16.5).toBeLessThan(1.25);
    expect(answer).toContain('does not touch its bump stop');
    const [, low, high] = /pushes out with (\d+) to (\d+) N/u.exec(answer) ?? [];
    expect(Number(low)).toBeGreaterThan(55);
    expect(Number(high)).toBeLessThan(85);
  });

  test('all lines share their times, so that no row of numbers has a gap, and go as far as the sentence says', () => {
    const page = pageOf(demo);
    const [travel, force] = page.blocks.flatMap((one) => (one.kind === 'figure' ? [one.figure.table] : []));
    for (const table of [travel, force]) {
      expect(table?.columns).toHaveLength(4);
      expect(table?.rows).toHaveLength(241);
      for (const row of table?.rows ?? []) expect(row.every((cell) => typeof cell === 'number')).toBe(true);
    }
    // Drawn each 2.5 ms, a line may pass by its peak by a little.
    const drawn = 1000 * Math.max(...(travel?.rows ?? []).map(([, own]) => Number(own)));
    expect(Math.abs(drawn - travelIn(page.answer))).toBeLessThan(0.1);
  });

  test('a higher drop goes further in and touches the stop from the height that it names', () => {
    const low = pageOf(demo, { drop: '100 mm' });
    const height = Number(/From about (\d+) cm it touches the bump stop/u.exec(low.answer)?.[1]);
    expect(height).toBeGreaterThan(10);
    const above = pageOf(demo, { drop: `${10 * height + 30} mm` });
    const below = pageOf(demo, { drop: `${10 * height - 30} mm` });
    expect(above.answer).toContain('and touches its bump stop');
    expect(below.answer).not.toContain('and touches its bump stop');
    expect(travelIn(above.answer)).toBeGreaterThan(travelIn(below.answer));
  });

  test('a corner that no stop catches from high up still has its answer from low down, and is refused up there in keys of the file', () => {
    // By energy alone the stop at 10.6 mm is touched from no height: 4 kg × 9.81 m/s² × 10.6 mm = 0.41 J, the spring takes ½ × 5 N/mm × (10.6 mm)² = 0.28 J.
    expect(pageOf(heavy, { drop: '100 mm' }).answer).toMatch(
      /and touches its bump stop.*From about [1-3] cm it touches/su,
    );
    expect(() => pageOf(heavy, { drop: '1000 mm' })).toThrow(
      /^the corner of "front" must be one whose stops catch it .* a lower drop, a stiffer spring, less mass .* got a drop of 1000 mm on 5 N\/mm$/u,
    );
  });

  test('thicker oil goes in less and pushes harder; the softest comes first and is the one that the answer names', () => {
    const page = pageOf(demo, { drop: '100 mm' });
    const rows = rowsOf(page, 'landing-oils');
    const of = (name: string) => rows.find(([oil]) => oil === name) ?? [];
    expect(Number(of('clear 650')[1])).toBeLessThan(Number(of('clear 200')[1]));
    expect(Number(of('clear 650')[3])).toBeGreaterThan(Number(of('clear 350')[3]));
    const felt = rows.map((row) => Number(row[4]));
    expect(felt).toEqual([...felt].sort((a, b) => a - b));
    const free = rows.find((row) => row[2] === 'free');
    expect(page.answer).toContain(`Of the oils, ${free?.[0]} lands softest without touching the stop`);
    expect(pagePassed(page)).toBe(true);
  });

  test('names the fast speed for other pages, beside that of a touch without tyre by hand, and which of the two is more', () => {
    const speeds = (drop: string, build = 'buggy front') => {
      const text = JSON.stringify(pageOf(demo, { drop, build }).blocks);
      const [, set, touch, why] =
        /(?:set it to (?=\d+ mm\/s for this drop)|begin at that, as )(\d+) mm\/s.*? touch alone would be (\d+) mm\/s; ([^"]*)/u.exec(
          text,
        ) ?? [];
      const [, reached] = /goes in with up to (\d+) mm\/s/u.exec(text) ?? [];
      return { set: Number(set), touch: Number(touch), reached: Number(reached), why: why ?? '' };
    };
    const { set, touch, reached, why } = speeds('100 mm');
    // 0.72 mm of shaft for each mm of wheel in the demo's corner, and sqrt(2 × 9.81 × 0.1) = 1.40 m/s.
    expect(Math.abs(touch / (0.72 * 1401) - 1)).toBeLessThan(0.01);
    expect(Math.abs(set - reached)).toBeLessThanOrEqual(25);
    expect(why).toContain(reached > touch ? 'makes it faster' : 'makes it slower');
    expect(speeds('200 mm').set).toBeGreaterThan(set);
    const said = (drop: string) => JSON.stringify(pageOf(demo, { drop }).blocks);
    expect(said('100 mm')).toContain(`Pages with a fast speed begin at that, as ${set} mm/s.`);
    expect(said('200 mm')).toContain('mm/s for this drop');
  });

  test('the shock at work is drawn from the touch on, with the stop', () => {
    const page = pageOf(demo, { drop: '150 mm' });
    const block = page.blocks.find(({ kind }) => kind === 'motion');
    if (block?.kind !== 'motion') throw new Error('no drawing');
    expect(block.frames[0]?.time).toBe(0);
    expect(block.frames[0]?.speed).toBeLessThan(0.1);
    expect(block.shock.bumpStop).toBeCloseTo(0.88 * 0.024, 9);
    const deepest = Math.max(...block.frames.map(({ travel }) => travel));
    expect(Math.abs(1000 * deepest - travelIn(page.answer))).toBeLessThan(0.5);
    expect(block.stills.map(({ label }) => label).join('; ')).toMatch(/the largest cavity/iu);
    expect(new Set(block.stills.map(({ frame }) => frame)).size).toBe(block.stills.length);
    // The caption has the number of the figure; the still is the nearest of the moments.
    const figures = page.blocks.flatMap((one) => (one.kind === 'figure' ? [one.figure] : []));
    const [, peak] =
      /at most ([\d.]+) N out/u.exec(figures.find(({ id }) => id === 'force')?.alt ?? '') ?? [];
    expect(block.alt).toContain(`pushing with ${peak} N at the hardest`);
    const hardest = Math.max(...block.stills.map(({ frame }) => frame.force));
    expect(Math.abs(hardest / Number(peak) - 1)).toBeLessThan(0.01);
    expect(hardest).toBeGreaterThanOrEqual(Math.max(...block.frames.map(({ force }) => force)));
  });

  test('warmer oil goes further in', () => {
    expect(travelIn(pageOf(demo, { temperature: '40 °C' }).answer)).toBeGreaterThan(
      travelIn(pageOf(demo, { temperature: '5 °C' }).answer),
    );
  });

  test('names what is a guess, front and rear of the car, and pistons of another bore', () => {
    const page = pageOf(demo);
    const text = JSON.stringify(page.blocks);
    expect(text).toContain('tyre 4 N/mm (1.5 to 10) and stops of 60 N/mm are guesses');
    expect(text).toContain('Left out, since they do not fit this bore: eight 1.4');
    expect(rowsOf(page, 'landing-car').map(([name]) => name)).toEqual(
      expect.arrayContaining(['buggy front', 'buggy rear', 'big buggy front']),
    );
    expect(text).not.toMatch(/NaN|undefined/u);
  });

  test('a bare cap: an oil that locks on the way is left out and named; where its own oil locks the page says what makes room', () => {
    const bare = readFileSync(new URL('../parts/files/two-cars.yaml', import.meta.url), 'utf8');
    const at = (temperature: string) => pageOf(bare, { build: 'buggy rear', temperature, drop: '150 mm' });
    const page = at('20 °C');
    expect(page.answer).toMatch(/buggy rear goes in [\d.]+ mm of 29 mm/u);
    expect(JSON.stringify(page.blocks)).toContain(
      'Left out, since the gas has no room on the way: plain 750 and rear four 1.2.',
    );
    // A piston that locks is no piston of another bore.
    expect(JSON.stringify(page.blocks)).toMatch(
      /do not fit this bore: front [^."]*1\.5, [^"]*\btruck six 1\.4\./u,
    );
    // π/4 · 9 mm² · 29 mm = 0.205 ml of shaft; warm oil leaves less.
    expect(() => at('40 °C')).toThrow(
      /the gas of "buggy rear" must be more than the 0\.2 ml of its shaft, or the oil locks: say what makes room under compensator.*got 0\.1\d? ml at 40 °C/u,
    );
    expect(() => at('5 °C')).toThrow(
      /the gas of "buggy rear" must be enough for shaft and cavity together on the way.*got 0\.2\d ml at 5 °C/u,
    );
  });

  test('a build without a spring is refused with the line to add', () => {
    const bare = demo.replaceAll(/^ {4}spring: .*\n/gmu, '');
    expect(() => pageOf(bare)).toThrow(/spring must be named in the build "buggy front".*rate: 0\.60 N\/mm/u);
  });
});
