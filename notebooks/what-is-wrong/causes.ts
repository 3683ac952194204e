import { fitShock, type ShockFit } from '../../lib/measure/fit/fit-shock.js';
import type { Unknown } from '../../lib/measure/fit/unknown.js';
import type { Quantity } from '../../lib/measure/model/shock-state.js';
import { FitError } from '../../lib/numeric/least-squares/fit-error.js';
import { formatQuantity } from '../../lib/units/index.js';
import { cSt } from '../base/decision-cases.js';
import type { MeasuredShockCase } from '../base/measured-shocks.js';

/** Something that may have come out otherwise than planned. */
export interface Cause {
  readonly name: string;
  readonly fit: ShockFit;
  /** What it would have to be. */
  readonly size: string;
  /** How likely it is among the causes asked, all as likely before the readings. */
  readonly chance: number;
}

/** One quantity that is let go further than stated. */
interface Suspect {
  readonly name: (value: number, stated: number) => string;
  readonly quantity: Quantity;
  /** How far it may go, on the scale of its unknown, as a standard deviation. */
  readonly width: number;
  readonly text: (value: number, stated: number) => string;
}

/** Squares that a cause must take off the plan's to be named: one standard uncertainty. */
const worthNaming = 1;

const offBy = (value: number, stated: number): string =>
  `${formatQuantity(Math.abs(value - stated), 'length', 'mm', 2)} ${value > stated ? 'larger' : 'smaller'}`;

const suspects: readonly Suspect[] = [
  {
    name: () => 'another oil',
    quantity: 'kinematicViscosity',
    width: 0.5,
    text: (value) => `oil of ${cSt(value)}`,
  },
  {
    name: (value, stated) => (value > stated ? 'a larger drill' : 'a smaller drill or a burr'),
    quantity: 'holeDiameter',
    width: 0.15,
    text: (value, stated) => `holes ${offBy(value, stated)}`,
  },
  {
    name: (value, stated) =>
      value > stated ? 'a piston that leaks past its rim' : 'a piston that runs tight',
    quantity: 'gap',
    width: 1,
    text: (value, stated) => `a gap ${offBy(value, stated)} on each side`,
  },
  {
    name: (value, stated) => (value > stated ? 'a tight seal' : 'a loose seal'),
    quantity: 'friction',
    width: 0.5,
    text: (value) => `friction of ${formatQuantity(value, 'force', 'N', 2)}`,
  },
  {
    name: (value) => (value > 0 ? 'oil warmer than the thermometer' : 'oil colder than the thermometer'),
    quantity: 'thermometerError',
    width: 8,
    text: (value) => `oil ${Math.abs(value).toFixed(1)} K ${value > 0 ? 'warmer' : 'colder'}`,
  },
];

/** The problem with one prior made wider about the same mean. */
export function loosened(
  { problem }: MeasuredShockCase,
  { quantity, width }: Pick<Suspect, 'quantity' | 'width'>,
) {
  const unknowns = problem.unknowns.map((unknown): Unknown => {
    if (unknown.quantity !== quantity || unknown.prior === undefined) return unknown;
    return { ...unknown, prior: { ...unknown.prior, standardDeviation: width } };
  });
  return { ...problem, unknowns };
}

/** Twice the logarithm by which a fit narrows the widths of its priors: the other half of what a wide prior costs. */
function narrowing({ problem, standardDeviations }: ShockFit, quantity: Quantity): number {
  const index = problem.unknowns.findIndex((unknown) => unknown.quantity === quantity);
  const prior = problem.unknowns[index]?.prior;
  return prior === undefined ? 0 : 2 * Math.log(prior.standardDeviation / (standardDeviations[index] ?? 1));
}

/** The causes that explain the readings better than the plan does, ranked with it, the likeliest first. */
export function rankedCauses(measured: MeasuredShockCase): readonly Cause[] {
  const { problem } = measured;
  const planned = fitShock(problem);
  const scored = suspects.flatMap((suspect) => {
    const original = problem.unknowns.find(({ quantity }) => quantity === suspect.quantity);
    if (original?.prior === undefined || original.prior.standardDeviation >= suspect.width) return [];
    try {
      const fit = fitShock(loosened(measured, suspect));
      // What explains nothing better than the plan is no cause, however far it may go.
      if (planned.cost - fit.cost < worthNaming) return [];
      const value = fit.state[suspect.quantity];
      const stated = problem.known[suspect.quantity];
      const name = suspect.name(value, stated);
      const size = suspect.text(value, stated);
      const score = fit.cost + narrowing(fit, suspect.quantity) - narrowing(planned, suspect.quantity);
      return [{ name, fit, size, score }];
    } catch (error) {
      // A cause that the readings leave without a place explains nothing.
      if (error instanceof FitError) return [];
      throw error;
    }
  });
  const all = [
    { name: 'as planned', fit: planned, size: 'all sizes within what was stated', score: planned.cost },
    ...scored,
  ];
  const least = Math.min(...all.map(({ score }) => score));
  const sum = all.reduce((total, { score }) => total + Math.exp((least - score) / 2), 0);
  return all
    .map(({ score, ...cause }) => ({ ...cause, chance: Math.exp((least - score) / 2) / sum }))
    .sort((first, second) => second.chance - first.chance);
}
