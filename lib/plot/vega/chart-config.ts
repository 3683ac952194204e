import type { Config } from 'vega-lite';
import { fontSize } from '../chart/layout.js';
import { inkColours } from '../chart/palette.js';

/** Family named in every picture; the runner ships it, other readers take their own sans-serif. */
export const fontFamily = 'Inter, Helvetica, Arial, sans-serif';

/** The look of all charts. Layout is ours alone: nothing may move when the data change. */
export const chartConfig: Config = {
  aria: false,
  autosize: { type: 'none' },
  background: 'transparent',
  font: fontFamily,
  view: { stroke: null },
  mark: { invalid: null },
  axis: {
    // Twelve digits without trailing zeros: neither "1,000" nor "0.30000000000000004".
    format: '.12~g',
    labelFontSize: fontSize,
    labelColor: inkColours.ink,
    labelFlush: false,
    labelOverlap: false,
    labelPadding: 4,
    domainColor: inkColours.rule,
    tickColor: inkColours.rule,
    tickSize: 4,
    gridColor: {
      condition: { test: 'datum.value === 0', value: inkColours.rule },
      value: inkColours.grid,
    },
  },
};
