import {
  type DotChart,
  dotChart,
  type LineChart,
  lineChart,
  type ScatterChart,
  scatterChart,
} from '../../lib/plot/index.js';

/** Names and numbers invented for the tests: long, short, hostile. */
export const names = [
  'thin',
  'a name so long that no figure has room for all of it, whatever its width',
  '<script>alert(1)</script>',
  '油 & "oil"',
];

const speeds = Array.from({ length: 41 }, (_speed, index) => -1 + index / 20);

/** Lines of a made-up force against speed, in SI, one of them with a band. */
export const lines: LineChart = {
  id: 'force-velocity',
  title: 'Force against shaft speed for four made-up oils, with a title that needs two lines on a phone',
  alt: 'At 1000 mm/s the force runs from 40 N to 100 N.',
  x: { label: 'Shaft speed', unit: 'mm/s', dimension: 'speed' },
  y: { label: 'Damping force', unit: 'N', dimension: 'force' },
  series: names.map((name, index) => ({
    name,
    points: speeds.map((x) => {
      const y = (20 * (index + 1) + 20 * Math.abs(x)) * x;
      return index === 1 ? { x, y, low: y - 5, high: y + 8 } : { x, y };
    }),
  })),
  startingCase: [{ name: 'before', points: speeds.map((x) => ({ x, y: 30 * x })) }],
  rules: [
    { axis: 'x', value: 0.3, label: 'slow' },
    { axis: 'x', value: 0.95, label: 'a rule near the right edge' },
    { axis: 'y', value: 60, label: 'all that the spring holds' },
  ],
  points: [
    { x: 0.5, y: 30, label: 'a point' },
    { x: 0.98, y: 98, label: 'a point in the corner' },
  ],
};

/** Dots of the same names at three temperatures. */
export const dots: DotChart = {
  id: 'three-temperatures',
  title: 'Force at three temperatures',
  alt: 'The force runs from 10 N to 65 N.',
  category: 'Oil',
  categories: names,
  value: { label: 'Damping force', unit: 'N', dimension: 'force' },
  series: ['8 °C', '20 °C', '38 °C'].map((name, index) => ({
    name,
    dots: names.map((category, row) => {
      const value = 10 * (row + 1) + 5 * (3 - index);
      return row === 1 ? { category, value, low: value - 3, high: value + 9 } : { category, value };
    }),
  })),
};

/** Made-up things at two of their values; several lie close together. */
export const points: ScatterChart = {
  id: 'slow-and-fast',
  title: 'Slow error against fast error',
  alt: 'The nearest is off by 2 % slow and 9 % fast.',
  x: { label: 'Off when slow', unit: '%', dimension: 'ratio' },
  y: { label: 'Off when fast', unit: '%', dimension: 'ratio' },
  labelled: 'Design',
  series: names.map((name, kind) => ({
    name,
    points: [0, 1, 2].map((index) => ({
      x: 0.02 * index + 0.001 * kind,
      y: 0.09 - 0.03 * index,
      label: `${3 * kind + index + 1}`,
    })),
  })),
};

/** Figures of every kind of chart. */
export const sampleFigures = [lineChart(lines), dotChart(dots), scatterChart(points)];
