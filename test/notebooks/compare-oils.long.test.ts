import { describe, expect, it } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import { forceAfterTravel } from '../../lib/damper/force-after-travel.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { pageFigures, pagePassed } from '../../lib/page/index.js';
import { assembleShock, type Parts } from '../../lib/parts/index.js';
import { notebook } from '../../notebooks/compare-oils.js';
import { changedFile, files, fileTexts, numbersIn, pageOf, rowOf, tableOf, wordsOf } from './answers.js';

/** Coldest, fill and hottest temperature [K], slow and middle speed [m/s], as the files have them or as the pages begin where they are silent. */
const days = {
  demo: { cold: 281.15, now: 293.15, hot: 311.15 },
  twoCars: { cold: 277.15, now: 292.15, hot: 307.15 },
  smallest: { cold: 281.15, now: 293.15, hot: 311.15 },
} as const;
const names = Object.keys(days) as (keyof typeof days)[];

function modelOf({ builds, oils }: Parts, oilName: string, temperature: number): DamperModel {
  const [build] = builds;
  const oil = oils.find(({ name }) => name === oilName);
  if (build === undefined || oil === undefined) throw new Error('no build');
  return damperModel(
    assembleShock({ ...build, oil }).damper,
    fluidAt(createOil(oil.definition), temperature),
  );
}

/** Rebound damping of an oil in the first build [N]. */
function rebound(parts: Parts, oil: string, temperature: number, speed: number): number {
  const model = modelOf(parts, oil, temperature);
  return -damperForce(model, { speed: -speed, position: model.damper.stroke / 3 }).dampingForce;
}

