import { fitQuality } from '../../lib/measure/answer/fit-quality.js';
import { tellingOf } from '../../lib/measure/answer/telling.js';
import type { ShockFit } from '../../lib/measure/fit/fit-shock.js';
import type { Quantity } from '../../lib/measure/model/shock-state.js';
import { oddValue } from '../../lib/measure/statistics/grubbs.js';
import { readingWords } from '../base/readings-table.js';
import { listed } from '../base/wording.js';

const words: Readonly<Partial<Record<Quantity, string>>> = {
  kinematicViscosity: 'viscosity',
  temperatureSlope: 'how the oil thins with warmth',
  holeDiameter: 'hole size',
  gap: 'gap of the piston',
  friction: 'friction',
  gasPressure: 'gas pressure',
  handDelay: 'lateness of your hand',
  thermometerError: 'thermometer',
  sensorZero: 'zero of the sensor',
  sensorDrift: 'drift of the sensor',
};

/** A quantity that the readings narrow by less than this stays what was stated. */
const narrowed = 0.8;

/** What the readings tell beyond what was stated, and what they leave as it was. */
export function tellingSentence(fit: ShockFit): string {
  const { combinations, shrinkage } = tellingOf(fit);
  const named = (some: typeof shrinkage): string =>
    listed(some.map(({ quantity }) => words[quantity] ?? quantity));
  const told = shrinkage.filter(({ ratio }) => ratio < narrowed);
  const left = shrinkage.filter(({ ratio }) => ratio >= narrowed);
  const many = `The readings say ${combinations} thing${combinations === 1 ? '' : 's'} beyond what was stated`;
  const narrow = told.length === 0 ? 'none of the sizes by itself' : `narrowed: ${named(told)}`;
  return `${many}; ${narrow}. As stated: ${named(left)}.`;
}

/** Squares of the priors beyond which they are what does not fit: one stated size three of its uncertainties off. */
const surprising = 9;

/** Whether the readings scatter as their uncertainties allow. */
export function scatterSentence(fit: ShockFit): string {
  const { verdict, scatterChance, birgeRatio } = fitQuality(fit);
  if (verdict === 'scattered') {
    const one = Math.min(1e6, Math.round(1 / Math.max(scatterChance, 1e-6)));
    const widened = `All intervals are ${birgeRatio.toFixed(1)} times as wide for it.`;
    if (fit.cost - fit.chiSquare > surprising)
      return `What was read and what was stated hardly go together (1 in ${one}): another oil, or another drill? ${widened}`;
    return `The readings scatter more than their uncertainties allow (1 in ${one}): was the shaft held, did the oil warm up? ${widened}`;
  }
  if (verdict === 'quiet')
    return 'The readings scatter less than their uncertainties allow: you measure better than the page thinks.';
  return 'The readings scatter as their uncertainties allow.';
}

/** Repeats that do not go with the others: shown, and kept. */
export function oddSentences({ problem }: ShockFit): readonly string[] {
  return problem.readings.flatMap((reading) => {
    if (reading.kind !== 'drop') return [];
    const odd = oddValue(reading.times);
    return odd === undefined
      ? []
      : [
          `Time ${odd.index + 1} of ${readingWords(reading)}, ${odd.value} s, is odd (Grubbs): kept, and marked.`,
        ];
  });
}
