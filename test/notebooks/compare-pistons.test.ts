import { describe, expect, it } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import { forceAfterTravel } from '../../lib/damper/force-after-travel.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { pageFigures, pagePassed } from '../../lib/page/index.js';
import { assembleShock, type Parts } from '../../lib/parts/index.js';
import { notebook } from '../../notebooks/compare-pistons.js';
import { changedFile, files, fileTexts, numbersIn, pageOf, rowOf, tableOf, wordsOf } from './answers.js';

/** A piston in the body of the first build, on its oil at the temperature of its wish. */
function modelOf({ builds, pistons, shocks }: Parts, name: string, shockName?: string): DamperModel {
  const [build] = builds;
  const piston = pistons.find((one) => one.name === name);
  const shock = shocks.find((one) => one.name === shockName) ?? build?.shock;
  if (build === undefined || piston === undefined || shock === undefined) throw new Error('no build');
  const oil = createOil(build.oil.definition);
  const { damper } = assembleShock({ shock, piston, oil: build.oil });
  return damperModel(damper, fluidAt(oil, build.wanted?.temperature ?? 293.15));
}

/** Damping at a speed [N], compression positive. */
const damping = (model: DamperModel, speed: number): number =>
  damperForce(model, { speed, position: model.damper.stroke / 3 }).dampingForce;

const cases = [
  { name: 'demo', shock: 'short 12' },
  { name: 'twoCars', shock: 'buggy front' },
  { name: 'twoCars', shock: 'truck' },
  { name: 'twoCars', shock: 'buggy rear' },
  { name: 'smallest', shock: 'front' },
] as const;

describe.each(cases)('$name in $shock', ({ name, shock }) => {
  const parts = files[name];
  const page = pageOf(notebook, parts, { shock });
  const shown = tableOf(page, 'forces').rows.map(([piston]) => String(piston));
  const [slow = 0, middle = 0] = numbersIn(page.answer, /^In rebound from (\d+) mm\/s to (\d+) mm\/s/u).map(
    (v) => v / 1e3,
  );

  it('the answer: which packs most and which least in rebound', () => {
    const ranked = shown
      .map((piston) => {
        const model = modelOf(parts, piston, shock);
        return { piston, growth: damping(model, -middle) / middle / (damping(model, -slow) / slow) };
      })
      .sort((a, b) => b.growth - a.growth);
    const [most, least] = [ranked[0], ranked.at(-1)];
    const said = (one: typeof most) => `rises to ${one?.growth.toFixed(2)} times with ${one?.piston}`;
    if (ranked.length === 1) expect(page.answer).toContain(`${said(most)}.`);
    else {
      expect(page.answer).toContain(`${said(most)}, which packs most`);
      expect(page.answer).toContain(`${said(least)}, which packs least`);
    }
  });

  it('forces of the table, in the direction of their columns', () => {
    expect(tableOf(page, 'forces').columns.map(({ label }) => label.split(' ')[0])).toEqual([
      'Piston',
      'Rebound,',
      'Rebound,',
      'Pushed',
    ]);
    for (const [piston, atSlow, atMiddle] of tableOf(page, 'forces').rows) {
      const model = modelOf(parts, String(piston), shock);
      expect(Number(atSlow) / -damping(model, -slow)).toBeCloseTo(1, 6);
      expect(Number(atMiddle) / -damping(model, -middle)).toBeCloseTo(1, 6);
    }
  });

  it('a piston packs where the pressure for each speed is twice that of slow oil, each way', () => {
    for (const piston of shown) {
      const model = modelOf(parts, piston, shock);
      const drop = (speed: number) => damperForce(model, { speed, position: 0 }).pressureDrop / speed;
      const [, inward, outward] = rowOf(page, 'packing', piston);
      if (inward !== null) expect(drop(Number(inward)) / drop(1e-7)).toBeCloseTo(2, 3);
      if (outward !== null) expect(drop(-Number(outward)) / drop(-1e-7)).toBeCloseTo(2, 3);
    }
  });

  it('the spring and the onset', () => {
    const [build] = parts.builds.filter((one) => one.shock.name === shock);
    for (const piston of shown) {
      const model = modelOf(parts, piston, shock);
      const [from, , driven] = rowOf(page, 'speeds', piston);
      const { pressureDrop, gasPressure } = damperForce(model, { speed: Number(from), position: 0 });
      expect(pressureDrop / gasPressure).toBeCloseTo(1, 6);
      if (build?.spring === undefined) expect(driven).toBeNull();
      else {
        const position = model.damper.stroke;
        const { force } = damperForce(model, { speed: -Number(driven), position });
        expect(-force / (build.spring.rate * position)).toBeCloseTo(1, 5);
      }
    }
  });

  it('captions name the softest first', () => {
    const sorted = shown
      .map((piston) => ({ piston, force: -damping(modelOf(parts, piston, shock), -middle) }))
      .sort((a, b) => a.force - b.force);
    const alt = pageFigures(page)[0]?.alt ?? '';
    if (sorted.length > 1) {
      const pattern = new RegExp(
        `^In rebound at [\\d.]+ mm/s the shock holds back with ([\\d.]+) N \\(${sorted[0]?.piston}\\) to ([\\d.]+) N \\(${sorted.at(-1)?.piston}\\); pushed in at 1(?:15|00)0 mm`,
        'u',
      );
      const [least = 0, most = 0] = numbersIn(alt, pattern);
      expect(least / (sorted[0]?.force ?? 0)).toBeCloseTo(1, 2);
      expect(most / (sorted.at(-1)?.force ?? 0)).toBeCloseTo(1, 2);
    }
    expect(wordsOf(page)).not.toMatch(/at most|limit|whatever the oil|\btears?\b/u);
    expect(pagePassed(page)).toBe(true);
    expect(JSON.stringify(page)).not.toMatch(/NaN|Infinity|undefined/u);
  });

  it('names what is left out, and nothing else', () => {
    const words = wordsOf(page);
    for (const { name: piston } of parts.pistons)
      expect(words.includes(`${piston} is left out: it does not run in the bore of ${shock}`)).toBe(
        !shown.includes(piston),
      );
  });
});

