import type { Specification } from '../drawing/layers.js';
import { dotSpec } from '../vega/dot-spec.js';
import { lineSpec } from '../vega/line-spec.js';
import { scatterSpec } from '../vega/scatter-spec.js';
import type { ChartKind } from './figure.js';

/** The constant specification of each kind of chart; a page carries them compiled. */
export const chartSpecs: Readonly<Record<ChartKind, Specification>> = {
  line: lineSpec(),
  dot: dotSpec(),
  scatter: scatterSpec(),
};
