import type { Warning } from '../../base/warning.js';
import type { MovingShock, Passage } from './moving-shock.js';

/** What happened to a shock in a run. */
export interface ShockExtremes {
  /** Largest pressure drop over the piston [Pa], without sign. */
  readonly largestDrop: number;
  /** Largest cavity [m³]. */
  readonly largestCavity: number;
  /** Largest absolute pressure of the gas [Pa]. */
  readonly largestGasPressure: number;
  /** Angular frequency of the stroke [1/s], where it has one. */
  readonly omega?: number;
  /** Largest acceleration of the shaft [m/s²], where the stroke has no frequency. */
  readonly largestAcceleration?: number;
}

const reynoldsLimit = 800;
const inertiaLimit = 0.05;
const gasLeftLimit = 0.2;

/** Warnings of one run, in a fixed order. */
export function shockWarnings(shock: MovingShock, extremes: ShockExtremes): readonly Warning[] {
  const warnings: Warning[] = [];
  const { largestDrop, largestCavity } = extremes;
  const reynolds = shock.holeReynoldsNumber(largestDrop);
  if (reynolds > reynoldsLimit) {
    warnings.push({
      code: 'hole-reynolds-number-high',
      message: 'the flow in a hole goes beyond the range of its law, which was checked up to Re 800',
      value: reynolds,
      limit: reynoldsLimit,
    });
  }
  const inertia = inertiaShare(shock, extremes);
  if (inertia > inertiaLimit) {
    warnings.push({
      code: 'hole-inertia-left-out',
      message:
        'speeding up the oil in the holes takes more than a twentieth of the pressure drop; it is left out',
      value: inertia,
      limit: inertiaLimit,
    });
  }
  if (largestCavity > 0) {
    warnings.push({
      code: 'cavitation',
      message:
        'a cavity opens behind the piston; what follows depends on the air in it, and the shock of the closing cavity is left out',
      value: largestCavity,
      limit: 0,
    });
  }
  const left = gasLeftShare(shock, extremes.largestGasPressure);
  if (left < gasLeftLimit) {
    warnings.push({
      code: 'gas-nearly-full',
      message: 'shaft and cavity leave less than a fifth of the gas room',
      value: left,
      limit: gasLeftLimit,
    });
  }
  return warnings;
}

/** Pressure that speeds up the oil in the holes, over the pressure drop. */
function inertiaShare(
  shock: MovingShock,
  { largestDrop, omega, largestAcceleration }: ShockExtremes,
): number {
  if (largestDrop === 0) return 0;
  if (omega === undefined) {
    const area = shock.pistonArea - shock.shaftArea;
    return (shock.inertance * area * (largestAcceleration ?? 0)) / largestDrop;
  }
  const passage: Passage = { flow: 0, recoil: 0 };
  const creeping = 1;
  shock.passage(creeping, passage);
  return (omega * shock.inertance * passage.flow) / creeping;
}

/** Part of the gas room left at a pressure, 1 where mixed. */
function gasLeftShare({ gas, layout }: MovingShock, pressure: number): number {
  if (layout === 'mixed') return 1;
  // Rising: bisection finds how much was given up. A rough answer is enough for a warning.
  let low = 0;
  let high = gas.capacity;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (gas.pressure(middle) < pressure) low = middle;
    else high = middle;
  }
  return 1 - low / gas.capacity;
}
