export { type Dot, type DotChart, type DotSeries, dotChart } from './dot-chart.js';
export type { DataRow, Drawing, Figure, FigureText, LayoutName, Padding, Specification } from './figure.js';
export {
  type Axis,
  type LineChart,
  type LinePoint,
  type LineSeries,
  lineChart,
  type MarkedPoint,
  type Rule,
} from './line-chart.js';
export { type Cell, type Column, columnHeading, displayCell, displayNumber, type Table } from './table.js';
