import { requirePositive } from '../base/checks.js';
import { bracketedRoot } from '../base/root-finding.js';
import type { Damper } from '../damper/damper.js';
import { damperModel } from '../damper/damper-model.js';
import {
  type DampingMismatch,
  dampingMismatch,
  logMismatch,
  requireWantedDamping,
  type WantedDamping,
} from './damping-mismatch.js';

/** Thinnest and thickest oil looked at [m²/s]: thinner than water, thicker than any damper oil. */
const thinnest = 0.3e-6;
const thickest = 0.1;

/**
 * A damper that is to be filled so that it damps as wanted.
 *
 * @public
 */
export interface MatchCase {
  readonly damper: Damper;
  /** Density of the oil to be found [kg/m³], above 0; it matters little. */
  readonly density: number;
  readonly wanted: WantedDamping;
}

/**
 * The viscosity that comes nearest to the wanted damping.
 *
 * @public
 */
export interface ViscosityMatch {
  /** [m²/s] at the temperature of use. */
  readonly kinematicViscosity: number;
  /** What no viscosity can mend: another piston bends the curve differently. */
  readonly mismatch: DampingMismatch;
  /** True where the search ended at its thinnest or thickest oil: no oil damps as wanted. */
  readonly atLimit: boolean;
}

function modelOf({ damper, density }: MatchCase, kinematicViscosity: number) {
  return damperModel(damper, { kinematicViscosity, density });
}

/** Place of the smallest value on an interval: a coarse scan, then golden sections around its best point (Kiefer 1953). */
function smallestPlace(f: (x: number) => number, low: number, high: number): number {
  const steps = 40;
  const scanned = Array.from({ length: steps + 1 }, (_, index) => f(low + ((high - low) * index) / steps));
  const best = scanned.indexOf(Math.min(...scanned));
  let a = low + ((high - low) * Math.max(best - 1, 0)) / steps;
  let b = low + ((high - low) * Math.min(best + 1, steps)) / steps;
  const golden = (Math.sqrt(5) - 1) / 2;
  let [left, right] = [b - golden * (b - a), a + golden * (b - a)];
  let [atLeft, atRight] = [f(left), f(right)];
  while (b - a > 1e-9) {
    if (atLeft < atRight) {
      b = right;
      [right, atRight] = [left, atLeft];
      left = b - golden * (b - a);
      atLeft = f(left);
    } else {
      a = left;
      [left, atLeft] = [right, atRight];
      right = a + golden * (b - a);
      atRight = f(right);
    }
  }
  return (a + b) / 2;
}

/**
 * The viscosity with the smallest weighted mismatch (least squares in the logarithm of the force, so that 10 % too hard weighs
 * as much as 10 % too soft).
 *
 * @param search - the damper, the density of the oil, and the wanted damping
 * @throws InputError for a damper, density or wanted damping outside its range
 * @public
 */
export function matchViscosity(search: MatchCase): ViscosityMatch {
  requirePositive(search.density, 'density', 'kg/m³');
  requireWantedDamping(search.wanted);
  const [low, high] = [Math.log(thinnest), Math.log(thickest)];
  const place = smallestPlace(
    (x) => logMismatch(modelOf(search, Math.exp(x)), search.wanted).rootMeanSquare ** 2,
    low,
    high,
  );
  const kinematicViscosity = Math.exp(place);
  return {
    kinematicViscosity,
    mismatch: dampingMismatch(modelOf(search, kinematicViscosity), search.wanted),
    atLimit: place - low < 1e-6 || high - place < 1e-6,
  };
}

/**
 * The viscosities with a typical mismatch within a tolerance.
 *
 * @public
 */
export interface ViscosityWindow {
  /** Thinnest that is still good [m²/s]. */
  readonly low: number;
  /** Nearest to the wanted damping [m²/s]. */
  readonly best: number;
  /** Thickest that is still good [m²/s]. */
  readonly high: number;
}

/**
 * All viscosities that bring the damping within a tolerance of what is wanted.
 *
 * @param search - the damper, the density of the oil, and the wanted damping
 * @param tolerance - largest typical mismatch, above 0; 0.1 stands for 10 %
 * @returns the window, or `undefined` where even the best viscosity misses the tolerance
 * @throws InputError for an input outside its range
 * @public
 */
export function viscosityWindow(search: MatchCase, tolerance: number): ViscosityWindow | undefined {
  requirePositive(tolerance, 'tolerance', '');
  const { kinematicViscosity: best, mismatch } = matchViscosity(search);
  if (mismatch.typical > tolerance) return undefined;
  const limit = Math.log1p(tolerance);
  const excess = (x: number): number =>
    logMismatch(modelOf(search, Math.exp(x)), search.wanted).rootMeanSquare - limit;
  const middle = Math.log(best);
  const edge = (end: number): number => {
    if (excess(end) <= 0) return Math.exp(end);
    return excess(middle) === 0
      ? best
      : Math.exp(bracketedRoot(excess, middle, end, 'viscosity window').root);
  };
  return { low: edge(Math.log(thinnest)), best, high: edge(Math.log(thickest)) };
}
