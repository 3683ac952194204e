import { refuse, requireFinite, requireNotNegative } from '../../base/checks.js';
import { madeWith, requireShape } from '../../base/shape.js';
import { chiSquareTail } from '../../numeric/quantiles.js';
import type { ShockFit } from '../fit/fit-shock.js';
import { runsProbability } from '../statistics/runs-test.js';

/** Below this chance the readings do not go with the model or with their uncertainties. */
const unlikely = 0.01;

/**
 * Whether a fit goes with its readings.
 *
 * @public
 */
export interface FitQuality {
  /** Chance that readings scatter as much as these or more. */
  readonly scatterChance: number;
  /** Root of cost over degrees of freedom; 1 where the uncertainties are right. */
  readonly birgeRatio: number;
  /** Chance of as few changes of sign of the residuals, in order of speed, or fewer; `undefined` below 10 readings of speed. */
  readonly runsChance: number | undefined;
  /** `scattered`: more than the uncertainties allow, below 1 in 100; `quiet`: less, so that they are too large. */
  readonly verdict: 'plausible' | 'scattered' | 'quiet';
}

/** Fewest residuals for which the order of signs says anything. */
const fewestRuns = 10;

/** Signs of the residuals of readings that went through a speed, slowest first. */
function signsBySpeed({ problem, residuals }: ShockFit): readonly number[] {
  return residuals
    .flatMap(({ reading, repeat, standardised }) => {
      const of = problem.readings[reading];
      if (of?.kind === 'force') return [{ speed: of.speed, standardised }];
      if (of?.kind === 'drop') {
        return [{ speed: Math.abs(of.to - of.from) / of.times[repeat]!, standardised }];
      }
      return [];
    })
    .sort((first, second) => first.speed - second.speed)
    .map(({ standardised }) => Math.sign(standardised))
    .filter((sign) => sign !== 0);
}

/**
 * Whether a fit goes with its readings: chi-square both ways, and the order of the residuals' signs.
 *
 * @param fit - from `fitShock`
 * @see Bevington & Robinson, Data Reduction, ch. 4 and 11; runs: Swed & Eisenhart, Ann. Math. Statist. 14 (1943) 66 (from memory)
 * @public
 */
export function fitQuality(fit: ShockFit): FitQuality {
  requireShape({ fit }, { fit: madeWith('problem') });
  const { cost, degreesOfFreedom } = fit;
  const scatterChance = degreesOfFreedom > 0 ? chiSquareTail(cost, degreesOfFreedom) : 1;
  const birgeRatio = degreesOfFreedom > 0 ? Math.sqrt(cost / degreesOfFreedom) : 1;
  const signs = signsBySpeed(fit);
  const runsChance = signs.length < fewestRuns ? undefined : runsProbability(signs);
  const quiet = degreesOfFreedom > 0 && scatterChance > 1 - unlikely;
  const verdict = scatterChance < unlikely ? 'scattered' : quiet ? 'quiet' : 'plausible';
  return { scatterChance, birgeRatio, runsChance, verdict };
}

/**
 * Factor on all standard deviations of a fit whose readings scatter more than their uncertainties allow; 1 otherwise, since luck must not narrow
 * them.
 *
 * @see Birge, Phys. Rev. 40 (1932) 207
 */
export function wideningOf(fit: ShockFit): number {
  const { verdict, birgeRatio } = fitQuality(fit);
  return verdict === 'scattered' ? birgeRatio : 1;
}

/**
 * Akaike's criterion for few readings, from chi-square with known uncertainties: the model with the lower one explains the readings better.
 *
 * @param chiSquare - of the fit
 * @param unknowns - fitted, 0 or more
 * @param readings - more than unknowns + 1
 * @throws InputError for a value outside its range
 * @see Hurvich & Tsai, Biometrika 76 (1989) 297
 * @public
 */
export function correctedAkaike(chiSquare: number, unknowns: number, readings: number): number {
  requireFinite(chiSquare, 'chiSquare', '');
  requireNotNegative(unknowns, 'unknowns', '');
  requireFinite(readings, 'readings', '');
  if (readings <= unknowns + 1) refuse(readings, 'readings', '', `more than ${unknowns} unknowns and one`);
  return chiSquare + 2 * unknowns + (2 * unknowns * (unknowns + 1)) / (readings - unknowns - 1);
}
