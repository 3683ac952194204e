import { describe, expect, it } from 'vitest';
import { pageFigures } from '../../lib/page/index.js';
import { withDyno } from '../../lib/parts/dyno-entry.js';
import { readParts } from '../../lib/parts/index.js';
import { notebook } from '../../notebooks/what-you-have.js';
import { files, fileTexts, numbersIn, pageOf, tableOf } from './answers.js';
import { dynoRecord } from './dyno-record.js';

type Page = ReturnType<typeof pageOf>;

/** Points of a line with its band, by its name. */
function bandOf(page: Page, name: string) {
  const { columns, rows } = pageFigures(page)[0]?.table ?? { columns: [], rows: [] };
  const places = [name, `${name}, low`, `${name}, high`].map((label) =>
    columns.findIndex((column) => column.label === label),
  );
  return rows
    .map((row) => [row[0], ...places.map((place) => row[place])])
    .filter((row): row is number[] => row.every((one) => typeof one === 'number'));
}

describe('the band of what-you-have', () => {
  it('at the speed of the answer is the interval of the answer', () => {
    // The picture ends 1.3 times as fast as the speed asked for.
    const page = pageOf(notebook, files.demo, { speed: '300 mm/s' });
    const [force = 0, half = 0] = numbersIn(
      page.answer,
      /at 300 mm\/s it pushes back with ([\d.]+) ± ([\d.]+) N/u,
    );
    const beyond = bandOf(page, 'the law beyond');
    expect(beyond.at(-1)?.[0]).toBeCloseTo(0.39, 9);
    const after = beyond.findIndex(([speed = 0]) => speed >= 0.3);
    const [one = [], other = []] = [beyond[after - 1], beyond[after]];
    const part = (0.3 - (one[0] ?? 0)) / ((other[0] ?? 1) - (one[0] ?? 0));
    const [line = 0, low = 0, high = 0] = [1, 2, 3].map(
      (place) => (one[place] ?? 0) + part * ((other[place] ?? 0) - (one[place] ?? 0)),
    );
    expect(Math.abs(line - force)).toBeLessThan(0.06);
    // The answer has the half width of a straight interval, the picture the ends of its logarithm: e^±h.
    const ends = [-1, 1].map((sign) => force * Math.exp((sign * half) / force));
    expect(Math.abs(low - (ends[0] ?? 0))).toBeLessThan(0.15);
    expect(Math.abs(high - (ends[1] ?? 0))).toBeLessThan(0.15);
  });

  it('is solid from the slowest to the fastest speed that was timed, 22 mm in the longest and the shortest time, and goes on from there', () => {
    const page = pageOf(notebook, files.demo);
    const measured = bandOf(page, 'measured').map(([speed = 0]) => speed);
    const beyond = bandOf(page, 'the law beyond').map(([speed = 0]) => speed);
    expect(measured[0]).toBeCloseTo(0.022 / 3.17, 5);
    expect(measured.at(-1)).toBeCloseTo(0.0275, 5);
    expect(beyond[0]).toBeCloseTo(0.0275, 5);
    const widths = bandOf(page, 'the law beyond').map(
      ([, line = 1, low = 0, high = 0]) => (high - low) / line,
    );
    expect(widths.at(-1)).toBeGreaterThan(1.2 * (widths[0] ?? 0));
  });

  it('of a dyno is twice what its sensor leaves open in a mean, to both sides of what was read', () => {
    const record = dynoRecord(files.demo, 'buggy front', 22, {
      thicker: 1.1,
      friction: 0.25,
      zero: 0.1,
      noise: 0.1,
    });
    const parts = readParts(
      withDyno(fileTexts.demo, { record, build: 'buggy front', temperature: '22 °C', zeroAt: '4 mm' }),
    );
    const page = pageOf(notebook, parts, { which: '3' });
    const { rows } = tableOf(page, 'dyno');
    for (const way of ['going in', 'coming out']) {
      const band = bandOf(page, `dyno, ${way}`);
      const table = rows.filter(([first]) => first === way);
      expect(band.length).toBeGreaterThan(1);
      expect(band.length).toBe(table.length);
      for (const [index, [speed = 0, read = 0, low = 0, high = 0]] of band.entries()) {
        expect(speed).toBe(table[index]?.[1]);
        expect(read).toBe(table[index]?.[2]);
        expect(high - read).toBeCloseTo(read - low, 9);
        // Of each force 0.1 N and 1 % of it, friction and gas in it; a mean of n leaves the root of n less.
        const byHand = (2 * Math.hypot(0.1, 0.01 * (read + 0.3))) / Math.sqrt(Number(table[index]?.[6]));
        expect((high - read) / byHand).toBeGreaterThan(0.92);
        expect((high - read) / byHand).toBeLessThan(1.08);
      }
    }
  });
});
