import { damperForce } from '../../lib/damper/damper-force.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import type { DamperForce } from '../../lib/damper/force-point.js';
import { forceVelocityCurve } from '../../lib/damper/force-velocity.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil, type Oil } from '../../lib/fluid/oil/oil.js';
import { assembleShock } from '../../lib/parts/assembly/assembled-shock.js';
import type { OilPart, PistonPart } from '../../lib/parts/parts.js';
import type { ShockPart } from '../../lib/parts/shock-part.js';
import { requireRunsIn } from './piston-in-bore.js';

/** An oil of the parts file, ready to be asked for its forces in one shock with one piston. */
export interface OilCase {
  readonly part: OilPart;
  readonly oil: Oil;
  readonly shock: ShockPart;
  readonly piston: PistonPart;
}

/** Which end of the range of an oil that is sold by an interval. */
type Bound = 'low' | 'typical' | 'high';

/** A force with the range that an oil sold by an interval leaves open. */
export interface ForceRange {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

export function oilCase(part: OilPart, shock: ShockPart, piston: PistonPart): OilCase {
  requireRunsIn(piston, shock);
  return { part, oil: createOil(part.definition), shock, piston };
}

/** The damper of a case at an oil temperature. */
export function modelAt(
  { part, oil, shock, piston }: OilCase,
  temperature: number,
  bound: Bound = 'typical',
): DamperModel {
  return damperModel(assembleShock({ shock, piston, oil: part }).damper, fluidAt(oil, temperature, bound));
}

/** Everything computed at one shaft speed, half way down the stroke. */
export function pointAt(model: DamperModel, speed: number): DamperForce {
  return damperForce(model, { speed, position: model.damper.stroke / 2 });
}

/** Everything computed at each shaft speed, half way down the stroke; quicker than point by point. */
export function curveAt(model: DamperModel, speeds: readonly number[]): readonly DamperForce[] {
  return forceVelocityCurve(model, speeds, model.damper.stroke / 2);
}

/** Damping forces over shaft speeds [N], one range per speed. */
export function dampingRanges(
  oilInShock: OilCase,
  temperature: number,
  speeds: readonly number[],
): readonly ForceRange[] {
  const forces = (bound: Bound): readonly number[] =>
    curveAt(modelAt(oilInShock, temperature, bound), speeds).map(({ dampingForce }) => dampingForce);
  const typical = forces('typical');
  const [thin, thick] = oilInShock.oil.isInterval ? [forces('low'), forces('high')] : [typical, typical];
  return typical.map((force, index) => rangeOf(force, thin[index] ?? force, thick[index] ?? force));
}

/** Damping force at one speed [N]. */
export function dampingAt(oilInShock: OilCase, temperature: number, speed: number): ForceRange {
  const force = (bound: Bound): number =>
    pointAt(modelAt(oilInShock, temperature, bound), speed).dampingForce;
  const typical = force('typical');
  return oilInShock.oil.isInterval
    ? rangeOf(typical, force('low'), force('high'))
    : rangeOf(typical, typical, typical);
}

/** Typical damping force at one speed [N]. */
export function typicalDamping(oilInShock: OilCase, temperature: number, speed: number): number {
  return pointAt(modelAt(oilInShock, temperature), speed).dampingForce;
}

function rangeOf(typical: number, one: number, other: number): ForceRange {
  return { typical, low: Math.min(one, other), high: Math.max(one, other) };
}
