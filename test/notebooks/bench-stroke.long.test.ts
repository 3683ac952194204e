import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { pageFigures, pagePassed } from '../../lib/page/index.js';
import { notebook } from '../../notebooks/bench-stroke.js';
import { pageOfText, tableOf } from './answers.js';
import { referenceShock } from './reference-shock.js';

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const small = `dashpot: 1
oils: [{ name: bottle, base: silicone, viscosity: 400 cSt }]
pistons: [{ name: 2 hole, diameter: 11.9 mm, thickness: 2.5 mm, holes: [{ count: 2, diameter: 1.6 mm }] }]
shocks: [{ name: front, bore: 12 mm, shaft: 3 mm, stroke: 25 mm }]
`;
const pageOf = (text: string, texts: Readonly<Record<string, string>> = {}) =>
  pageOfText(notebook, text, texts);
const rowsOf = (page: ReturnType<typeof pageOf>, id: string) => tableOf(page, id).rows;
/** Push, pull, energy, damping, stiffness, cavity and lost stroke of the likely oil. */
const likely = (page: ReturnType<typeof pageOf>) =>
  rowsOf(page, 'bench-figures')[0]?.slice(1).map(Number) ?? [];
const ratio = (value: number | undefined, expected: number) => (value ?? Number.NaN) / expected;
const stroke = { amplitude: '10 mm', frequency: '10 Hz', temperature: '20 °C' };

