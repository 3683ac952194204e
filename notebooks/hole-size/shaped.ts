import type { DamperModel } from '../../lib/damper/damper-model.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import type { HoleShape } from '../../lib/flow/geometry/hole-shape.js';
import type { HoleGroup } from '../../lib/flow/geometry/piston.js';

/** How deep the chamfer of the page is, and how much wider a tapered hole gets [m]. */
export const chamferDepth = 0.2e-3;
export const taperWidening = 0.3e-3;

/** Half of a right angle. */
const countersink = Math.PI / 4;

/** The same damper with its straight holes changed. */
function withHoles(model: DamperModel, change: (group: HoleGroup) => HoleGroup): DamperModel {
  const { damper, fluid } = model;
  const holes = damper.piston.holes.map(change);
  return damperModel({ ...damper, piston: { ...damper.piston, holes } }, fluid);
}

/** Every hole drilled larger by so much [m]; negative for smaller. */
export function drilled(model: DamperModel, larger: number): DamperModel {
  return withHoles(model, (group) => ({ ...group, diameter: group.diameter + larger }));
}

const chamfer = { kind: 'chamfered', depth: chamferDepth, halfAngle: countersink } as const;

/** The shapes of the page: what each makes of one straight hole. */
const shapes: readonly { readonly name: string; readonly of: (group: HoleGroup) => HoleGroup }[] = [
  { name: 'sharp', of: (group) => shaped(group, { kind: 'straight' }) },
  {
    name: 'chamfered both ends',
    of: (group) => shaped(group, { kind: 'straight', blindEdge: chamfer, shaftEdge: chamfer }),
  },
  {
    name: 'wide at the shaft side',
    of: (group) => shaped(group, { kind: 'conical', shaftSideDiameter: group.diameter + taperWidening }),
  },
  {
    name: 'wide at the blind side',
    of: (group) => ({
      ...shaped(group, { kind: 'conical', shaftSideDiameter: group.diameter }),
      diameter: group.diameter + taperWidening,
    }),
  },
];

function shaped(group: HoleGroup, shape: HoleShape): HoleGroup {
  return { ...group, shape };
}

/** A shape of hole in the damper of the page. */
export interface ShapeCase {
  readonly name: string;
  readonly model: DamperModel;
}

/** The damper with each shape of hole, the sharp one first. */
export function shapeCases(model: DamperModel): readonly ShapeCase[] {
  return shapes.map(({ name, of }) => ({ name, model: withHoles(model, of) }));
}

/** Damping force at a shaft speed [N] as if no oil tore, so that both directions can be compared. */
export function dampingAtSpeed(model: DamperModel, speed: number): number {
  return oilForce(model, speed);
}

/** How many percent more flow one percent more diameter passes at one pressure drop [Pa]. */
export function flowExponent(model: DamperModel, pressureDrop: number): number {
  const step = 0.001;
  const scaled = (factor: number) =>
    withHoles(model, (group) => ({ ...group, diameter: factor * group.diameter })).pistonFlow.flow(
      pressureDrop,
    );
  return Math.log(scaled(1 + step) / scaled(1 - step)) / Math.log((1 + step) / (1 - step));
}
