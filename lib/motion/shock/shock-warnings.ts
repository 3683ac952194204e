import type { Warning } from '../../base/warning.js';
import { largestSteadyNumber } from '../../flow/hole/apparent-mass.js';
import type { MovingShock } from './moving-shock.js';
import type { LeftOutInertia } from './oil-inertia.js';

/** What happened to a shock in a run. */
export interface ShockExtremes {
  /** Largest pressure drop over the piston [Pa], without sign. */
  readonly largestDrop: number;
  /** Largest cavity [m³]. */
  readonly largestCavity: number;
  /** Largest absolute pressure of the gas [Pa]. */
  readonly largestGasPressure: number;
  readonly inertia: LeftOutInertia;
}

const reynoldsLimit = 800;
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
  const { inertia } = extremes;
  if (inertia.frequencyNumber > largestSteadyNumber) {
    warnings.push({
      code: 'hole-inertia-left-out',
      message: inertiaMessage(inertia),
      value: inertia.frequencyNumber,
      limit: largestSteadyNumber,
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

/** With both errors, so that a reader sees what the mass would mend. */
function inertiaMessage(inertia: LeftOutInertia): string {
  const percent = (part: number) => `${Number((100 * part).toPrecision(2))} %`;
  const rounded = (value: number) => Number(value.toPrecision(2));
  const [hertz, newtons] = [rounded(inertia.frequency), rounded(inertia.largestForce)];
  return (
    `the shaft swings as fast as at ${hertz} Hz, where the oil in the holes lags (ω d²/ν ${rounded(inertia.frequencyNumber)}): the laws of steady flow are off by up to ` +
    `${percent(inertia.steadyLaw)} of the swing of the pressure; the ${newtons} N at most that speed up this oil are left out, and would leave ${percent(inertia.withApparentMass)}`
  );
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
