import { describe, expect, it } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { allBlocks, type Page, pagePassed } from '../../lib/page/index.js';
import { assembleShock, type Parts } from '../../lib/parts/index.js';
import { notebook } from '../../notebooks/lesson.js';
import { files, numbersIn, pageOf, rowOf, tableOf, wordsOf } from './answers.js';

/** What is on the bench: holes [m], oil [K]. */
interface Bench {
  readonly count: number;
  readonly diameter: number;
  readonly temperature: number;
}

/** Rebound damping [N] of the first build with straight holes. */
function rebound(
  { builds }: Parts,
  {
    count,
    diameter,
    temperature,
  }: { readonly count: number; readonly diameter: number; readonly temperature: number },
): (speed: number) => number {
  const [build] = builds;
  if (build === undefined) throw new Error('no build');
  const holes = [{ count, diameter }];
  const piston = { ...build.piston, piston: { ...build.piston.piston, holes } };
  const { damper } = assembleShock({ ...build, piston });
  const model = damperModel(damper, fluidAt(createOil(build.oil.definition), temperature));
  return (speed) => -damperForce(model, { speed: -speed, position: 0.003 }).dampingForce;
}

/** What stands behind a question. */
function revealed(page: Page, id: string): { readonly choices: readonly string[]; readonly text: string } {
  const block = page.blocks.find((one) => one.kind === 'reveal' && one.id === id);
  if (block?.kind !== 'reveal') throw new Error(`no ${id}`);
  const [first] = block.blocks;
  return { choices: block.choices, text: first?.kind === 'text' ? first.text : '' };
}

const cases = [
  { file: 'demo', now: 293.15, hot: 311.15, wider: 2, more: 4 },
  { file: 'twoCars', now: 292.15, hot: 307.15, wider: 1.2, more: 1 },
  { file: 'smallest', now: 293.15, hot: 311.15, wider: 1.7, more: 3 },
  { file: 'demo', now: 293.15, hot: 278.15, wider: 1, more: 6 },
] as const;

