import { describe, expect, it } from 'vitest';
import { pageFigures } from '../../lib/page/index.js';
import { notebook } from '../../notebooks/bench-stroke.js';
import { files, numbersIn, pageOf, tableOf, wordsOf } from './answers.js';

const stroke = { amplitude: '9 mm', frequency: '8 Hz', temperature: '20 °C' };

describe('what bench-stroke says of a place in the stroke', () => {
  it('the hardest push is where the loop is highest, at the speed that a sine has there', () => {
    const page = pageOf(notebook, files.demo, stroke);
    const [travel = 0, speed = 0] = numbersIn(
      wordsOf(page),
      /hardest push comes ([\d.]+) mm in, with the shaft (?:going in|coming out) at ([\d.]+) mm\/s/u,
    );
    // The loop as drawn: travel, going in with its band, coming out with its band.
    const { columns, rows } = pageFigures(page)[0]?.table ?? { columns: [], rows: [] };
    const ways = ['going in', 'coming out'].map((way) => columns.findIndex(({ label }) => label === way));
    const force = (row: (typeof rows)[number]) => Math.max(...ways.map((way) => Number(row[way])));
    const top = rows.reduce((a, b) => (force(b) > force(a) ? b : a));
    expect(force(top)).toBeGreaterThan(1);
    // The steepest step of the loop is 9 mm · 2π/120.
    expect(Math.abs(travel - 1e3 * Number(top[0]))).toBeLessThan(0.5);
    const inward = Number(top[ways[0] ?? 0]) > Number(top[ways[1] ?? 0]);
    expect(wordsOf(page)).toContain(`with the shaft ${inward ? 'going in' : 'coming out'} at`);
    // Half of 24 mm is the middle; v² = ω² (a² − x²).
    const bySine = 2 * Math.PI * 8 * Math.sqrt(9 ** 2 - (travel - 12) ** 2);
    expect(Math.abs(speed / bySine - 1)).toBeLessThan(0.02);
    expect(speed).toBeGreaterThan(50);
  });

  it('names the oil that would lock: the one that is not in the table', () => {
    const locks = { amplitude: '11 mm', frequency: '28 Hz', temperature: '-20 °C' };
    const page = pageOf(notebook, files.demo, { build: 'buggy rear, petroleum', ...locks });
    const inTable = { 'with bubbles': 'with bubbles', 'that lets air go early': 'air let go early' };
    const left = tableOf(page, 'bench-figures').rows.map(([name]) => name);
    const said = /Oil (.*) would lock/gu;
    const locked = [...wordsOf(page).matchAll(said)].map(([, name]) => name);
    expect(left[0]).toBe('likely');
    expect(locked).toHaveLength(1);
    expect(
      Object.entries(inTable)
        .filter(([, name]) => !left.includes(name))
        .map(([said]) => said),
    ).toEqual(locked);
    expect(wordsOf(pageOf(notebook, files.demo, stroke))).not.toMatch(said);
  });
});
