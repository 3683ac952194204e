export {
  type AnnularGap,
  annularGapConductance,
  annularGapDrag,
  annularGapFlow,
} from './annular-gap.js';
export { type Hole, holeArea, holeFlow, holePressureDrop, holeReynoldsNumber } from './hole.js';
export type { HoleLaw, HoleResistance } from './hole-law.js';
export { idelchikThickEdgeLaw, lossCoefficientIdelchikThickEdge } from './idelchik-thick-edge.js';
export { type InertialLoss, type InertialLossShares, inertialLoss } from './inertial-loss.js';
export { dischargeCoefficientLichtarowicz, lichtarowiczLaw } from './lichtarowicz.js';
export { oneConstantHoleLaw } from './one-constant-hole.js';
export type { HoleGroup, Piston } from './piston.js';
export { type HolePath, type PistonFlow, type PistonPressureDrop, pistonFlow } from './piston-flow.js';
export { sharpHoleLaw } from './sharp-hole.js';