it('tapered holes pack earlier where the oil leaves the narrow end', () => {
  // Wide at the shaft side: in rebound oil runs into the wide end and leaves the narrow one as a jet.
  const [, inward, outward] = rowOf(pageOf(notebook, files.twoCars), 'packing', 'front three tapered');
  expect(outward).toBeLessThan(Number(inward));
  // Wide at the blind side: the other way round.
  const truck = pageOf(notebook, files.twoCars, { shock: 'truck' });
  const [, pushedIn, letOut] = rowOf(truck, 'packing', 'truck eight tapered');
  expect(pushedIn).toBeLessThan(Number(letOut));
});

it('pushed in is after 4 mm of a stroke from fully out', () => {
  const model = modelOf(files.twoCars, 'front three tapered');
  const { dampingForce } = forceAfterTravel(model, { speed: 1, position: 0 }, 4e-3);
  const row = rowOf(pageOf(notebook, files.twoCars), 'forces', 'front three tapered');
  expect(Number(row[2]) / dampingForce).toBeCloseTo(1, 6);
  // Three holes of 1.3 mm at their narrowest: 3 · π/4 · 1.69 mm².
  expect(
    1e6 * Number(rowOf(pageOf(notebook, files.twoCars), 'packing', 'front three tapered')[0]),
  ).toBeCloseTo(3.982, 3);
});

it('slow damping of straight holes by hand', () => {
  // two 1.7 in short 12, clear 350 at 20 °C: 383 mm²/s by Barry, 975 kg/m³, μ = 0.373 Pa·s; each hole (32 · 2.5/1.7 + 18.85)/d = 38.8 /mm,
  // flow π/4 · 1.7² mm² a hole; damping area 105.5 mm²: A² / (2 · 2.27 mm² / (μ · 38.8 /mm)) = 35.5 N·s/m, and 1.2 N·s/m of drag on the rim.
  const page = pageOf(notebook, files.demo, { slow: '5 mm/s' });
  expect(Math.abs(Number(rowOf(page, 'forces', 'two 1.7')[0]) / (36.7 * 5e-3) - 1)).toBeLessThan(0.03);
});

it('a disc that lifts: damping per speed may fall, and the page says so', () => {
  const disc =
    'valves: [{ face: shaft-side, covers: [1], outer-diameter: 10 mm, clamp-diameter: 5 mm, thickness: 0.08 mm, elastic-modulus: 4 GPa }]';
  const parts = changedFile(
    fileTexts.demo,
    'holes: [{ count: 2, diameter: 1.7 mm }]',
    `holes: [{ count: 2, diameter: 1.7 mm, pitch-circle: 7.5 mm }]\n    ${disc}`,
  );
  const page = pageOf(notebook, parts);
  expect(wordsOf(page)).toContain('A disc that lifts');
  expect(wordsOf(pageOf(notebook, files.demo))).not.toContain('A disc that lifts');
  expect(pagePassed(page)).toBe(true);
});

it('refuses a slow speed above the middle one, and says where no piston runs', () => {
  expect(() => pageOf(notebook, files.demo, { slow: '400 mm/s' })).toThrow('below middle, 300 mm/s');
  const none = pageOf(notebook, files.demo, { pistons: 'eight 1.4' });
  expect(none.answer).toContain('No piston of the parts file runs in short 12');
  expect(pageFigures(none)).toEqual([]);
});
