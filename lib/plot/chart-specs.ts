import { dotSpecs } from './dot-chart.js';
import type { Specification } from './figure.js';
import { lineSpecs } from './line-chart.js';
import { scatterSpecs } from './scatter-chart.js';

/** The constant specifications of all charts by their names; a page carries them compiled. */
export const chartSpecs: Readonly<Record<string, Specification>> = {
  'line-wide': lineSpecs.wide,
  'line-narrow': lineSpecs.narrow,
  'dot-wide': dotSpecs.wide,
  'dot-narrow': dotSpecs.narrow,
  'scatter-wide': scatterSpecs.wide,
  'scatter-narrow': scatterSpecs.narrow,
};
