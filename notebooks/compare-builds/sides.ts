import { InputError } from '../../lib/base/input-error.js';
import type { DamperModel } from '../../lib/damper/damper-model.js';
import { once } from '../../lib/page/blocks/later.js';
import { guessedBenchTemperature } from '../../lib/parts/assembly/closing-habit.js';
import { buildFault } from '../../lib/parts/build-fit.js';
import type { Build, Parts } from '../../lib/parts/parts.js';
import { dampingSpan } from '../base/after-onset.js';
import { benchOil } from '../base/bench.js';
import { modelsOf } from '../base/chosen-shock.js';
import { type Landed, landedAtEnds, landedOrLocked } from '../base/landed.js';
import { pointAt } from '../base/oil-forces.js';
import { oilPoured } from '../base/oil-poured.js';
import { type Riding, ridingOf } from '../base/riding.js';
import { type Span, spanOf } from '../base/span.js';
import { type BuiltShock, builtShock } from '../build-sheet/built-shock.js';
import { type EndStates, endStates } from '../fill-and-bleed/habits.js';

/** What both builds are looked at with. */
export interface Conditions {
  readonly temperature: number;
  readonly coldest: number;
  readonly hottest: number;
  readonly bench: number;
  readonly slow: number;
  readonly middle: number;
  readonly fast: number;
  readonly sag: number;
  readonly drop: number;
}

/** One of the two builds with all that is compared. */
export interface Side {
  readonly build: Build;
  readonly built: BuiltShock;
  readonly model: DamperModel;
  readonly bounds: readonly DamperModel[];
  /** Asked for by a table only, as what is cold and hot. */
  readonly states: () => EndStates;
  /** Where the shaft is wanted at rest [m]. */
  readonly place: number;
  /** Not given where no spring is named or the gas has no room there. */
  readonly riding?: Riding;
  /** Not given where no spring is named or the shaft locks on the way. */
  readonly landed?: { readonly own: Landed; readonly ends: readonly Landed[] };
  /** Rebound damping at the middle speed, cold and hot [N]. */
  readonly cold: () => Span;
  readonly hot: () => Span;
  /** Oil poured for a fill of all its shocks [m³], and what it costs. */
  readonly poured: number;
  readonly cost?: { readonly amount: number; readonly currency: string };
}

/** The two builds of a page: the first two that are chosen, or one and the same on the next oil of the file, then with the next piston that fits. */
export function twoBuilds(parts: Parts, chosen: readonly Build[]): readonly [Build, Build] {
  const [first, second] = chosen;
  if (first === undefined) throw new InputError({ field: 'builds', value: 'none', accepted: 'one or more' });
  if (second !== undefined) return [first, second];
  const others = [
    ...parts.oils
      .filter(({ name }) => name !== first.oil.name)
      .map((oil) => ({ ...first, oil, name: `${first.name} on ${oil.name}` })),
    ...parts.pistons
      .filter(({ name }) => name !== first.piston.name)
      .map((piston) => ({ ...first, piston, name: `${first.name} with ${piston.name}` })),
  ];
  const other = others.find((build) => buildFault(build) === undefined);
  if (other !== undefined) return [first, other];
  throw new InputError({
    field: 'builds',
    value: first.name,
    accepted: 'two builds of the parts file, or a second oil for the one it has',
  });
}

/** Damping of a stroke in its own direction [N, positive]; with the oils that a label leaves open. */
export function dampingAt({ model, bounds }: Pick<Side, 'model' | 'bounds'>, speed: number): Span {
  return spanOf([model, ...bounds].map((one) => Math.abs(dampingSpan(one, speed).damping)));
}

/** Rebound damping of a build at a temperature [N, positive]. */
function heldBack(build: Build, temperature: number, speed: number): Span {
  const { model, bounds = [] } = modelsOf(build, temperature);
  return dampingAt({ model, bounds }, -speed);
}

/** A build closed as warm as on every other page, or as the bench where the reader has moved it: one gas for all that the page says of it. */
function closedAt(build: Build, bench: number, moved: boolean): Build {
  if (!moved) return build;
  return { ...build, shock: { ...build.shock, closing: { ...build.shock.closing, temperature: bench } } };
}

/** Whether the bench stands elsewhere than where it begins with this file. */
export function benchMoved(parts: Parts, bench: number): boolean {
  const begins = benchOil.inFile?.(parts) ?? guessedBenchTemperature;
  return Math.abs(bench - begins) > 1e-6;
}

export function sideOf(chosen: Build, at: Conditions, moved: boolean): Side {
  const { temperature, bench, middle, sag, drop } = at;
  const build = closedAt(chosen, bench, moved);
  const { spring, shock, oil, quantity } = build;
  const built = builtShock(build, shock.closing?.temperature ?? guessedBenchTemperature);
  const { model, bounds = [] } = modelsOf(build, temperature);
  const place = sag * shock.stroke;
  const riding = spring === undefined ? undefined : ridingOf(built, spring, temperature, place);
  const own = spring === undefined ? undefined : landedOrLocked(build, temperature, drop);
  const poured = oilPoured(build) * quantity;
  const price = oil.bottle?.price;
  return {
    build,
    built,
    model,
    bounds,
    states: once(() => endStates(built, built.closing.temperature)),
    place,
    ...(riding && { riding }),
    ...(own && { landed: { own, ends: landedAtEnds(build, temperature, drop) } }),
    cold: once(() => heldBack(build, at.coldest, middle)),
    hot: once(() => heldBack(build, at.hottest, middle)),
    poured,
    ...(price &&
      oil.bottle && {
        cost: { amount: (price.amount * poured) / oil.bottle.volume, currency: price.currency },
      }),
  };
}

/** Damping per speed in rebound as the corner sees it [N·s/m]. */
export function coefficientAt({ model }: Side, speed: number): number {
  return pointAt(model, -speed).dampingCoefficient;
}
