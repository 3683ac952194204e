export type { Axis } from './chart/axis.js';
export { besideStart } from './chart/beside-start.js';
export { dotChart } from './chart/dot-chart.js';
export type { Dot, DotChart, DotSeries } from './chart/dots.js';
export type { DataRow, Drawing, LayoutName, Padding } from './chart/drawing.js';
export type { Chart, ChartKind, Figure } from './chart/figure.js';
export type { FigureText } from './chart/figure-text.js';
export { type Histogram, histogram } from './chart/histogram.js';
export { lineChart } from './chart/line-chart.js';
export type { LineChart, LinePoint, LineSeries, MarkedPoint, Rule } from './chart/lines.js';
export type { ScatterChart, ScatterPoint, ScatterSeries } from './chart/scatter.js';
export { scatterChart } from './chart/scatter-chart.js';
export {
  type Cell,
  type Column,
  columnHeading,
  displayColumn,
  displayNumber,
  type Table,
} from './chart/table.js';
export { renderSvg } from './drawing/render-svg.js';
