import { scale } from 'vega';
import type { DotChart, Drawing, LineChart, ScatterChart } from '../../lib/plot/index.js';

// Small made-up charts, and what a reader sees of their drawings.
export type Row = Readonly<Record<string, unknown>>;
export const number = (row: Row | undefined, key: string): number => Number(row?.[key]);
const words = { id: 'a', title: 'T', alt: 'Of two made-up oils.' };
export const plotOf = ({ width, height, padding }: Drawing) => ({
  width: width - padding.left - padding.right,
  height: height - padding.top - padding.bottom,
});
export const rowsOf = ({ data }: Drawing, set: string): readonly Row[] => data[set] ?? [];
export const textOf = (drawing: Drawing, text: string): Row | undefined =>
  rowsOf(drawing, 'texts').find((row) => row['text'] === text);
export const across = (drawing: Drawing, value: number): number =>
  scale('linear')()
    .domain([number(drawing.signals, 'xLow'), number(drawing.signals, 'xHigh')])
    .range([0, plotOf(drawing).width])(value);
export const down = (drawing: Drawing, value: number): number =>
  scale('linear')()
    .domain([number(drawing.signals, 'yLow'), number(drawing.signals, 'yHigh')])
    .range([plotOf(drawing).height, 0])(value);

export const dots = (names: readonly string[], kinds: readonly string[] = ['one']): DotChart => ({
  ...words,
  category: 'Oil',
  categories: names,
  value: { label: 'Force', unit: 'N' },
  series: kinds.map((name, kind) => ({
    name,
    dots: names.map((category, place) => ({ category, value: 10 * (place + 1) + kind })),
  })),
});
export const lines = (kinds: readonly string[] = ['one', 'two']): LineChart => ({
  ...words,
  x: { label: 'Speed', unit: 'mm/s' },
  y: { label: 'Force', unit: 'N' },
  series: kinds.map((name, kind) => ({
    name,
    points: [
      { x: 0, y: 0 },
      { x: 10, y: 20 * (kind + 1) },
    ],
  })),
});
export const points = (kinds: readonly string[] = ['one', 'two']): ScatterChart => ({
  ...words,
  x: { label: 'Slow', unit: 'N' },
  y: { label: 'Fast', unit: 'N' },
  labelled: 'Design',
  series: kinds.map((name, kind) => ({
    name,
    points: [{ x: 10 + 5 * kind, y: 20 - 5 * kind, label: `no. ${kind}` }],
  })),
});
