import type { DamperForce } from '../../lib/damper/damper-force.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/fluid-at.js';
import { createOil, type Oil } from '../../lib/fluid/oil.js';
import { damperOf } from '../../lib/parts/damper-of.js';
import type { OilPart, PistonPart, ShockPart } from '../../lib/parts/parts.js';

/** An oil of the parts file, ready to be asked for its forces in one shock with one piston. */
export interface OilCase {
  readonly part: OilPart;
  readonly oil: Oil;
  readonly shock: ShockPart;
  readonly piston: PistonPart;
}

/** A force with the range that an oil sold by an interval leaves open. */
export interface ForceRange {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

export function oilCase(part: OilPart, shock: ShockPart, piston: PistonPart): OilCase {
  return { part, oil: createOil(part.definition), shock, piston };
}

/** The damper of a case at an oil temperature. */
export function modelAt(
  { oil, shock, piston }: OilCase,
  temperature: number,
  bound: 'low' | 'typical' | 'high' = 'typical',
): DamperModel {
  return damperModel(damperOf(shock, piston), fluidAt(oil, temperature, bound));
}

/** Everything computed at one shaft speed, half way down the stroke. */
export function pointAt(model: DamperModel, speed: number): DamperForce {
  return damperForce(model, { speed, position: model.damper.stroke / 2 });
}

/** Damping forces over shaft speeds [N], one range per speed. */
export function dampingRanges(
  oilInShock: OilCase,
  temperature: number,
  speeds: readonly number[],
): readonly ForceRange[] {
  const forces = (bound: 'low' | 'typical' | 'high'): readonly number[] => {
    const model = modelAt(oilInShock, temperature, bound);
    return speeds.map((speed) => pointAt(model, speed).dampingForce);
  };
  const typical = forces('typical');
  const [thin, thick] = oilInShock.oil.isInterval ? [forces('low'), forces('high')] : [typical, typical];
  return typical.map((force, index) => {
    const [one, other] = [thin[index] ?? force, thick[index] ?? force];
    return { typical: force, low: Math.min(one, other), high: Math.max(one, other) };
  });
}

/** Typical damping force at one speed [N]. */
export function typicalDamping(oilInShock: OilCase, temperature: number, speed: number): number {
  return pointAt(modelAt(oilInShock, temperature), speed).dampingForce;
}

/** Damping force at one speed [N]. */
export function dampingAt(oilInShock: OilCase, temperature: number, speed: number): ForceRange {
  const [range] = dampingRanges(oilInShock, temperature, [speed]);
  return range ?? { low: 0, typical: 0, high: 0 };
}
