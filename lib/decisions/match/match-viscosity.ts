import { requirePositive } from '../../base/checks.js';
import { record, requireShape, type Shape } from '../../base/shape.js';
import type { Damper } from '../../damper/damper.js';
import { damperModel } from '../../damper/damper-model.js';
import { bracketedMinimum } from '../../numeric/minimum-finding.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import { boundMismatch } from './bound-mismatch.js';
import {
  type DampingMismatch,
  dampingMismatch,
  requireWantedDamping,
  type WantedDamping,
  wantedDampingShape,
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

/** Form of {@link MatchCase}. */
export const matchCaseShape: Shape = { damper: record, density: 'kg/m³', wanted: wantedDampingShape };

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

/** Place of the smallest value on an interval: a coarse scan, then a search around its best point. */
function smallestPlace(f: (x: number) => number, low: number, high: number): number {
  const steps = 40;
  const at = (step: number): number => low + ((high - low) * step) / steps;
  const scanned = Array.from({ length: steps + 1 }, (_, step) => f(at(step)));
  const best = scanned.indexOf(Math.min(...scanned));
  return bracketedMinimum(f, at(Math.max(best - 1, 0)), at(best), at(Math.min(best + 1, steps)), 1e-9);
}

/** The mismatch of {@link BoundMismatch} at the logarithm of a viscosity. */
function mismatchAt({ damper, density, wanted }: MatchCase): (logViscosity: number) => number {
  const mismatch = boundMismatch(damper, wanted, { kinematicViscosity: thickest, density });
  return (logViscosity) => mismatch(Math.exp(logViscosity), density);
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
  requireShape({ search }, { search: matchCaseShape });
  const { damper, density, wanted } = search;
  requirePositive(density, 'density', 'kg/m³');
  requireWantedDamping(wanted);
  const [low, high] = [Math.log(thinnest), Math.log(thickest)];
  const mismatch = mismatchAt(search);
  // The square is smooth where the mismatch itself comes down to 0 in a corner.
  const place = smallestPlace((x) => mismatch(x) ** 2, low, high);
  const kinematicViscosity = Math.exp(place);
  return {
    kinematicViscosity,
    mismatch: dampingMismatch(damperModel(damper, { kinematicViscosity, density }), wanted),
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
  requireShape({ search }, { search: matchCaseShape });
  requirePositive(tolerance, 'tolerance', '');
  const { kinematicViscosity: best, mismatch } = matchViscosity(search);
  if (mismatch.typical > tolerance) return undefined;
  const limit = Math.log1p(tolerance);
  const mismatchOf = mismatchAt(search);
  const excess = (x: number): number => mismatchOf(x) - limit;
  const middle = Math.log(best);
  const edge = (end: number): number => {
    if (excess(end) <= 0) return Math.exp(end);
    return excess(middle) === 0
      ? best
      : Math.exp(bracketedRoot(excess, middle, end, 'viscosity window').root);
  };
  return { low: edge(Math.log(thinnest)), best, high: edge(Math.log(thickest)) };
}