describe.each(names)('%s', (name) => {
  const parts = files[name];
  const { cold, now, hot } = days[name];
  const [build] = parts.builds;
  const own = build?.oil.name ?? '';
  const page = pageOf(notebook, parts);

  it('the answer: what the oil of the first build loses in rebound', () => {
    const [speed = 0, lost = 0] = numbersIn(
      page.answer,
      /^In rebound at (\d+) mm\/s .* loses (\d+) % of its damping from/u,
    );
    const left = rebound(parts, own, hot, speed / 1e3) / rebound(parts, own, cold, speed / 1e3);
    expect(lost).toBe(Math.round(100 * (1 - left)));
    expect(page.answer).toMatch(new RegExp(`mm/s \\([^)]*\\) ${own} loses`, 'u'));
    expect(page.answer).toContain(`from ${(cold - 273.15).toFixed(0)} °C to ${(hot - 273.15).toFixed(0)} °C`);
  });

  it.each(['cold', 'hot'] as const)(
    'the answer: the nearest oil of the file when it is %s, and which way it misses',
    (when) => {
      const at = when === 'cold' ? cold : hot;
      const [speed = 0] = numbersIn(page.answer, /^In rebound at (\d+) mm/u);
      const wanted = rebound(parts, own, now, speed / 1e3);
      const ranked = parts.oils
        .map((oil) => ({ name: oil.name, ratio: rebound(parts, oil.name, at, speed / 1e3) / wanted }))
        .sort((a, b) => Math.max(a.ratio, 1 / a.ratio) - Math.max(b.ratio, 1 / b.ratio));
      const best = ranked[0] ?? { name: '', ratio: 1 };
      const sentence = page.answer
        .split(/(?<=\.) (?=At )/u)
        .find((one) => one.startsWith(`At ${(at - 273.15).toFixed(0)} °C`));
      const off = Math.round(100 * Math.abs(best.ratio - 1));
      const said = off === 0 ? 'as hard' : `${off} % ${best.ratio > 1 ? 'harder' : 'softer'}`;
      expect(sentence).toContain(best.name);
      expect(sentence).toContain(best.name === own ? `itself, ${said}` : `: ${said}`);
    },
  );

  it('tables: each oil at the speeds of their columns, cold and hot', () => {
    expect(tableOf(page, 'forces').columns.map(({ label }) => label)).toEqual([
      'Oil',
      'Rebound, slow',
      'Rebound, middle',
      'Pushed in, fast',
    ]);
    const note = JSON.stringify(page.blocks);
    const [slow = 0, middle = 0] = numbersIn(
      note,
      /Slow is (\d+) mm\/s; middle is (\d+) mm\/s \([^)]*\); fast is 1\d{3} mm\/s/u,
    ).map((speed) => speed / 1e3);
    for (const [oil, ...forces] of tableOf(page, 'forces').rows) {
      expect(Number(forces[0]) / rebound(parts, String(oil), now, slow)).toBeCloseTo(1, 6);
      expect(Number(forces[1]) / rebound(parts, String(oil), now, middle)).toBeCloseTo(1, 6);
      const day = rowOf(page, 'day', String(oil));
      expect(Number(day[0]) / rebound(parts, String(oil), cold, middle)).toBeCloseTo(1, 6);
      expect(Number(day[1]) / rebound(parts, String(oil), hot, middle)).toBeCloseTo(1, 6);
      expect(day[2]).toBeCloseTo(1 - Number(day[1]) / Number(day[0]), 9);
    }
  });

  it('thicker oil: harder, earlier to cavitate, slower to come out', () => {
    const byViscosity = tableOf(page, 'forces')
      .rows.map(([oil]) => String(oil))
      .filter((oil) => !oil.includes('workshop'))
      .sort(
        (a, b) =>
          modelOf(parts, a, now).fluid.kinematicViscosity - modelOf(parts, b, now).fluid.kinematicViscosity,
      );
    for (const [index, oil] of byViscosity.entries()) {
      const thinner = byViscosity[index - 1];
      if (thinner === undefined) continue;
      const [one, other] = [rowOf(page, 'forces', oil), rowOf(page, 'forces', thinner)];
      for (const column of [0, 1, 2]) expect(one[column]).toBeGreaterThan(Number(other[column]));
      const [speeds, faster] = [rowOf(page, 'speeds', oil), rowOf(page, 'speeds', thinner)];
      expect(speeds[0]).toBeLessThan(Number(faster[0]));
      if (build?.spring !== undefined) expect(speeds[2]).toBeLessThan(Number(faster[2]));
      else expect(speeds[2]).toBeNull();
    }
  });

  it('the spring lets the shaft out where its force is that of damping and seals less gas', () => {
    if (build?.spring === undefined) return;
    const driven = Number(rowOf(page, 'speeds', own)[2]);
    const position = build.shock.stroke;
    const { force } = damperForce(modelOf(parts, own, now), { speed: -driven, position });
    expect(-force / (build.spring.rate * position)).toBeCloseTo(1, 6);
  });

  it('captions name the least and the most', () => {
    const words = wordsOf(page);
    const lost = tableOf(page, 'day').rows.map(([oil, , , part]) => ({
      oil: String(oil),
      part: Number(part),
    }));
    lost.sort((a, b) => a.part - b.part);
    expect(words).toContain(
      `${lost[0]?.oil} loses the least of its damping, ${Math.round(100 * (lost[0]?.part ?? 0))} %`,
    );
    expect(words).toContain(`${lost.at(-1)?.oil} the most, ${Math.round(100 * (lost.at(-1)?.part ?? 0))} %`);
    const hard = tableOf(page, 'forces').rows.map(([oil, , force]) => ({
      oil: String(oil),
      force: Number(force),
    }));
    hard.sort((a, b) => a.force - b.force);
    const [softest, hardest] = [hard[0], hard.at(-1)];
    expect(words).toMatch(
      new RegExp(`holds back with [\\d.]+ N \\(${softest?.oil}\\) to [\\d.]+ N \\(${hardest?.oil}\\)`, 'u'),
    );
    expect(words).not.toMatch(/at most|limit|whatever the oil|\btears?\b/u);
  });

  it('one colour is one oil, and what is not shown is named', () => {
    const chart = pageFigures(page)[0]?.chart;
    const shown = chart?.kind === 'line' ? chart.shows.series.map((series) => series.name) : [];
    expect(shown.length).toBeLessThanOrEqual(7);
    const left = parts.oils.map((oil) => oil.name).filter((oil) => !shown.includes(oil));
    for (const oil of left)
      expect(wordsOf(page)).toMatch(new RegExp(`Not in the pictures and tables: .*${oil}`, 'u'));
    expect(pagePassed(page)).toBe(true);
    expect(JSON.stringify(page)).not.toMatch(/NaN|Infinity|undefined/u);
  });
});

