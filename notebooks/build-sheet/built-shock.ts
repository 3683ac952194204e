import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import { bubbleRise } from '../../lib/fill/air/bubble-rise.js';
import { typicalSurfaceTension } from '../../lib/fill/air/typical-oil.js';
import type { RiseSpeed } from '../../lib/fill/air/waiting-time.js';
import { type ClosedShock, type Closing, closeShock } from '../../lib/fill/chamber/closed-shock.js';
import { quietClosing } from '../../lib/fill/chamber/closing-position.js';
import { atTemperature } from '../../lib/fill/chamber/heat.js';
import type { FillCondition } from '../../lib/fill/chamber/pressure-inside.js';
import { oilDensity } from '../../lib/fluid/oil/density.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil, type Oil } from '../../lib/fluid/oil/oil.js';
import { damperOf } from '../../lib/parts/damper-of.js';
import { fillOf, type ShockFill } from '../../lib/parts/fill-of.js';
import type { Build, PistonPart } from '../../lib/parts/parts.js';

/** A build of the parts file, filled and closed on the bench. */
export interface BuiltShock {
  readonly build: Build;
  readonly oil: Oil;
  readonly fill: ShockFill;
  readonly closing: Closing;
  readonly shock: ClosedShock;
  /** Whether the closing position was chosen here, because the parts file leaves it open. */
  readonly closingChosen: boolean;
}

/** Ends of the working stroke, as parts of the stroke. */
export const workingStroke = { from: 0.1, to: 0.9 } as const;

/** Fills a build on the bench; without a closing position it is closed as quietly as it can be. */
export function builtShock(build: Build, temperature: number, freeAir: number): BuiltShock {
  const fill = fillOf(build);
  const { chamber, compensator } = fill;
  const ambientPressure = build.shock.gas.ambientPressure;
  const open = { temperature, ambientPressure, freeAir };
  const position = fill.closeAt ?? quietPosition(fill, open);
  const closing = { ...open, position };
  return {
    build,
    oil: createOil(build.oil.definition),
    fill,
    closing,
    shock: closeShock(chamber, compensator, closing),
    closingChosen: fill.closeAt === undefined,
  };
}

function quietPosition({ chamber, compensator }: ShockFill, open: Omit<Closing, 'position'>): number {
  // With nothing that makes room only full compression does not lock.
  if (compensator.kind === 'none' && open.freeAir === 0) return chamber.stroke;
  const { stroke } = chamber;
  const working = { from: workingStroke.from * stroke, to: workingStroke.to * stroke };
  return quietClosing(chamber, compensator, open, working).position;
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
  { build, oil }: BuiltShock,
  temperature: number,
  { bound, holes }: Deviation = { bound: 'typical', holes: 0 },
): DamperModel {
  const piston = withHoles(build.piston, holes);
  return damperModel(damperOf(build.shock, piston), fluidAt(oil, temperature, bound));
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
