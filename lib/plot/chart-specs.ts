import { dotSpec } from './dot-spec.js';
import type { SpecName } from './figure.js';
import type { Specification } from './layers.js';
import { lineSpec } from './line-spec.js';
import { scatterSpec } from './scatter-spec.js';

/** The constant specifications of all charts by their names; a page carries them compiled. */
export const chartSpecs: Readonly<Record<SpecName, Specification>> = {
  'line-wide': lineSpec('wide'),
  'line-narrow': lineSpec('narrow'),
  'dot-wide': dotSpec('wide'),
  'dot-narrow': dotSpec('narrow'),
  'scatter-wide': scatterSpec('wide'),
  'scatter-narrow': scatterSpec('narrow'),
};
