import { inertialLoss } from '../../lib/flow/hole/inertial-loss.js';
import { shapedHoleResistance } from '../../lib/flow/hole/shaped-hole.js';
import { input, type PublishedRow } from './published-rows.js';

/** Excess loss of the developing profile, `K(x⁺)`, alone: a hole that loses nothing else, long past the onset of inertia. */
export function profileLoss(row: PublishedRow): number {
  const reynoldsNumber = 1e6;
  const shares = { slow: 0, exit: 0, development: 1.25, contraction: 0, bubbleGrowth: 0, onset: 1e-3 };
  // The law levels off at Re 3000, so this hole is as long as its profile then needs.
  const laminar = reynoldsNumber / Math.hypot(1, reynoldsNumber / 3000);
  return inertialLoss({ ...shares, lengthRatio: input(row, 'xplus') * laminar }).coefficient(reynoldsNumber);
}

/** `Δp / Q` of a creeping cone from its `Δp d/(μ V)`. */
export const coneResistance = (row: PublishedRow, number: number): number =>
  (number * input(row, 'mu') * 4) / (Math.PI * input(row, 'd1') ** 3);

/** `Δp d/(μ V)` of a tapered hole on its narrow end; a narrowing one at a negative Reynolds number. */
export function coneDrop(ratio: number, lengthRatio: number, reynoldsNumber: number): number {
  const fluid = { density: 1, kinematicViscosity: 1 };
  const shape = { kind: 'conical', shaftSideDiameter: ratio } as const;
  return shapedHoleResistance(1, shape, lengthRatio, fluid).pressureDrop(reynoldsNumber) / reynoldsNumber;
}

export function coneLoss(row: PublishedRow): number {
  const [ratio, lengthRatio] = [input(row, 'ratio'), input(row, 'L_over_d')];
  const speed = row.id.includes('_conv_') ? -input(row, 'Re') : input(row, 'Re');
  const inertia = coneDrop(ratio, lengthRatio, speed) - coneDrop(ratio, lengthRatio, 1e-9);
  return (2 * inertia) / input(row, 'Re');
}
