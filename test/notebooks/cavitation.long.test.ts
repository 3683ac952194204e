import { describe, expect, it } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { gasPressure } from '../../lib/gas/gas-state.js';
import { pagePassed } from '../../lib/page/index.js';
import { assembleShock, type Parts } from '../../lib/parts/index.js';
import { notebook } from '../../notebooks/cavitation.js';
import { changedFile, files, fileTexts, numbersIn, pageOf, rowOf, wordsOf } from './answers.js';
import { bruteDamping, bruteOnset } from './brute-cavitation.js';

/** The first build at the temperature of its wish, or at 20 °C. */
function modelOf({ builds }: Parts, temperature?: number): DamperModel {
  const [build] = builds;
  if (build === undefined) throw new Error('no build');
  const oil = createOil(build.oil.definition);
  return damperModel(
    assembleShock(build).damper,
    fluidAt(oil, temperature ?? build.wanted?.temperature ?? 293.15),
  );
}

const answer =
  /^Pushed in from fully out, .* begins to cavitate at ([\d.]+) mm\/s.*, where its oil damps with ([\d.]+) N.*; held at ([\d.]+) mm\/s, the damping is ([\d.]+) N at the start, ([\d.]+) N after 4 mm and ([\d.]+) N at the end of the stroke\.$/u;

describe('where cavitation begins', () => {
  // The landing of test/notebooks/fast-speed.long.test.ts by brute force; without a spring the touch by hand, 0.7 √(2 · 9.81 · 0.1 m) = 0.98 m/s; each to 50 mm/s.
  const fastest: Readonly<Record<string, number>> = { demo: 1150, twoCars: 1000, smallest: 1000 };

  it.each(Object.entries(files))(
    '%s: onset and forces of the stroke are those of brute force',
    (name, parts) => {
      const page = pageOf(notebook, parts);
      const model = modelOf(parts);
      const [speed = 0, damping = 0, fast = 0, start = 0, after = 0, end = 0] = numbersIn(
        page.answer,
        answer,
      );
      const brute = bruteOnset(model, 0);
      expect(speed / 1e3 / brute.speed).toBeCloseTo(1, 2);
      expect(damping / brute.damping).toBeCloseTo(1, 2);
      // Pressure times area by hand; recoil of the jets and drag on the rim are the rest.
      const byHand = (model.pistonArea - model.shaftArea) * gasPressure(model.gas, 0);
      expect(Math.abs(damping / byHand - 1)).toBeLessThan(0.07);
      expect(fast).toBe(fastest[name]);
      expect(start / (brute.damping + model.rimDrag * (fast / 1e3 - brute.speed))).toBeCloseTo(1, 2);
      expect(Math.abs(after / bruteDamping(model, fast / 1e3, 4e-3) - 1)).toBeLessThan(0.01);
      expect(Math.abs(end / bruteDamping(model, fast / 1e3, model.damper.stroke) - 1)).toBeLessThan(0.01);
      expect(pagePassed(page)).toBe(true);
      expect(JSON.stringify(page)).not.toMatch(/NaN|Infinity|undefined/u);
    },
  );

  it.each(Object.entries(files))(
    '%s: half way in, and with air that leaves the oil at 0.2 bar',
    (_, parts) => {
      const model = modelOf(parts);
      const words = wordsOf(pageOf(notebook, parts));
      const half = numbersIn(words, /Half way in .*? begins at ([\d.]+) mm\/s and ([\d.]+) N/u);
      const middle = bruteOnset(model, model.damper.stroke / 2);
      expect((half[0] ?? 0) / 1e3 / middle.speed).toBeCloseTo(1, 2);
      expect((half[1] ?? 0) / middle.damping).toBeCloseTo(1, 2);
      expect(middle.speed).toBeGreaterThan(bruteOnset(model, 0).speed);
      const early = numbersIn(
        words,
        /as early as 0\.2 bar .*?: then it begins at ([\d.]+) mm\/s and ([\d.]+) N/u,
      );
      const released = bruteOnset(model, 0, 2e4);
      expect((early[0] ?? 0) / 1e3 / released.speed).toBeCloseTo(1, 2);
      expect((early[1] ?? 0) / released.damping).toBeCloseTo(1, 2);
    },
  );

  it('the demo build, worked out by hand', () => {
    // Gap 0.03 mm: piston area to its middle π/4 · (11.97 mm)² = 112.5 mm², less the shaft of 7.07 mm²: 105.5 mm². At 1.013 bar: 10.69 N.
    const [, damping = 0] = numbersIn(pageOf(notebook, files.demo).answer, answer);
    expect(Math.abs(damping / 10.69 - 1)).toBeLessThan(0.02);
  });
});

