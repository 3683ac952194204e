import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { pageFigures, pagePassed } from '../../lib/page/index.js';
import { notebook } from '../../notebooks/warm-up.js';
import { pageOfText } from './answers.js';

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const pageOf = (texts: Readonly<Record<string, string>> = {}) => pageOfText(notebook, demo, texts);
type Shown = ReturnType<typeof pageOf>;
const rowsOf = (page: Shown, id: string) => {
  const block = page.blocks.find((one) => one.kind === 'table' && one.id === id);
  if (block?.kind !== 'table') throw new Error(`no table ${id}`);
  return block.table.rows;
};
/** Rises of the answer [K]: likely, and the ends of the guesses. */
const rises = ({ answer }: Shown): readonly [number, number, number] => {
  const [, likely, low, high] = /([\d.]+) K above the air \(([\d.]+) to ([\d.]+) K/u.exec(answer) ?? [];
  return [Number(likely), Number(low), Number(high)];
};
const goneIn = ({ answer }: Shown): number => Number(/and (\d+) % of the damping/u.exec(answer)?.[1] ?? 0);
const watts = (page: Shown): number =>
  rowsOf(page, 'warm-up-sources').reduce((sum, [, , each]) => sum + Number(each), 0);

describe('warm-up', () => {
  // Hilpert 1933, as in Bergman et al., Table 7.2 (from memory): Nu = 0.683 Re^0.466 Pr^(1/3) for Re of 40 to 4000, another fit than the page's.
  test('a long run ends where the wind takes what the strokes make', () => {
    const page = pageOf({ run: '60 min', wind: '3 m/s', air: '25 °C' });
    const [diameter, length] = [0.015, 0.0425];
    const nusselt = 0.683 * ((3 * diameter) / 15.9e-6) ** 0.466 * 0.71 ** (1 / 3);
    const radiation = 0.5 * 4 * 5.67e-8 * 303 ** 3;
    const cooling = ((nusselt * 0.0263) / diameter + radiation) * Math.PI * diameter * length;
    const [likely, low, high] = rises(page);
    expect(likely / (watts(page) / cooling)).toBeGreaterThan(0.85);
    expect(likely / (watts(page) / cooling)).toBeLessThan(1.15);
    expect(low).toBeLessThan(likely);
    expect(high).toBeGreaterThan(likely);
  });

  // By hand: 1.1 W into oil of 3.2 ml × 0.97 g/ml × 1.5 J/(g K) and about 3 ml of aluminium of 2.4 J/(ml K).
  test('the first minute warms it by what the heat capacity takes, less a little to the air', () => {
    const page = pageOf({ run: '1 min', wind: '0 m/s' });
    const [likely] = rises(page);
    const taken = (watts(page) * 60) / likely;
    expect(taken).toBeGreaterThan(9);
    expect(taken).toBeLessThan(20);
  });

  // A corner of 0.54 kg that falls by 100 mm brings 0.53 J and a little more as it sinks in; the shock gets most of it, the tyre the rest.
  test('one landing makes no more heat than the fall brings', () => {
    const [, one] = rowsOf(pageOf({ drop: '100 mm' }), 'warm-up-sources')[1] ?? [];
    expect(Number(one)).toBeLessThan(700);
    expect(Number(one)).toBeGreaterThan(300);
    const [, twice] = rowsOf(pageOf({ drop: '200 mm' }), 'warm-up-sources')[1] ?? [];
    expect(Number(twice) / Number(one)).toBeGreaterThan(1.5);
  });

  test('the pictures end where the rest does, as long as the run, and the oil has cooled since the run', () => {
    const figures = pageFigures(pageOf({ run: '20 min' }));
    for (const { table } of figures.filter(({ id }) => ['temperature', 'damping-left'].includes(id)))
      expect(table.rows.at(-1)?.[0]).toBeCloseTo(2400, 6);
    const rows = figures[0]?.table.rows ?? [];
    const hottest = Math.max(...rows.map((row) => Number(row[1])));
    expect(Number(rows.at(-1)?.[1])).toBeLessThan(hottest - 1);
  });

  test('half of the rise is there where the line has half of it', () => {
    const page = pageOf({ run: '20 min' });
    const words = JSON.stringify(page.blocks);
    const minutes = Number(/half of the rise is there after ([\d.]+) min/u.exec(words)?.[1]);
    const [figure] = pageFigures(page);
    const { columns = [], rows = [] } = figure?.table ?? {};
    const line = columns.findIndex(({ label }) => label === 'in wind');
    const at = (time: number) =>
      rows.reduce((a, b) => (Math.abs(Number(b[0]) - time) < Math.abs(Number(a[0]) - time) ? b : a))[line];
    const [start, half, end] = [0, 60 * minutes, 1200].map((time) => Number(at(time)));
    // Minutes are whole, and the line has a point every half minute or so.
    expect(((half ?? 0) - (start ?? 0)) / ((end ?? 0) - (start ?? 0))).toBeGreaterThan(0.4);
    expect(((half ?? 0) - (start ?? 0)) / ((end ?? 0) - (start ?? 0))).toBeLessThan(0.6);
  });

  test('less wind, more bumps, more landings and a longer run warm it more and leave less damping', () => {
    const usual = pageOf();
    for (const more of [{ wind: '1 m/s' }, { bumps: '6 Hz' }, { landings: '60' }, { run: '20 min' }]) {
      const page = pageOf(more);
      expect(rises(page)[0]).toBeGreaterThan(rises(usual)[0]);
      expect(goneIn(page)).toBeGreaterThanOrEqual(goneIn(usual));
    }
    expect(rises(pageOf({ wind: '12 m/s' }))[0]).toBeLessThan(rises(usual)[0]);
  });

  test('damping falls by less than the viscosity, since fast oil weighs as well as it sticks; petroleum loses more', () => {
    const page = pageOf({ wind: '1 m/s' });
    const [rise] = rises(page);
    // Silicone loses about 1.7 % of its viscosity with a kelvin at 25 °C.
    const viscosity = 1 - Math.exp(-0.017 * rise);
    expect(goneIn(page) / 100).toBeLessThan(viscosity + 0.01);
    expect(goneIn(page) / 100).toBeGreaterThan(0.5 * viscosity);
    const [silicone, petroleum] = ['buggy rear', 'buggy rear, petroleum'].map((build) => pageOf({ build }));
    expect(goneIn(petroleum as Shown)).toBeGreaterThan(goneIn(silicone as Shown));
  });

  test('tells what wind is worth, how it cools and what to count for the day plan', () => {
    const page = pageOf({ run: '10 min', air: '25 °C' });
    const rows = rowsOf(page, 'warm-up-minutes');
    const [, wind, low, high, still, left] = rows.at(-1) ?? [];
    const text = JSON.stringify(page.blocks);
    const [, without] = /Without any wind it would be ([\d.]+) °C/u.exec(text) ?? [];
    expect(Number(without)).toBeCloseTo(Number(still) - 273.15, 0);
    expect(Number(still)).toBeGreaterThan(Number(wind));
    expect(Number(low)).toBeLessThan(Number(wind));
    expect(Number(high)).toBeGreaterThan(Number(wind));
    expect(goneIn(page)).toBe(Math.round(100 * (1 - Number(left))));
    const [, count, between] = /Count ([\d.]+) K on top of the air .* about ([\d.]+) °C/u.exec(text) ?? [];
    expect(Number(count)).toBeCloseTo(rises(page)[0], 5);
    expect(Number(between)).toBeCloseTo(25 + Number(count) / 2, 0);
    expect(text).toContain('are guesses; the band shows what they leave open');
    expect(pagePassed(page)).toBe(true);
    expect(text).not.toMatch(/NaN|undefined/u);
  });

  test('nothing to do, nothing gained; too much is refused', () => {
    const none = pageOf({ bumps: '0 Hz', landings: '0' });
    expect(rises(none)).toEqual([0, 0, 0]);
    expect(none.answer).toContain('the damping is what it was');
    expect(() => pageOf({ bumps: '8 Hz', 'bump-height': '25 mm', wind: '0 m/s', run: '60 min' })).toThrow(
      /bumps must be fewer or lower ones: the oil would pass 150 °C/u,
    );
  });
});
