import { InputError } from '../../lib/base/input-error.js';
import { fitShock, type ShockFit } from '../../lib/measure/fit/fit-shock.js';
import { FitError } from '../../lib/numeric/least-squares/fit-error.js';
import { formatQuantity } from '../../lib/units/index.js';
import { cSt } from '../base/decision-cases.js';
import type { MeasuredShockCase } from '../base/measured-shocks.js';

const normal95 = 1.959963984540054;

/** The oil that a shock behaves like through the holes as stated. */
export interface EquivalentOil {
  /** Kinematic viscosity at 25 °C [m²/s], and half of its 95 % interval. */
  readonly kinematicViscosity: number;
  readonly half: number;
  readonly fit: ShockFit;
}

/**
 * Fits the oil with no prior of its label, holes and gap taken as stated.
 *
 * @throws InputError where no reading tells the oil, as that of a hole alone
 */
export function equivalentOil({ name, problem }: MeasuredShockCase): EquivalentOil {
  const unknowns = problem.unknowns.flatMap((unknown) => {
    if (unknown.quantity === 'holeDiameter' || unknown.quantity === 'gap') return [];
    if (unknown.quantity !== 'kinematicViscosity') return [unknown];
    const { prior: _, ...open } = unknown;
    return [open];
  });
  const fit = fitOrRefuse(() => fitShock({ ...problem, unknowns }), name);
  const { kinematicViscosity } = fit.state;
  return { kinematicViscosity, half: normal95 * (fit.standardDeviations[0] ?? 0) * kinematicViscosity, fit };
}

function fitOrRefuse(fitted: () => ShockFit, name: string): ShockFit {
  try {
    return fitted();
  } catch (error) {
    if (!(error instanceof FitError && error.fault === 'rank-deficient')) throw error;
    throw new InputError({
      field: 'measurements',
      value: `none of ${name} that tells its oil`,
      accepted:
        'with one that does: a weight hung on the shaft and timed, a dyno file, a ball that sinks or a flow cup',
    });
  }
}

/** Larger by which the holes would be with the oil of the label [m]: what the readings say if the label is right. */
export function holesWithLabel({ problem, stated }: MeasuredShockCase): number {
  const unknowns = problem.unknowns.flatMap((unknown) => {
    if (unknown.quantity === 'kinematicViscosity') return [];
    if (unknown.quantity !== 'holeDiameter') return [unknown];
    const { prior: _, ...open } = unknown;
    return [open];
  });
  const fit = fitShock({ ...problem, unknowns, known: { ...problem.known, kinematicViscosity: stated } });
  return fit.state.holeDiameter - problem.known.holeDiameter;
}

/** Whether label and readings go together, and what cannot be told apart. */
export function labelSentence(
  measured: MeasuredShockCase,
  { kinematicViscosity, half }: EquivalentOil,
): string {
  const { label, stated } = measured;
  const apart = Math.max(label[0] - kinematicViscosity - half, kinematicViscosity - half - label[1]);
  if (apart <= 0) return `The label says ${cSt(stated)}. Both fit: no reason to doubt the label.`;
  const holes = holesWithLabel(measured);
  const size = formatQuantity(Math.abs(holes), 'length', 'mm', 1);
  const which = measured.problem.readings.some(({ kind }) => kind === 'hole')
    ? 'The page "What is wrong with it" weighs both, with what you read of the holes.'
    : 'These readings cannot tell which; a pin gauge can.';
  return `The label says ${cSt(stated)}, which lies outside the range: another oil, or holes ${size} ${holes > 0 ? 'larger' : 'smaller'} than stated. ${which}`;
}