describe('what moves it', () => {
  it.each(Object.entries(files))('%s: every row goes the way that physics says', (_, parts) => {
    const page = pageOf(notebook, parts);
    const row = (name: string) =>
      rowOf(page, 'what-moves-it', name) as readonly [number, number, number, number];
    const own = row('as it is');
    const [out, half, inside] = ['fully out', 'half way in', 'fully in'].map((where) =>
      row(`closed ${where}`),
    );
    // The less gas is left when the shaft is out, the earlier and the weaker.
    for (const column of [0, 1] as const) {
      expect(out?.[column]).toBeGreaterThan(half?.[column] ?? 0);
      expect(half?.[column]).toBeGreaterThan(inside?.[column] ?? 0);
    }
    const pressed = row('twice the gas pressure');
    expect(pressed[1] / own[1]).toBeCloseTo(2, 1);
    const thick = row('oil twice as thick');
    // Thicker oil: earlier, about as hard there, and harder with travel.
    expect(thick[0]).toBeLessThan(0.75 * own[0]);
    expect(Math.abs(thick[1] / own[1] - 1)).toBeLessThan(0.04);
    expect(thick[2]).toBeGreaterThan(1.1 * own[2]);
    expect(thick[3]).toBeGreaterThan(1.25 * own[3]);
    const roomy = row('twice as much gas');
    expect(Math.abs(roomy[1] / own[1] - 1)).toBeLessThan(0.01);
    expect(roomy[2]).toBeLessThan(own[2]);
    const wide = row('bore 1 mm wider, same holes');
    expect(wide[0]).toBeLessThan(own[0]);
    expect(wide[1] / own[1]).toBeCloseTo((13 ** 2 - 9) / (12 ** 2 - 9), 1);
    const loose = row('air out of the oil at 0.2 bar');
    expect(loose[0]).toBeLessThan(own[0]);
    expect(loose[1] / own[1]).toBeCloseTo(0.8, 1);
  });

  it('cold oil begins earlier, at a lower force, and the temperatures are those of the day', () => {
    const page = pageOf(notebook, files.twoCars);
    const cold = rowOf(page, 'what-moves-it', 'at 4 °C');
    const hot = rowOf(page, 'what-moves-it', 'at 34 °C');
    const brute = [
      bruteOnset(modelOf(files.twoCars, 277.15), 0),
      bruteOnset(modelOf(files.twoCars, 307.15), 0),
    ];
    expect(Number(cold[0]) / (brute[0]?.speed ?? 0)).toBeCloseTo(1, 3);
    expect(Number(hot[1]) / (brute[1]?.damping ?? 0)).toBeCloseTo(1, 3);
    expect(Number(cold[0])).toBeLessThan(Number(hot[0]));
    expect(Number(cold[1])).toBeLessThan(Number(hot[1]));
  });

  it('says what the habit costs', () => {
    for (const parts of Object.values(files)) {
      const words = wordsOf(pageOf(notebook, parts));
      const [inside = 0, out = 0, less = 0] = numbersIn(
        words,
        /Closed with the shaft fully in, .* begins at [\d.]+ mm\/s and ([\d.]+) N instead of the [\d.]+ mm\/s and ([\d.]+) N of a shock closed fully out: (\d+) % less force/u,
      );
      const [build] = parts.builds;
      if (build === undefined) throw new Error('no build');
      const fluid = fluidAt(createOil(build.oil.definition), build.wanted?.temperature ?? 293.15);
      const closed = (closeAt: number) =>
        bruteOnset(damperModel(assembleShock(build, { closeAt }).damper, fluid), 0).damping;
      expect(inside / closed(build.shock.stroke)).toBeCloseTo(1, 2);
      expect(out / closed(0)).toBeCloseTo(1, 2);
      expect(less).toBe(Math.round(100 * (1 - closed(build.shock.stroke) / closed(0))));
    }
  });
});