describe.each(cases)('$file, $wider mm, $more holes', ({ file, now, hot, wider, more }) => {
  const parts = files[file];
  const page = pageOf(notebook, parts, {
    wider: `${wider} mm`,
    more: String(more),
    hottest: `${(hot - 273.15).toFixed(0)} °C`,
  });
  const start: Bench = { count: 2, diameter: 1.6e-3, temperature: now };
  const [, slowSaid = 0, , middleSaid = 0] = numbersIn(
    page.answer,
    /^In rebound 2 holes of 1\.6 mm hold back with ([\d.]+) N at (\d+) mm\/s and ([\d.]+) N at (\d+) mm\/s;/u,
  );
  const [slow, middle] = [slowSaid / 1e3, middleSaid / 1e3];
  const left = (change: Partial<Bench>, speed: number) =>
    rebound(parts, { ...start, ...change })(speed) / rebound(parts, start)(speed);

  it('the answer', () => {
    const [atSlow = 0, , atMiddle = 0] = numbersIn(
      page.answer,
      /back with ([\d.]+) N at (\d+) mm\/s and ([\d.]+) N/u,
    );
    expect(atSlow / rebound(parts, start)(slow)).toBeCloseTo(1, 2);
    expect(atMiddle / rebound(parts, start)(middle)).toBeCloseTo(1, 2);
  });

  it('the diameter: the letter is that of the nearest choice', () => {
    const { choices, text } = revealed(page, 'hole-diameter');
    const found = left({ diameter: wider / 1e3 }, slow);
    const [letter = '', percents = 0] = [text.charAt(0), numbersIn(text, /nearest: (\d+) % is left/u)[0]];
    expect(percents).toBe(Math.round(100 * found));
    const off = choices.map((choice) =>
      Math.abs(Math.log((100 * found) / (numbersIn(choice, /(\d+) %/u)[0] ?? 1))),
    );
    expect(off['ABC'.indexOf(letter)]).toBe(Math.min(...off));
    // Wider holes are softer, narrower ones harder.
    expect(found < 1).toBe(wider > 1.6);
    expect(choices[2]).toContain(wider > 1.6 ? 'Still less' : 'Still more');
  });

  it('the count: less at the middle speed with more holes, more with fewer', () => {
    const { choices, text } = revealed(page, 'hole-count');
    const [atSlow, atMiddle] = [left({ count: more }, slow), left({ count: more }, middle)];
    expect(text).toContain(
      `${Math.round(100 * atSlow)} % is left at ${slowSaid} mm/s and ${Math.round(100 * atMiddle)} % at ${middleSaid} mm/s`,
    );
    const choice = choices['ABC'.indexOf(text.charAt(0))] ?? '';
    expect(atMiddle < atSlow).toBe(more > 2);
    expect(choice).toContain(more > 2 ? 'and less at' : 'and more at');
    expect(numbersIn(choice, /^About (\d+) %/u)[0]).toBe(Math.round(200 / more));
  });

  it('the temperature: the larger change is at the slow speed', () => {
    const { choices, text } = revealed(page, 'oil-temperature');
    const [atSlow, atMiddle] = [left({ temperature: hot }, slow), left({ temperature: hot }, middle)];
    expect(text).toContain(
      `${Math.round(100 * atSlow)} % is left at ${slowSaid} mm/s and ${Math.round(100 * atMiddle)} % at ${middleSaid} mm/s`,
    );
    expect(Math.abs(Math.log(atSlow))).toBeGreaterThan(Math.abs(Math.log(atMiddle)));
    expect(choices['ABC'.indexOf(text.charAt(0))]).toBe(`At ${slowSaid} mm/s.`);
    // Warm oil is thinner and softer.
    expect(atSlow < 1).toBe(hot > now);
  });

  it('checks by hand pass, and the tables have what they ask for', () => {
    expect(allBlocks(page).filter(({ kind }) => kind === 'check')).toHaveLength(4);
    expect(pagePassed(page)).toBe(true);
    // Poiseuille and Sampson, worked out on the first row: Δp = μ V / d · (6π + 32 L/d).
    const [viscosity = 0, speed = 0, drop = 0] = (tableOf(page, 'by-hand-diameter').rows[0] ?? [])
      .slice(1)
      .map(Number);
    const thickness = parts.builds[0]?.piston.piston.thickness ?? 0;
    const byHand = ((viscosity * speed) / 1.6e-3) * (6 * Math.PI + (32 * thickness) / 1.6e-3);
    expect(Math.abs(byHand / drop - 1)).toBeLessThan(0.01);
    const force = Number(rowOf(page, 'by-hand-temperature', `${(now - 273.15).toFixed(0)} °C`)[1]);
    expect(force / rebound(parts, start)(1e-3)).toBeCloseTo(1, 6);
    expect(JSON.stringify(page)).not.toMatch(/NaN|Infinity|undefined/u);
    expect(wordsOf(page)).not.toMatch(/at most|limit|\btears?\b/u);
  });
});

/** The four shocks and weights of the last experiment, from its question and its table. */
function weighed(page: Page) {
  const block = page.blocks.find((one) => one.kind === 'reveal' && one.id === 'two-weights');
  if (block?.kind !== 'reveal') throw new Error('no two weights');
  const { rows, columns } = tableOf(page, 'by-hand-weights');
  const masses = columns.slice(3).map(({ label }) => numbersIn(label, /([\d.]+)\s(?:g|kg)/u)[0] ?? 0);
  const shocks = rows.map((row) => {
    const [friction = 0, thicker = 0, slow = 0, quick = 0] = row.slice(1).map(Number);
    return { friction, thicker, slow, quick };
  });
  return { block, masses, shocks };
}

