import type { ChartKind } from '../chart/figure.js';
import { dotSpec } from './dot-spec.js';
import type { Specification } from './layers.js';
import { lineSpec } from './line-spec.js';
import { scatterSpec } from './scatter-spec.js';

/** The constant specification of each kind of chart; a page carries them compiled. */
export const chartSpecs: Readonly<Record<ChartKind, Specification>> = {
  line: lineSpec(),
  dot: dotSpec(),
  scatter: scatterSpec(),
};
