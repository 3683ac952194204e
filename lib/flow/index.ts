export {
  type AnnularGap,
  annularGapConductance,
  annularGapDrag,
  annularGapFlow,
} from './gap/annular-gap.js';
export { gapPlayBounds, largestTilt } from './gap/gap-play.js';
export type { DiscValve } from './geometry/disc-valve.js';
export { type Hole, holeArea } from './geometry/hole.js';
export type { HoleEdge, HoleShape } from './geometry/hole-shape.js';
export type { HoleGroup, Piston } from './geometry/piston.js';
export {
  apparentMass,
  type UnsteadyFlowError,
  unsteadyFlowError,
  unsteadyFlowWarnings,
} from './hole/apparent-mass.js';
export type { BoundHole } from './hole/bound-hole.js';
export type { BoundLoss } from './hole/bound-loss.js';
export { holeFlow, holePressureDrop, holeReynoldsNumber } from './hole/hole-flow.js';
export type { BoundBothWays, HoleLaw, HoleResistance } from './hole/hole-law.js';
export type { HolePath } from './hole/hole-path.js';
export { idelchikThickEdgeLaw, lossCoefficientIdelchikThickEdge } from './hole/idelchik-thick-edge.js';
export { type InertialLoss, inertialLoss } from './hole/inertial-loss.js';
export { type Jet, jetMomentumFlow, specificRecoil } from './hole/jet-momentum.js';
export { dischargeCoefficientLichtarowicz, lichtarowiczLaw } from './hole/lichtarowicz.js';
export type { InertialLossShares, Separation } from './hole/loss-shares.js';
export { oneConstantHoleLaw } from './hole/one-constant-hole.js';
export { holePathWarnings } from './hole/shape-range.js';
export { sharpHoleLaw } from './hole/sharp-hole.js';
export { discOpeningPressure } from './piston/disc-opening-pressure.js';
export { totalHoleArea } from './piston/piston.js';
export { type PistonFlow, pistonFlow } from './piston/piston-flow.js';
export type { PistonPressureDrop } from './piston/piston-pressure-drop.js';
export { type DiscAtFlow, discAtFlow } from './valve/disc-at-flow.js';
export type { CoveredHoles, FilmDisc } from './valve/disc-units.js';
export { type RingPlate, ringPlateCompliance } from './valve/ring-plate.js';
export type { ValvePath, ValvePoint } from './valve/valve-path.js';
