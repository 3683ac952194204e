import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { oilDensity } from '../../lib/fluid/oil/density.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { pagePassed } from '../../lib/page/index.js';
import { assembleShock } from '../../lib/parts/assembly/assembled-shock.js';
import { readParts } from '../../lib/parts/index.js';
import { notebook as compareOils } from '../../notebooks/compare-oils.js';
import { notebook } from '../../notebooks/spread.js';
import { randomNumbers } from '../laws/random-damper.js';
import { files, numbersIn, pageOfText, rowOf, pageOf as sharedPageOf } from './answers.js';

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const pageOf = (text: string, texts: Readonly<Record<string, string>> = {}) =>
  pageOfText(notebook, text, texts);
const tableOf = (page: ReturnType<typeof pageOf>, id: string) => {
  const block = page.blocks.find((one) => one.kind === 'table' && one.id === id);
  if (block?.kind !== 'table') throw new Error(`no table ${id}`);
  return block.table.rows;
};

// Brute force apart from the page: plain random numbers, the full model for every build, quantiles by sorting. No sampler, kernel or share of the page.
const halfWidths = {
  hole: 3e-5,
  thickness: 5e-5,
  bore: 2e-5,
  gap: 1e-5,
  gas: 0.1e-6,
  viscosity: 0.05,
  kelvin: 3,
};

function brute(speed: number, count: number) {
  const parts = readParts(demo);
  const [build] = parts.builds;
  if (build === undefined) throw new Error('no build');
  const { damper } = assembleShock(build);
  const oil = createOil(build.oil.definition);
  const next = randomNumbers(20_261_125);
  const off = (half: number) => half * (2 * next() - 1);
  const force = (own: boolean, shared: boolean): number => {
    const o = own ? 1 : 0;
    const s = shared ? 1 : 0;
    const bore = damper.bore + o * off(halfWidths.bore);
    const taper = 0.5 * o * off(3e-5);
    const diameter = o * off(halfWidths.hole);
    const temperature = 293.15 + s * off(halfWidths.kelvin);
    const state = fluidAt(oil, temperature);
    const model = damperModel(
      {
        ...damper,
        bore,
        piston: {
          ...damper.piston,
          diameter: bore - (damper.bore - damper.piston.diameter) - 2 * o * off(halfWidths.gap),
          thickness: damper.piston.thickness + o * off(halfWidths.thickness),
          holes: damper.piston.holes.map((group) => ({
            ...group,
            diameter: group.diameter + diameter - taper,
            shape: { kind: 'conical' as const, shaftSideDiameter: group.diameter + diameter + taper },
          })),
        },
        gas: {
          ...damper.gas,
          rooms: damper.gas.rooms.map((room, place) =>
            place === 0 ? { ...room, volume: room.volume + o * off(halfWidths.gas) } : room,
          ),
        },
      },
      {
        temperature,
        kinematicViscosity: state.kinematicViscosity * (1 + s * off(halfWidths.viscosity)),
        density: oilDensity(oil.base, temperature, oil.densityAt15Celsius),
      },
    );
    const { dampingForce, gasForce } = damperForce(model, { speed, position: damper.stroke / 2 });
    return Math.abs(dampingForce + gasForce);
  };
  const sorted = (values: readonly number[]) => [...values].sort((a, b) => a - b);
  const at = (values: readonly number[], part: number) => values[Math.round(part * (values.length - 1))] ?? 0;
  const apart = sorted(
    Array.from({ length: count }, () => {
      const [a, b] = [force(true, false), force(true, false)];
      return (a > b ? a / b : b / a) - 1;
    }),
  );
  const common = sorted(Array.from({ length: count }, () => force(false, true)));
  return {
    pairs: at(apart, 0.9),
    shared: (at(common, 0.95) - at(common, 0.05)) / at(common, 0.5) / 2,
    least: at(sorted(Array.from({ length: count }, () => force(true, true))), 0.05),
  };
}

describe('spread on the demo file', () => {
  const page = pageOf(demo);

  test('left against right and all against the plan are those of brute force', () => {
    const expected = brute(-0.3, 3000);
    const [, row] = tableOf(page, 'spread');
    expect(row?.[0]).toBe('rebound at 300 mm/s');
    expect(Math.abs(Number(row?.[2]) / expected.pairs - 1)).toBeLessThan(0.06);
    expect(Math.abs(Number(row?.[3]) / expected.shared - 1)).toBeLessThan(0.06);
    expect(Math.abs(Number(row?.[4]) / expected.least - 1)).toBeLessThan(0.01);
    const said = /differ by up to (\S+) % in nine.*may be (\S+) % harder or softer/u.exec(page.answer);
    expect(Math.abs(Number(said?.[1]) / (100 * expected.pairs) - 1)).toBeLessThan(0.08);
    expect(Math.abs(Number(said?.[2]) / (100 * expected.shared) - 1)).toBeLessThan(0.08);
  });

  test('compression at the fast speed is compression', () => {
    const expected = brute(1.15, 300);
    const [, , row] = tableOf(page, 'spread');
    expect(row?.[0]).toBe('compression at 1150 mm/s');
    expect(Math.abs(Number(row?.[4]) / expected.least - 1)).toBeLessThan(0.03);
  });

  test('says what sets left and right apart: the drill here, and not what all share', () => {
    expect(page.answer).toMatch(
      /^In rebound at 300 mm\/s left and right of one drawing differ by up to .* in nine of ten pairs; the hole diameter causes 9\d % of that, so measure it first\. All shocks together may be .*, mostly by the oil temperature,/u,
    );
    const rows = tableOf(page, 'tolerances');
    const sets = Object.fromEntries(rows.map(([size, of]) => [size, of]));
    expect(sets).toMatchObject({
      'The hole diameter': 'left and right',
      'The air left in the fill': 'left and right',
      'The oil label': 'all from the plan',
      'The oil temperature': 'all from the plan',
    });
    // Largest first, each kind by itself.
    expect(rows[0]?.[0]).toBe('The hole diameter');
    expect(pagePassed(page)).toBe(true);
  });
});