describe.each(['demo', 'twoCars', 'smallest'] as const)('two weights on the shock of %s', (file) => {
  const page = pageOf(notebook, files[file]);
  const { block, masses, shocks } = weighed(page);
  const [bench, other] = shocks;

  it('one weight does not tell the two apart, the second does: less of it goes into friction', () => {
    if (bench === undefined || other === undefined) throw new Error('not two shocks');
    expect(other.slow / bench.slow).toBeCloseTo(1, 6);
    expect(other.friction).toBeGreaterThan(bench.friction);
    expect(other.thicker).toBeLessThan(1);
    // By hand, t = c s / (m g − F), with the gas left out: 40 % of what moved the oil goes into the other's friction.
    const [light, heavy] = [masses[0] ?? 0, masses[1] ?? 0].map((grams) => (grams / 1000) * 9.80665);
    const ratio = 0.6 * (((heavy ?? 0) - bench.friction) / ((heavy ?? 0) - other.friction));
    expect(heavy).toBeCloseTo(2 * (light ?? 0), 9);
    expect(Math.abs(other.quick / bench.quick / ratio - 1)).toBeLessThan(0.06);
    expect(ratio).toBeLessThan(1);
    const [text] = block.blocks;
    expect(text?.kind === 'text' ? text.text : '').toMatch(/^B\. The other one takes/u);
    expect(block.choices[1]).toContain('more friction and thinner oil');
    expect(block.question).toContain('% thinner');
  });

  it('the times are those of the damper itself', () => {
    if (bench === undefined) throw new Error('no shock');
    const { builds } = files[file];
    const [build] = builds;
    if (build === undefined) throw new Error('no build');
    const { stroke } = build.shock;
    const temperature = Number(file === 'twoCars' ? 292.15 : 293.15);
    const force = rebound(files[file], { count: 2, diameter: 1.6e-3, temperature });
    const way = 0.75 * stroke;
    const text = block.blocks.flatMap((one) => (one.kind === 'text' ? [one.text] : []))[1] ?? '';
    const [gas = 0] = numbersIn(text.replaceAll('\u00a0', ' '), /the push of the gas, ([\d.]+) N/u);
    // At the mean speed it damps as much as weight and gas pull beyond friction.
    const pull = ((masses[0] ?? 0) / 1000) * 9.80665 + gas - bench.friction;
    expect(Math.abs(force(way / bench.slow) / pull - 1)).toBeLessThan(0.05);
  });

  it('the formula gives friction back, and says what a hand leaves open', () => {
    const check = block.blocks.find(({ kind }) => kind === 'check');
    expect(check?.kind === 'check' && check.passed).toBe(true);
    const detail = check?.kind === 'check' ? check.detail.replaceAll('\u00a0', ' ') : '';
    const [byHand = 0, byHandOther = 0] = numbersIn(detail, /^([\d.]+) N and ([\d.]+) N by hand/u);
    expect(byHand).toBeLessThan((bench?.friction ?? 0) + 0.005);
    expect(byHandOther).toBeLessThan((other?.friction ?? 0) + 0.005);
    expect(byHand).toBeGreaterThan(0.8 * (bench?.friction ?? 0));
    const text = block.blocks.flatMap((one) => (one.kind === 'text' ? [one.text] : []))[1] ?? '';
    if (bench === undefined) throw new Error('no shock');
    const [said = 0] = numbersIn(
      text.replaceAll('\u00a0', ' '),
      /it would be [\d.]+ ± ([\d.]+) N on the bench/u,
    );
    const more = (((masses[1] ?? 0) - (masses[0] ?? 0)) / 1000) * 9.80665;
    const error = (2 * more * Math.hypot(bench.slow, bench.quick) * 0.1) / (bench.slow - bench.quick) ** 2;
    expect(said / error).toBeCloseTo(1, 1);
  });
});

// By hand: 2 of 4 holes are 50 %; 1.6 of 2 mm are 80 %, their area 64 %.
it('offers shares that a head would come to', () => {
  const page = pageOf(notebook, files.demo);
  expect(revealed(page, 'hole-count').choices).toEqual([
    '50 % at both.',
    'About 50 % at 30 mm/s, and less at 300 mm/s.',
    'About 50 % at 30 mm/s, and more at 300 mm/s.',
  ]);
  expect(revealed(page, 'hole-diameter').choices.slice(0, 2)).toEqual([
    'As the diameter: 80 %.',
    'As the area: 64 %.',
  ]);
});

it('a change that changes nothing is the same at every speed', () => {
  const page = pageOf(notebook, files.demo, { wider: '1.6 mm', more: '2', hottest: '20 °C' });
  expect(revealed(page, 'hole-count').text).toMatch(/^A\. 100 % is left/u);
  expect(revealed(page, 'oil-temperature').text).toMatch(/^C\. 100 % is left/u);
});

it('refuses holes that find no room, and a slow speed above the middle one', () => {
  expect(() => pageOf(notebook, files.demo, { count: '12', diameter: '3 mm' })).toThrow(
    'parts that go together',
  );
  expect(() => pageOf(notebook, files.demo, { slow: '500 mm/s' })).toThrow('below middle, 300 mm/s');
  expect(() => pageOf(notebook, files.demo, { shock: 'big 16' })).toThrow(
    'one that runs in the bore of big 16',
  );
});
