import { refuse } from '../../base/checks.js';
import { requireShape } from '../../base/shape.js';
import { fromSquareMillimetres } from './square-millimetres.js';
import type { ViscosityInterval } from './viscosity-interval.js';

interface Row {
  readonly weight: number;
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

function row(weight: number, typical: number, low: number, high: number): Row {
  return { weight, low, typical, high };
}

/** Label, typical, lowest and highest viscosity [mm²/s] at 25 °C. Common practice, no source; from memory. */
const rows: readonly Row[] = [
  row(10, 100, 80, 130),
  row(15, 150, 120, 180),
  row(20, 200, 160, 240),
  row(25, 270, 220, 310),
  row(30, 350, 280, 380),
  row(35, 425, 350, 460),
  row(40, 500, 420, 550),
  row(45, 575, 500, 630),
  row(50, 650, 550, 730),
  row(60, 800, 650, 900),
  row(70, 950, 800, 1050),
  row(80, 1100, 900, 1250),
];

/** Temperature [K] at which trade weights are taken here; the label seldom says. */
export const tradeWeightTemperature = 298.15;

/**
 * Kinematic viscosity [m²/s] at 25 °C behind a trade weight ("wt") of silicone damper oil, as an interval.
 *
 * Common practice, no source: the label is not a measured quantity, sellers differ by 10 to 30 % and some by a whole step.
 * Between the listed weights (10 to 50 by fives, 60, 70, 80) the three columns are interpolated along straight lines.
 *
 * @param weight - number of the label, 10 to 80
 * @throws InputError outside that range
 * @public
 */
export function tradeWeightViscosity(weight: number): ViscosityInterval {
  requireShape({ weight }, { weight: '' });
  const index = rows.findIndex((candidate) => candidate.weight >= weight);
  const above = rows[index];
  const below = rows[Math.max(index - 1, 0)];
  if (above === undefined || below === undefined || !(weight >= below.weight)) {
    refuse(weight, 'weight', '', '10 to 80');
  }
  const span = above.weight - below.weight;
  const part = span === 0 ? 0 : (weight - below.weight) / span;
  const between = (column: 'low' | 'typical' | 'high'): number =>
    fromSquareMillimetres(below[column] + part * (above[column] - below[column]));
  return { low: between('low'), typical: between('typical'), high: between('high') };
}