describe('the fast compression of spread', () => {
  test.each(['demo', 'twoCars', 'smallest'] as const)(
    '%s: whole oil, and beside it what the page of oils says',
    (name) => {
      const parts = files[name];
      const spread = sharedPageOf(notebook, parts);
      const note = spread.blocks.find((block) => block.kind === 'table' && block.id === 'spread');
      const [fast = 0, whole = 0, after = 0] = numbersIn(
        note?.kind === 'table' ? (note.note ?? '') : '',
        /Compression at (\d+) mm\/s is that of whole oil, ([\d.]+) N of damping as meant; a stroke from fully out opens a cavity and damps with ([\d.]+) N after 4 mm/u,
      );
      const [build] = parts.builds;
      if (build === undefined) throw new Error('no build');
      const oils = sharedPageOf(compareOils, parts, { fast: `${fast} mm/s` });
      const [, , pushed] = rowOf(oils, 'forces', build.oil.name);
      expect(after / Number(pushed)).toBeCloseTo(1, 2);
      // Half of all builds lie below the whole oil of the build as meant, with the push of its gas.
      const row = tableOf(spread as ReturnType<typeof pageOf>, 'spread')[2];
      expect(row?.[0]).toBe(`compression at ${fast} mm/s`);
      expect(Number(row?.[5]) / whole).toBeGreaterThan(0.97);
      expect(Number(row?.[5]) / whole).toBeLessThan(1.08);
      expect(whole).toBeGreaterThan(1.3 * after);
    },
  );

  test('slow enough no cavity opens, and nothing is said of one', () => {
    const page = pageOf(demo, { slow: '5 mm/s', middle: '10 mm/s', fast: '50 mm/s' });
    expect(JSON.stringify(page.blocks)).toMatch(
      /Compression at 50 mm\/s is that of whole oil, [\d.]+ N of damping as meant; no cavity opens\./u,
    );
  });
});

describe('spread on other files', () => {
  const exact = demo.replace(/^tolerances:[\s\S]*$/mu, '');

  test('a drill that is exact leaves another size to measure first', () => {
    const page = pageOf(`${exact}\ntolerances: { thickness: 0.2 mm, gap: 0.001 mm }\n`);
    expect(page.answer).toContain('the piston thickness causes');
    expect(page.answer).not.toContain('hole diameter');
  });

  test('a label that is far off sets all from the plan, and no pair apart', () => {
    const page = pageOf(exact, { label: '25 %', 'temperature-off': '0 K' });
    expect(page.answer).toContain('mostly by the oil label');
    const [, row] = tableOf(page, 'spread');
    // ±25 % evenly: nine of ten labels within 22.5 %. Viscosity makes more than half of this force and less than all of it.
    expect(Number(row?.[3])).toBeGreaterThan(0.5 * 0.225);
    expect(Number(row?.[3])).toBeLessThan(0.225);
  });

  test('without tolerances in the file it says that usual ones stand in', () => {
    expect(JSON.stringify(pageOf(exact).blocks)).toContain(
      'usual ones of work by hand stand in (common practice, no source)',
    );
  });
});

test('a syringe that may miss all of the gas is refused by its key, before a force comes out as no number', () => {
  const [build] = readParts(demo).builds;
  if (build === undefined) throw new Error('no build');
  const { gas } = assembleShock(build).damper;
  const millilitres = 1e6 * (gas.rooms[0]?.volume ?? 0);
  const off = (volume: number) => demo.replace(/gas-volume: [^,}\n]*/u, `gas-volume: ${volume} ml`);
  expect(off(0.123)).toContain('gas-volume: 0.123 ml');
  expect(() => pageOf(off(1.01 * millilitres))).toThrow(
    /^gas-volume must be in tolerances, below the [\d.]+ ml of gas that buggy front is closed with, got [\d.]+ ml$/u,
  );
  expect(pageOf(off(0.5 * millilitres)).answer).not.toContain('NaN');
});
