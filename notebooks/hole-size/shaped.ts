import { InputError } from '../../lib/base/input-error.js';
import type { DamperModel } from '../../lib/damper/damper-model.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import type { HoleEdge } from '../../lib/flow/geometry/hole-shape.js';
import type { HoleGroup, Piston } from '../../lib/flow/geometry/piston.js';

/** How deep the chamfer of the page is, and how much wider a tapered hole gets [m], where the piston is thick enough. */
const usualChamfer = 0.2e-3;
export const taperWidening = 0.3e-3;

/** Half of a right angle. */
const countersink = Math.PI / 4;

/** The same damper with its straight holes changed. */
function withHoles(model: DamperModel, change: (group: HoleGroup) => HoleGroup): DamperModel {
  const { damper, fluid } = model;
  const holes = damper.piston.holes.map(change);
  return damperModel({ ...damper, piston: { ...damper.piston, holes } }, fluid);
}

/** Every width of a hole changed: both ends of a tapered or stepped one. */
function resized(group: HoleGroup, size: (diameter: number) => number): HoleGroup {
  const { diameter, shape } = group;
  if (shape?.kind !== 'conical' && shape?.kind !== 'stepped') return { ...group, diameter: size(diameter) };
  return {
    ...group,
    diameter: size(diameter),
    shape: { ...shape, shaftSideDiameter: size(shape.shaftSideDiameter) },
  };
}

/** Every hole drilled larger by so much [m]; negative for smaller. */
export function drilled(model: DamperModel, larger: number): DamperModel {
  return withHoles(model, (group) => resized(group, (diameter) => diameter + larger));
}

/** A straight hole as wide as this one at its narrowest. */
function straight({ shape, ...group }: HoleGroup): HoleGroup {
  const diameter =
    shape?.kind === 'conical' || shape?.kind === 'stepped'
      ? Math.min(group.diameter, shape.shaftSideDiameter)
      : group.diameter;
  return { ...group, diameter };
}

/** How deep the chamfers of the page are in a piston [m]. */
export function chamferDepth({ thickness }: Piston): number {
  return Math.min(usualChamfer, thickness / 4);
}

/** The shapes of the page: what each makes of one straight hole. */
const shapes: readonly {
  readonly name: string;
  readonly of: (hole: HoleGroup, chamfer: HoleEdge) => HoleGroup;
}[] = [
  { name: 'sharp', of: (hole) => hole },
  {
    name: 'chamfered both ends',
    of: (hole, chamfer) => ({ ...hole, shape: { kind: 'straight', blindEdge: chamfer, shaftEdge: chamfer } }),
  },
  {
    name: 'wide at the shaft side',
    of: (hole) => ({ ...hole, shape: { kind: 'conical', shaftSideDiameter: hole.diameter + taperWidening } }),
  },
  {
    name: 'wide at the blind side',
    of: (hole) => ({
      ...hole,
      diameter: hole.diameter + taperWidening,
      shape: { kind: 'conical', shaftSideDiameter: hole.diameter },
    }),
  },
];

/** A shape of hole in the damper of the page. */
export interface ShapeCase {
  readonly name: string;
  readonly model: DamperModel;
}

/** The damper with each shape of hole, the sharp one first; none where the piston takes no such holes. */
export function shapeCases(model: DamperModel): readonly ShapeCase[] {
  const edge: HoleEdge = {
    kind: 'chamfered',
    depth: chamferDepth(model.damper.piston),
    halfAngle: countersink,
  };
  try {
    return shapes.map(({ name, of }) => ({
      name,
      model: withHoles(model, (group) => of(straight(group), edge)),
    }));
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}

/** Damping of whole oil at a shaft speed [N], so that both directions can be compared. */
export function dampingAtSpeed(model: DamperModel, speed: number): number {
  return oilForce(model, speed);
}

/** Part of the rebound damping that a drill takes away at a shaft speed. */
export function lostTo(model: DamperModel, drill: number, speed: number): number {
  return 1 - dampingAtSpeed(drilled(model, drill), -speed) / dampingAtSpeed(model, -speed);
}

/** How many percent more flow one percent more diameter passes at one pressure drop in rebound [Pa]. */
export function flowExponent(model: DamperModel, pressureDrop: number): number {
  const step = 0.001;
  const flow = (factor: number) =>
    -withHoles(model, (group) => resized(group, (diameter) => factor * diameter)).pistonFlow.flow(
      -pressureDrop,
    );
  return Math.log(flow(1 + step) / flow(1 - step)) / Math.log((1 + step) / (1 - step));
}

/** Size of the pressure drop of whole oil in rebound at a shaft speed [Pa]. */
export function dropAt(model: DamperModel, speed: number): number {
  return -model.pistonFlow.pressureDrop(-model.dampingArea * speed).pressureDrop;
}