describe('bench-stroke', () => {
  test('begins with an amplitude that leaves room: two fifths of the stroke in half millimetres, 10 mm at most', () => {
    // 0.4 · 24 = 9.6 and 0.4 · 25 = 10 mm.
    expect(pageOf(referenceShock).answer).toMatch(/^At 5 Hz and 9\.5 mm to each side, up to 298 mm\/s/u);
    expect(pageOf(small).answer).toMatch(/^At 5 Hz and 10 mm to each side, up to 314 mm\/s/u);
  });

  test('10 Hz and 10 mm: push, energy, damping and cavity of the two independent programs within 2 %', () => {
    const page = pageOf(referenceShock, stroke);
    const [push, , energy, damping, , cavity, lost] = likely(page);
    for (const off of [
      ratio(push, 38.0),
      ratio(energy, 1.105),
      ratio(damping, 56),
      ratio(cavity, 0.41e-6),
      ratio(lost, 3.9e-3),
    ])
      expect(Math.abs(off - 1)).toBeLessThan(0.02);
    expect(page.answer).toMatch(
      /At 10 Hz and 10 mm to each side, up to 628 mm\/s, front on oil at 20 °C pushes back/u,
    );
    // At 70 % of the highest speed, 440 mm/s, 13.1 N and 35.8 N; at full compression 16.8 N where the gas alone has 0.22 N.
    const text = JSON.stringify(page.blocks);
    const [, , gathering, losing] =
      /Going in at (\d+) mm\/s it pushes with ([\d.]+) N while the shaft gathers speed and with ([\d.]+) N/u.exec(
        text,
      ) ?? [];
    expect(Math.abs(ratio(Number(gathering), 13.1) - 1)).toBeLessThan(0.02);
    expect(Math.abs(ratio(Number(losing), 35.8) - 1)).toBeLessThan(0.02);
    const [, turned, gas] =
      /pushes out with ([\d.]+) N all the way in .*; the gas alone, moved slowly, with ([\d.]+) N/u.exec(
        text,
      ) ?? [];
    expect(Math.abs(ratio(Number(turned), 16.8) - 1)).toBeLessThan(0.03);
    expect(Math.abs(ratio(Number(gas), 0.22) - 1)).toBeLessThan(0.05);
  });

  test('1 Hz stays whole: 2.60 N in and 2.39 N out', () => {
    const page = pageOf(referenceShock, { ...stroke, frequency: '1 Hz' });
    const [push, pull, , , , cavity] = likely(page);
    expect(Math.abs(ratio(push, 2.6) - 1)).toBeLessThan(0.02);
    expect(Math.abs(ratio(pull, 2.39) - 1)).toBeLessThan(0.02);
    expect(cavity).toBe(0);
    expect(JSON.stringify(page.blocks)).toContain('The oil stays whole; no stroke is lost');
  });

  test('energy goes to holes, rim and seals, and to nothing else', () => {
    const page = pageOf(referenceShock, stroke);
    const parts = rowsOf(page, 'bench-energy');
    const [, , energy] = likely(page);
    const sum = parts.reduce((all, [, each]) => all + Number(each) / 1000, 0);
    expect(Math.abs(ratio(sum, energy ?? 0) - 1)).toBeLessThan(1e-3);
    // By hand: seals rub with 0.18 N over 4 × 10 mm; ten strokes a second.
    expect(Math.abs(ratio(Number(parts[2]?.[1]), 7.2) - 1)).toBeLessThan(0.05);
    expect(Number(parts[0]?.[2])).toBeCloseTo(Number(parts[0]?.[1]) / 100, 6);
    expect(pagePassed(page)).toBe(true);
  });

  test('warmer oil and slower strokes push and hold back less; what air leaves open is a band', () => {
    const [push = 0, pull = 0] = likely(pageOf(demo, { temperature: '20 °C' }));
    const [warmPush = 0, warmPull = 0] = likely(pageOf(demo, { temperature: '40 °C' }));
    const [slowPush = 0, slowPull = 0] = likely(pageOf(demo, { temperature: '20 °C', frequency: '4 Hz' }));
    expect(Math.max(warmPush, slowPush)).toBeLessThan(push);
    expect(Math.max(warmPull, slowPull)).toBeLessThan(pull);
    const page = pageOf(demo, { ...stroke, amplitude: '9 mm' });
    const pushes = rowsOf(page, 'bench-figures').map((row) => Number(row[1]));
    expect(pushes).toHaveLength(3);
    const [, low, high] = /pushes back with at most ([\d.]+) to ([\d.]+) N going in/u.exec(page.answer) ?? [];
    expect(Number(low)).toBeCloseTo(Math.min(...pushes), 1);
    expect(Number(high)).toBeCloseTo(Math.max(...pushes), 1);
  });

  test('a triangle has one speed: force against time instead of speed', () => {
    const page = pageOf(demo, { wave: 'triangle', amplitude: '9 mm', frequency: '10 Hz' });
    // 4 × 9 mm × 10 Hz.
    expect(page.answer).toContain('to each side, 360 mm/s, buggy front');
    expect(pageFigures(page).map(({ id }) => id)).toEqual(['force-travel', 'force-time']);
    expect(JSON.stringify(page.blocks)).not.toContain('hysteresis');
    expect(pagePassed(page)).toBe(true);
  });

  test('says what was left out and never compared, and refuses what does not fit', () => {
    const text = JSON.stringify(pageOf(demo).blocks);
    expect(text).toContain('Nothing here was compared with a test bench');
    expect(text).toContain('spike as a cavity collapses, and ringing above about 200 Hz, are left out');
    expect(text).not.toMatch(/NaN|undefined/u);
    expect(() => pageOf(demo, { amplitude: '13 mm' })).toThrow(
      'amplitude must be at most half the stroke of short 12, 12 mm, got 13 mm',
    );
    expect(() => pageOf(small, { amplitude: '11 mm', frequency: '30 Hz', temperature: '-20 °C' })).toThrow(
      /frequency must be lower, .*, got 30 Hz/u,
    );
    const locks = {
      build: 'buggy rear, petroleum',
      amplitude: '11 mm',
      frequency: '28 Hz',
      temperature: '-20 °C',
    };
    expect(JSON.stringify(pageOf(demo, locks).blocks)).toContain('would lock');
  });

  test('a file with a shock and little else is answered with guesses that are named', () => {
    const page = pageOf(small);
    expect(page.answer).toContain('10 mm to each side');
    expect(JSON.stringify(page.blocks)).toContain('guess');
  });

  // The energy of an ideal oscillation is kept over a stroke only once the strokes repeat: with much foam its pressure first has to settle.
  test('foam in the oil is shaken until its strokes repeat, and the page says how often', () => {
    const foamy = small
      .replace('stroke: 25 mm }', 'stroke: 25 mm, compensator: { kind: emulsion, gas-fraction: 0.9 } }')
      .replace('diameter: 1.6 mm', 'diameter: 0.6 mm');
    const page = pageOf(foamy, { frequency: '10 Hz' });
    expect(JSON.stringify(page.blocks)).toMatch(
      /the last of (?:4|8|16|32) strokes from rest is shown\. The oil/u,
    );
    expect(page.blocks.flatMap((block) => (block.kind === 'check' ? [block.passed] : []))).toContain(true);
    expect(pagePassed(page)).toBe(true);
    expect(JSON.stringify(pageOf(small).blocks)).toContain('the second stroke from rest is shown. The oil');
  });

  // Work of a stroke is heat and what the gas has kept: the parts of the table are the area of the loop, whatever the gas does.
  test('gas that does not settle in 32 strokes has its own row, and no claim that all is heat', () => {
    const slow = {
      oils: [
        {
          name: 'oil',
          base: 'silicone',
          viscosity: '100 cSt',
          at: '5 °C',
          'viscosity-temperature-coefficient': 0.55,
          density: '940 kg/m³',
        },
      ],
      pistons: [
        {
          name: 'piston',
          diameter: '9.96 mm',
          thickness: '2 mm',
          holes: [
            {
              count: 5,
              diameter: '0.1 mm',
              'blind-edge': { chamfer: '0.05 mm' },
              'shaft-edge': { chamfer: '0.467 mm' },
            },
          ],
        },
      ],
      shocks: [
        {
          name: 'shock',
          bore: '10 mm',
          shaft: '2.5 mm',
          stroke: '18 mm',
          compensator: { kind: 'emulsion', 'gas-fraction': 0.08 },
          seal: { 'moving-friction': '0.1 N' },
          closing: { shaft: 'fully in', temperature: '80 °C', bleed: 'twice', 'ambient-pressure': '0.9 bar' },
          inside: { length: '200 mm', 'cap-volume': '0.2 ml' },
        },
      ],
      builds: [{ name: 'front', shock: 'shock', piston: 'piston', oil: 'oil' }],
    };
    const page = pageOf(JSON.stringify({ dashpot: 1, ...slow }), { amplitude: '7 mm' });
    const said = page.blocks.flatMap((block) => (block.kind === 'assumptions' ? block.items : [])).join(' ');
    expect(said).toContain('the last of 32 strokes from rest is shown, and the next would still differ');
    expect(page.blocks.filter(({ kind }) => kind === 'check')).toEqual([]);
    const parts = rowsOf(page, 'bench-energy');
    expect(parts.at(-1)?.[0]).toBe('none of them: gas that still settles');
    const [, , energy] = likely(page);
    expect(
      ratio(
        parts.reduce((total, row) => total + Number(row[1]) / 1000, 0),
        energy ?? 0,
      ),
    ).toBeCloseTo(1, 9);
    expect(Math.abs(Number(parts.at(-1)?.[3]))).toBeGreaterThan(5e-3);
  });

  test('a thin disc in a wide gap, of which the heat is all about small differences, keeps its energy', () => {
    const loose = {
      oils: [
        {
          name: 'oil',
          base: 'silicone',
          viscosity: '1 cSt',
          'shear-thinning': { law: 'cross', time: '1 µs', at: '25 °C', exponent: 0.3, floor: 0.05 },
        },
      ],
      pistons: [
        { name: 'piston', diameter: '15 mm', thickness: '0.3 mm', holes: [{ count: 1, diameter: '1 mm' }] },
      ],
      shocks: [
        {
          name: 'shock',
          bore: '16 mm',
          shaft: '3.5 mm',
          stroke: '18 mm',
          seal: { 'breakaway-friction': '0.1 N' },
          closing: { shaft: 'fully out', temperature: '25 °C', bleed: 'never' },
          inside: { length: '35 mm', 'cap-volume': '0.2 ml' },
        },
      ],
      builds: [{ name: 'front', shock: 'shock', piston: 'piston', oil: 'oil' }],
    };
    const page = pageOf(JSON.stringify({ dashpot: 1, ...loose }), { amplitude: '7 mm' });
    const [, , energy] = likely(page);
    const sum = rowsOf(page, 'bench-energy').reduce((total, row) => total + Number(row[1]) / 1000, 0);
    expect(Math.abs(ratio(sum, energy ?? 0) - 1)).toBeLessThan(1e-3);
    expect(pagePassed(page)).toBe(true);
  });
});
