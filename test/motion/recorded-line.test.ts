import { describe, expect, test } from 'vitest';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import { risingTable } from '../../lib/motion/input/table.js';
import { sampleShock } from './sample-shock.js';

const line = (times: readonly number[], values: readonly number[]) => {
  const table = risingTable(times, values, 'times', 'values');
  return (time: number): readonly [number, number] => {
    table.evaluate(time);
    return [table.value, table.slope];
  };
};

describe('the line through a recording', () => {
  // SciPy 1.17.1, PchipInterpolator and its derivative: at the first point, halfway to the second, halfway to the last, and at the last.
  for (const { times, values, rows } of [
    {
      times: [0, 1, 3, 4, 6],
      values: [0, 2, 3, 1, 1.5],
      rows: [
        [0, 0, 2.5],
        [0.5, 1.2053571428571428, 2.1607142857142856],
        [5, 1.0625, 0.1875],
        [6, 1.5, 0.75],
      ],
    },
    {
      times: [0, 0.5, 2, 3],
      values: [1, 1.1, 4, 4.2],
      rows: [
        [0, 1, 0],
        [0.25, 1.030045871559633, 0.2201834862385323],
        [2.5, 4.142984189723321, 0.2140316205533599],
        [3, 4.2, 0],
      ],
    },
    {
      times: [0, 1, 1.5],
      values: [0, 1, -4],
      rows: [
        [0, 0, 3],
        [0.5, 0.875, 0.75],
        [1.25, -0.6458333333333336, -11.583333333333336],
        [1.5, -4, -13.666666666666671],
      ],
    },
    {
      times: [0, 2],
      values: [1, 4],
      rows: [
        [0, 1, 1.5],
        [1, 2.5, 1.5],
        [2, 4, 1.5],
      ],
    },
  ] as const) {
    test(`of ${times.length} rows is the one of another library, to its ends`, () => {
      const at = line(times, values);
      for (const [time, value, slope] of rows) {
        expect(at(time)[0]).toBeCloseTo(value, 12);
        expect(at(time)[1]).toBeCloseTo(slope, 10);
      }
    });
  }

  test('stands still before and after', () => {
    const at = line([1, 2, 3], [5, 7, 8]);
    expect(at(0.5)).toEqual([5, 0]);
    expect(at(3.5)).toEqual([8, 0]);
  });
});

describe('a recorded sine that begins and ends where it is steepest', () => {
  const [middle, amplitude, frequency, rows] = [0.012, 0.008, 5, 40];
  const omega = 2 * Math.PI * frequency;
  const times = Array.from({ length: rows + 1 }, (_, i) => i / rows / frequency);
  const travels = times.map((time) => middle + amplitude * Math.sin(omega * time));

  test('has its speed there, to the error of the parabola', () => {
    const at = line(times, travels);
    // Taylor: the slope of a parabola through three points h apart is off by h²/3 of the third derivative; the next term is a quarter of h³ of the fourth, nought here.
    const off = (omega * (times[1] ?? 0)) ** 2 / 3;
    for (const time of [0, times[rows] ?? 0]) {
      const share = at(time)[1] / (amplitude * omega);
      expect(Math.abs(share - 1)).toBeLessThan(1.1 * off);
      expect(Math.abs(share - 1)).toBeGreaterThan(0.5 * off);
    }
  });

  test('nowhere moves faster than the sine, but for that error', () => {
    const { trace } = benchStroke(sampleShock(), { kind: 'table', times, travels }, { parts: 800 });
    const fastest = Math.max(...trace.speeds.map(Math.abs));
    expect(fastest / (amplitude * omega)).toBeGreaterThan(0.99);
    expect(fastest / (amplitude * omega)).toBeLessThan(1.01);
    expect((trace.speeds[0] ?? 0) / (amplitude * omega)).toBeCloseTo(1, 1);
    expect((trace.speeds.at(-1) ?? 0) / (amplitude * omega)).toBeCloseTo(1, 1);
  });
});
