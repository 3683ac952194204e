import { InputError } from '../../base/input-error.js';
import { madeWith, oneOf, requireShape } from '../../base/shape.js';
import { leastSquares } from '../../numeric/least-squares/least-squares.js';
import { chiSquareQuantile } from '../../numeric/quantiles.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import { bindProblem } from '../fit/fit-problem.js';
import type { ShockFit } from '../fit/fit-shock.js';
import type { Quantity } from '../model/shock-state.js';

/** Farther than this many standard deviations no end is looked for. */
const farthest = 20;

/**
 * Ends of a quantity's interval by the profile likelihood: where the cost, least over all other unknowns, has risen by the quantile of chi-square. It
 * follows bends that a linear interval misses.
 *
 * @param fit - from `fitShock`, with plain squares
 * @param quantity - one of its unknowns
 * @param share - of the interval, above 0 and below 1
 * @returns ends of the parameter, on the scale of the unknown; the least value where the cost does not rise before it, infinite where it
 * never rises
 * @throws InputError for a quantity that is not unknown
 * @see Venzon & Moolgavkar, Appl. Statist. 37 (1988) 87
 * @public
 */
export function profileInterval(fit: ShockFit, quantity: Quantity, share = 0.95): readonly [number, number] {
  requireShape(
    { fit, quantity, share },
    {
      fit: madeWith('problem'),
      quantity: oneOf(
        'kinematicViscosity',
        'temperatureSlope',
        'density',
        'holeDiameter',
        'gap',
        'friction',
        'gasPressure',
        'handDelay',
        'thermometerError',
        'scaleZero',
        'sensorZero',
        'sensorDrift',
      ),
      share: '',
    },
  );
  const { problem, parameters, standardDeviations } = fit;
  const index = problem.unknowns.findIndex((unknown) => unknown.quantity === quantity);
  if (index < 0) {
    const accepted = `one of ${problem.unknowns.map((unknown) => unknown.quantity).join(', ')}`;
    throw new InputError({ field: 'quantity', value: quantity, accepted });
  }
  const bound = bindProblem(problem);
  const others = parameters.map((_, other) => other).filter((other) => other !== index);
  const [best, deviation] = [parameters[index]!, standardDeviations[index]!];
  const rise = chiSquareQuantile(share, 1);
  const excess = (value: number): number => {
    const full = (free: readonly number[]): readonly number[] => {
      const all = [...parameters];
      all[index] = value;
      others.forEach((other, place) => {
        all[other] = free[place]!;
      });
      return all;
    };
    const pick = <T>(values: readonly T[]): readonly T[] =>
      others.flatMap((other) => values.slice(other, other + 1));
    if (others.length === 0) {
      const residuals = bound.residuals(full([]));
      return residuals.reduce((sum, residual) => sum + residual * residual, 0) - fit.cost - rise;
    }
    const inner = leastSquares({
      residuals: (free) => bound.residuals(full(free)),
      start: pick(parameters),
      sizes: pick(bound.sizes),
      least: pick(bound.least),
    });
    return inner.cost - fit.cost - rise;
  };
  const end = (sign: number): number => {
    const least = bound.least[index]!;
    let inner = best;
    for (let step = 1; step <= farthest; step *= 1.5) {
      const outer = Math.max(best + sign * step * deviation, least);
      if (excess(outer) > 0) {
        return bracketedRoot(excess, Math.min(inner, outer), Math.max(inner, outer), `end of ${quantity}`)
          .root;
      }
      if (outer === least) return least;
      inner = outer;
    }
    return sign * Number.POSITIVE_INFINITY;
  };
  return [end(-1), end(1)];
}
