import { requireKind, requireRecord } from '../../base/checks.js';
import type { Warning } from '../../base/warning.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import type { Hole } from '../geometry/hole.js';
import type { BoundHole } from './bound-hole.js';

/**
 * One hole with one fluid: pressure drop and mean speed as functions of each other, both odd.
 *
 * @public
 */
export interface HoleResistance {
  /** Pressure drop [Pa] at a mean speed [m/s]. */
  readonly pressureDrop: (meanSpeed: number) => number;
  /** Slope of the pressure drop [Pa·s/m] at a mean speed [m/s], above 0. */
  readonly slope: (meanSpeed: number) => number;
  /** Mean speed [m/s] at a pressure drop [Pa]. */
  readonly meanSpeed: (pressureDrop: number) => number;
  /** Writes pressure drop and slope at a mean speed [m/s] into the first two places, where that is cheaper than asking for each. */
  readonly evaluate?: (meanSpeed: number, out: Float64Array) => void;
  /** The same as plain numbers, where the law is by viscosity and inertia alone: what is solved fastest. */
  readonly bound?: BoundBothWays;
  /** Slope in the creeping limit [Pa·s/m]: the pressure drop that viscosity alone would cause, per speed. */
  readonly creepingSlope: number;
}

/**
 * A hole bound to a fluid, for either direction of flow.
 *
 * @public
 */
export interface BoundBothWays {
  readonly towardsShaft: BoundHole;
  readonly towardsBlind: BoundHole;
}

/** Writes pressure drop [Pa] and slope [Pa·s/m] at a mean speed [m/s] into the first two places. */
export function evaluateHole(resistance: HoleResistance, meanSpeed: number, out: Float64Array): void {
  if (resistance.evaluate === undefined) {
    out[0] = resistance.pressureDrop(meanSpeed);
    out[1] = resistance.slope(meanSpeed);
  } else resistance.evaluate(meanSpeed, out);
}

/**
 * A law for the pressure drop of a hole.
 *
 * @public
 */
export interface HoleLaw {
  /** Name for programs and legends. */
  readonly name: string;
  /** The law bound to a hole and a fluid. Inputs are not checked here. */
  readonly resistance: (hole: Hole, fluid: FluidState) => HoleResistance;
  /** Says where a length ratio `L/d` or a Reynolds number is outside the law's range. */
  readonly rangeWarnings: (lengthRatio: number, reynoldsNumber: number) => readonly Warning[];
}

/** Throws unless it is a law. */
export function requireLaw(law: HoleLaw): void {
  requireRecord(law, 'law');
  requireKind(law.resistance, 'function', 'law.resistance');
}
