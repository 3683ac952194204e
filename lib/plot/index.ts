export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
export type { Dimension } from '../units/unit-table.js';
export type { Axis } from './chart/axis.js';
export type { Dot, DotChart, DotSeries } from './chart/dots.js';
export type { DataRow, Drawing, LayoutName, Padding } from './chart/drawing.js';
export type { Chart, ChartKind, Figure } from './chart/figure.js';
export type { FigureText } from './chart/figure-text.js';
export type { LineChart, LinePoint, LineSeries, MarkedPoint, Rule } from './chart/lines.js';
export type { ScatterChart, ScatterPoint, ScatterSeries } from './chart/scatter.js';
export {
  type Cell,
  type Column,
  columnHeading,
  displayColumn,
  displayNumber,
  type Table,
} from './chart/table.js';
export { besideStart } from './figure/beside-start.js';
export { dotChart } from './figure/dot-chart.js';
export { type Histogram, histogram } from './figure/histogram.js';
export { lineChart } from './figure/line-chart.js';
export { scatterChart } from './figure/scatter-chart.js';
export { renderSvg } from './vega/render-svg.js';