describe('oil to buy', () => {
  it('the demo: two shocks, 0.3 ml drawn off again, and the cost of a fill is not the price of a bottle', () => {
    const page = pageOf(notebook, files.demo);
    const row = rowOf(page, 'order', 'clear 350');
    // By hand: room 33.5 mm · π/4 · 12² mm² + 0.6 ml − 0.3 ml solid = 4.089 ml; less 0.9 ml of air and bubbles of 0.041 ml, with 0.3 ml drawn off again.
    const poured = 4.089 - 0.9 + 0.3;
    expect((1e6 * Number(row[0])) / (2 * poured)).toBeCloseTo(1, 1);
    expect(row[2]).toBe(Math.floor(60 / (2e6 * (Number(row[0]) / 2))));
    expect(row[3]).toBeCloseTo((7.9 * 1e6 * Number(row[0])) / 60, 6);
    expect(row[3]).toBeLessThan(2);
  });

  it('two cars: 2 · 2.9 ml as the file says, and what takes the place of its bubbles, a guess of 1 %', () => {
    const row = rowOf(pageOf(notebook, files.twoCars), 'order', 'plain 275');
    expect(1e6 * Number(row[0])).toBeCloseTo(2 * 2.929, 6);
    expect(row[2]).toBe(12);
    expect(row[3]).toBeCloseTo((7.2 * 2 * 2.929) / 75, 6);
  });

  it('smallest: that it is a guess', () => {
    const page = pageOf(notebook, files.smallest);
    expect(JSON.stringify(page.blocks)).toContain('How much oil goes into it is a guess');
    expect(JSON.stringify(page.blocks)).toContain('How much gas makes room for the shaft is a guess');
  });
});

describe('settings', () => {
  it('another piston and body take the spring and the number of shocks of their build', () => {
    const page = pageOf(notebook, files.twoCars, { piston: 'truck six 1.4', shock: 'truck' });
    expect(tableOf(page, 'order').rows[0]?.[1]).toBeCloseTo(4 * 8.888e-6, 12);
    expect(page.answer).toContain('plain 275');
    expect(pagePassed(page)).toBe(true);
  });

  it('tapered holes: rebound is rebound, and pushed in is after 4 mm', () => {
    const { builds, oils } = files.twoCars;
    const truck = builds.find(({ name }) => name === 'truck');
    if (truck === undefined) throw new Error('no truck');
    const page = pageOf(notebook, files.twoCars, {
      piston: 'truck eight tapered',
      shock: 'truck',
      middle: '300 mm/s',
    });
    for (const oil of oils.slice(0, 4)) {
      const fluid = fluidAt(createOil(oil.definition), 292.15);
      const model = damperModel(assembleShock({ ...truck, oil }).damper, fluid);
      const at = (speed: number) => damperForce(model, { speed, position: 0.01 }).dampingForce;
      const [slow, middle, pushed] = rowOf(page, 'forces', oil.name);
      expect(Number(slow) / -at(-0.02)).toBeCloseTo(1, 9);
      expect(Number(middle) / -at(-0.3)).toBeCloseTo(1, 9);
      expect(Number(middle) / at(0.3)).not.toBeCloseTo(1, 2);
      const { dampingForce } = forceAfterTravel(model, { speed: 1, position: 0 }, 4e-3);
      expect(Number(pushed) / dampingForce).toBeCloseTo(1, 6);
    }
  });

  it('refuses in words of the bench', () => {
    expect(() => pageOf(notebook, files.twoCars, { piston: 'truck six 1.4' })).toThrow(
      'runs in the bore of buggy front',
    );
    expect(() => pageOf(notebook, files.twoCars, { coldest: '50 °C' })).toThrow('below the hottest, 34 °C');
    expect(() => pageOf(notebook, files.twoCars, { slow: '2000 mm/s' })).toThrow('below fast');
  });

  it('an emulsion makes no claim on cavitation', () => {
    const parts = changedFile(
      fileTexts.twoCars,
      'air-pocket, volume: 0.55 ml',
      'emulsion, gas-fraction: 0.1',
    );
    const page = pageOf(notebook, parts);
    expect(rowOf(page, 'speeds', 'plain 275')[0]).toBeNull();
    expect(wordsOf(page)).not.toContain('begins to cavitate');
  });
});
