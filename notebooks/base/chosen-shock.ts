import { InputError } from '../../lib/base/input-error.js';
import type { DamperModel } from '../../lib/damper/damper-model.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { buildFault } from '../../lib/parts/build-fit.js';
import type { Build, OilPart, Parts, PistonPart, ShockPart } from '../../lib/parts/index.js';
import type { ForceCurve } from './force-figure.js';
import { knownOil, knownShock } from './known.js';
import { requireRunsIn } from './piston-in-bore.js';
import { fastestReboundOf } from './shaft-speeds.js';

/** What a page lets a reader choose. */
export interface Choice {
  readonly shock: ShockPart;
  readonly piston: PistonPart;
  readonly oil: OilPart;
}

const bodiesLike = ({ builds }: Parts, shock: ShockPart): readonly Build[] =>
  builds.filter((build) => build.shock.name === shock.name);

/** The build of the file with a body and a piston, else the first with that body. */
export function buildLike(
  parts: Parts,
  { shock, piston }: Omit<Choice, 'oil' | 'piston'> & Partial<Choice>,
): Build | undefined {
  const bodies = bodiesLike(parts, shock);
  return bodies.find((build) => build.piston.name === piston?.name) ?? bodies[0];
}

/**
 * Chosen parts as a build: what the file says of a build with this body and this piston goes with them, its spring and how it was closed; else that of a build with
 * this body. Its quantity is that of all builds with this body.
 */
export function chosenBuild(parts: Parts, { shock, piston, oil }: Choice): Build {
  const bodies = bodiesLike(parts, shock);
  const { spring, corner, closeAt } = buildLike(parts, { shock, piston }) ?? {};
  return {
    name: `${piston.name} in ${shock.name}`,
    shock,
    piston,
    oil,
    quantity: Math.max(
      1,
      bodies.reduce((sum, { quantity }) => sum + quantity, 0),
    ),
    ...(spring && { spring }),
    ...(corner && { corner }),
    ...(closeAt === undefined ? {} : { closeAt }),
  };
}

/** Refuses parts that do not go together, in the words of the parts file. */
export function requireGoesTogether(build: Build): void {
  requireRunsIn(build.piston, build.shock);
  const fault = buildFault(build);
  if (fault === undefined) return;
  throw new InputError({
    field: fault.of,
    value: `${build.piston.name} in ${build.shock.name}`,
    accepted: `parts that go together: ${[...fault.path, fault.message].join(' ')}`,
  });
}

/** The damper of a build at an oil temperature; with the thinnest and the thickest oil that its label allows, where that is an interval. */
export function modelsOf(
  build: Build,
  temperature: number,
): { readonly model: DamperModel; readonly bounds?: readonly [DamperModel, DamperModel] } {
  const oil = knownOil(build.oil.definition);
  const { damper } = knownShock(build);
  const at = (bound: 'low' | 'typical' | 'high') => damperModel(damper, fluidAt(oil, temperature, bound));
  return oil.isInterval
    ? { model: at('typical'), bounds: [at('low'), at('high')] }
    : { model: at('typical') };
}

/** A build as a curve of a force figure. */
export function curveOf(name: string, build: Build, temperature: number): ForceCurve {
  const rebound = fastestReboundOf(build, temperature);
  return {
    name,
    ...modelsOf(build, temperature),
    ...(rebound === undefined ? {} : { fastestRebound: rebound }),
  };
}
