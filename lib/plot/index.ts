export type { Axis } from './axis.js';
export { besideStart } from './beside-start.js';
export { dotChart } from './dot-chart.js';
export type { Dot, DotChart, DotSeries } from './dots.js';
export type {
  Chart,
  ChartKind,
  DataRow,
  Drawing,
  Figure,
  FigureText,
  LayoutName,
  Padding,
} from './figure.js';
export { type Histogram, histogram } from './histogram.js';
export { lineChart } from './line-chart.js';
export type { LineChart, LinePoint, LineSeries, MarkedPoint, Rule } from './lines.js';
export { renderSvg } from './render-svg.js';
export type { ScatterChart, ScatterPoint, ScatterSeries } from './scatter.js';
export { scatterChart } from './scatter-chart.js';
export { type Cell, type Column, columnHeading, displayColumn, displayNumber, type Table } from './table.js';
