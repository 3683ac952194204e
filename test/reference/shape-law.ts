import { holePath } from '../../lib/flow/hole/hole-path.js';
import { specificRecoil } from '../../lib/flow/hole/jet-momentum.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import type { ShapeReference } from './shape-reference.js';

/** Law and force of a hole at mean speed 1, with ½ ρ = 1: Euler numbers. */
export function lawOf(
  { diameter, shape, lengthRatio, areaRatio }: Omit<ShapeReference, 'name' | 'family' | 'points'>,
  reynoldsNumber: number,
): { readonly euler: number; readonly recoil: number } {
  const fluid = { density: 2, kinematicViscosity: 1 / reynoldsNumber };
  const path = holePath(
    { count: 1, diameter, ...(shape && { shape }) },
    lengthRatio,
    fluid,
    sharpHoleLaw,
    areaRatio,
  );
  const euler = path.resistance.pressureDrop(1);
  // A hole of area a in a bore of area 1 carries the mean speed a.
  const recoil = fluid.density * areaRatio * specificRecoil(path.momentumFlow(1), 1, areaRatio);
  return { euler, recoil };
}
