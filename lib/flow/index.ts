export {
  type AnnularGap,
  annularGapConductance,
  annularGapDrag,
  annularGapFlow,
} from './annular-gap.js';
export { type DiscValve, discOpeningPressure } from './disc-valve.js';
export { type Hole, holeArea, holeFlow, holePressureDrop, holeReynoldsNumber } from './hole.js';
export type { HoleLaw, HoleResistance } from './hole-law.js';
export type { HolePath } from './hole-path.js';
export type { HoleEdge, HoleShape } from './hole-shape.js';
export { idelchikThickEdgeLaw, lossCoefficientIdelchikThickEdge } from './idelchik-thick-edge.js';
export { type InertialLoss, type InertialLossShares, inertialLoss } from './inertial-loss.js';
export { dischargeCoefficientLichtarowicz, lichtarowiczLaw } from './lichtarowicz.js';
export { oneConstantHoleLaw } from './one-constant-hole.js';
export { type HoleGroup, type Piston, totalHoleArea } from './piston.js';
export { type PistonFlow, pistonFlow } from './piston-flow.js';
export type { PistonPressureDrop } from './piston-pressure-drop.js';
export { type RingPlate, ringPlateCompliance } from './ring-plate.js';
export { sharpHoleLaw } from './sharp-hole.js';
export type { ValveLook, ValvePath } from './valve-path.js';