describe('other kinds of shock', () => {
  it('a cap with nothing under it, closed fully in, begins at a fraction, and that is a guess', () => {
    const page = pageOf(notebook, files.twoCars, { build: 'buggy rear' });
    const [speed = 0, damping = 0] = numbersIn(page.answer, answer);
    expect(speed).toBeLessThan(40);
    expect(damping).toBeLessThan(2);
    expect(page.answer).toContain('if the gas inside is as much as guessed');
    // The label of the oil leaves viscosity open: thin oil begins later.
    const [low = 0, high = 0] = numbersIn(
      page.answer,
      /\(([\d.]+) mm\/s to ([\d.]+) mm\/s by what the label/u,
    );
    expect(low).toBeLessThan(speed);
    expect(high).toBeGreaterThan(speed);
    expect(wordsOf(page)).toContain('0.2 bar (common practice, no source): then it begins at any speed');
    expect(pagePassed(page)).toBe(true);
  });

  it('an emulsion has no onset, and its low side tends to half the gas pressure', () => {
    const parts = changedFile(
      fileTexts.twoCars,
      '{ kind: air-pocket, volume: 0.55 ml }',
      '{ kind: emulsion, gas-fraction: 0.1 }',
    );
    const page = pageOf(notebook, parts);
    expect(page.answer).toContain('cavitation has no onset');
    const [gas = 0, low = 0, tends = 0] = numbersIn(
      page.answer,
      /falls from ([\d.]+) bar to ([\d.]+) bar; the faster, the nearer to ([\d.]+) bar/u,
    );
    expect(tends / gas).toBeCloseTo(0.5, 2);
    // 1/p_high + 1/p_low = 2/p: with the pressure drop of the page's force.
    const drop = damperForce(modelOf(parts), { speed: 1, position: 0 }).pressureDrop / 1e5;
    expect(1 / low + 1 / (low + drop)).toBeCloseTo(2 / gas, 1);
    expect(wordsOf(page)).not.toContain('What moves it');
  });

  it('with the gas on the shaft side it is rebound, and the spring may not reach it', () => {
    const side = { from: 'volume: 0.55 ml }', to: 'volume: 0.55 ml, side: shaft-side }' };
    const page = pageOf(notebook, changedFile(fileTexts.twoCars, side.from, side.to));
    const [reached = 0, begins = 0] = numbersIn(
      page.answer,
      /^Let out from all the way in, buggy front stays free of cavitation up to (\d+) mm\/s: that begins, as it reaches fully out, at (\d+) mm\/s/u,
    );
    expect(begins).toBeGreaterThan(reached);
  });

  it('a slow fast speed stays free of it', () => {
    const page = pageOf(notebook, files.demo, { fast: '100 mm/s' });
    expect(page.answer).toMatch(
      /^Pushed in from fully out, buggy front stays free of cavitation up to 100 mm\/s: that begins at 2\d\d mm\/s/u,
    );
    expect(pagePassed(page)).toBe(true);
  });

  it('is drawn where it opens: behind a piston that goes in, at pressures near vacuum, and closed again on the way out', () => {
    const page = pageOf(notebook, files.demo, { fast: '600 mm/s' });
    const block = page.blocks.find(({ kind }) => kind === 'motion');
    if (block?.kind !== 'motion') throw new Error('no drawing');
    const begins = Number(/begins to cavitate at (\d+) mm/u.exec(page.answer)?.[1] ?? 0);
    expect(begins).toBeGreaterThan(100);
    expect(begins).toBeLessThan(600);
    const torn = block.frames.filter(({ cavity }) => cavity > 0);
    const largest = torn.reduce((a, b) => (b.cavity > a.cavity ? b : a));
    expect(largest.speed).toBeCloseTo(0.6, 6);
    for (const { shaftPressure, blindPressure } of torn) {
      expect(shaftPressure).toBeLessThan(1e3);
      expect(blindPressure).toBeGreaterThan(1e5);
    }
    expect(block.frames.at(-1)?.cavity).toBe(0);
    const slow = pageOf(notebook, files.demo, { fast: '100 mm/s' });
    expect(slow.blocks.some(({ kind }) => kind === 'motion')).toBe(false);
  });

  it('never speaks of a limit', () => {
    for (const parts of Object.values(files))
      for (const { name } of parts.builds) {
        const page = pageOf(notebook, parts, { build: name });
        expect(wordsOf(page)).not.toMatch(/at most|limit|whatever the oil/u);
        expect(wordsOf(page).match(/\btears?\b/gu)?.length ?? 0).toBeLessThanOrEqual(1);
        expect(pagePassed(page)).toBe(true);
      }
  });
});
