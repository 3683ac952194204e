import { InputError } from '../../lib/base/input-error.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import { bubbleRise } from '../../lib/fill/air/bubble-rise.js';
import { typicalSurfaceTension } from '../../lib/fill/air/typical-oil.js';
import type { RiseSpeed } from '../../lib/fill/air/waiting-time.js';
import { type ClosedShock, type Closing, closeShock } from '../../lib/fill/chamber/closed-shock.js';
import { atTemperature } from '../../lib/fill/chamber/heat.js';
import type { FillCondition } from '../../lib/fill/chamber/pressure-inside.js';
import { oilDensity } from '../../lib/fluid/oil/density.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import type { Oil } from '../../lib/fluid/oil/oil.js';
import { type AssembledShock, assembleShock } from '../../lib/parts/assembly/assembled-shock.js';
import type { FillChoices } from '../../lib/parts/assembly/closing-of.js';
import { ShockFault } from '../../lib/parts/assembly/shock-fault.js';
import type { Build, PistonPart } from '../../lib/parts/parts.js';
import { millilitres } from '../base/bench-wording.js';
import { knownOil } from '../base/known.js';

/** A build of the parts file, filled and closed on the bench. */
export interface BuiltShock {
  readonly build: Build;
  readonly oil: Oil;
  readonly assembled: AssembledShock;
  readonly closing: Closing;
  readonly shock: ClosedShock;
}

/** Ends of the working stroke, as parts of the stroke. */
export const workingStroke = { from: 0.1, to: 0.9 } as const;

/** Fills a build on the bench, with bubbles [m³] and closed at a place [m] where a page says so. */
export function builtShock(
  build: Build,
  temperature: number,
  choices: Pick<FillChoices, 'freeAir' | 'closeAt'> = {},
): BuiltShock {
  const assembled = filled(build, { ...choices, temperature });
  const shock = assembled.closed;
  return { build, oil: knownOil(build.oil.definition), assembled, closing: shock.closing, shock };
}

function filled(build: Build, choices: FillChoices): AssembledShock {
  try {
    return assembleShock(build, choices);
  } catch (error) {
    if (!(error instanceof ShockFault) || choices.freeAir === undefined) throw error;
    throw new InputError({
      field: 'freeAir',
      value: millilitres(choices.freeAir),
      accepted: `what goes with the parts file, whose ${error.path.join(' ')} of ${build.shock.name} ${error.sentence}`,
    });
  }
}

/** The same shock with oil in the place of some of its bubbles [m³]; what makes room stays as it is. */
export function withFreeAir(built: BuiltShock, freeAir: number): BuiltShock {
  const { chamber, compensator } = built.shock;
  const shock = closeShock(chamber, compensator, { ...built.closing, freeAir });
  const { damper } = built.assembled;
  const assembled = { ...built.assembled, closed: shock, damper: { ...damper, gas: shock.gas } };
  return { ...built, assembled, shock, closing: shock.closing };
}

/** Density of the oil of a build at a temperature. */
export const densityOf =
  ({ base, densityAt15Celsius }: Oil) =>
  (temperature: number): number =>
    oilDensity(base, temperature, densityAt15Celsius);

/** The closed shock at another temperature. */
export function warmedTo({ shock, oil }: BuiltShock, temperature: number): FillCondition {
  return atTemperature(shock, temperature, densityOf(oil));
}

/** How a build may differ from its parts file. */
export interface Deviation {
  readonly bound: 'low' | 'typical' | 'high';
  /** Added to the diameter of every hole [m]. */
  readonly holes: number;
}

/** The damper of a build at an oil temperature. */
export function damperAt(
  { build, oil, assembled }: BuiltShock,
  temperature: number,
  { bound, holes }: Deviation = { bound: 'typical', holes: 0 },
): DamperModel {
  const { piston } = withHoles(build.piston, holes);
  return damperModel({ ...assembled.damper, piston }, fluidAt(oil, temperature, bound));
}

function withHoles(part: PistonPart, larger: number): PistonPart {
  const holes = part.piston.holes.map((group) => ({ ...group, diameter: group.diameter + larger }));
  return { ...part, piston: { ...part.piston, holes } };
}

/** Rise speed in the oil of a build, of bubbles that dirt holds: the slower, safer case. */
export function riseSpeedIn({ build, oil }: BuiltShock, temperature: number): RiseSpeed {
  const fluid = fluidAt(oil, temperature);
  const surroundings = { bore: build.shock.bore, surfaceTension: typicalSurfaceTension[oil.base] };
  return (radius) => bubbleRise({ radius, surface: 'rigid' }, fluid, surroundings).speed;
}
