export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
export type { Warning } from '../base/warning.js';
export { type WarningCode, warningCodes } from '../base/warning-codes.js';
export type { Damper } from '../damper/damper.js';
export type { DamperModel } from '../damper/damper-model.js';
export type { SealFriction } from '../damper/seal-friction.js';
export type { AnnularGap } from '../flow/gap/annular-gap.js';
export type { DiscValve } from '../flow/geometry/disc-valve.js';
export type { Hole } from '../flow/geometry/hole.js';
export type { HoleEdge, HoleShape } from '../flow/geometry/hole-shape.js';
export type { HoleGroup, Piston } from '../flow/geometry/piston.js';
export type { BoundHole } from '../flow/hole/bound-hole.js';
export type { BoundLoss } from '../flow/hole/bound-loss.js';
export type { BoundBothWays, HoleLaw, HoleResistance } from '../flow/hole/hole-law.js';
export type { HolePath } from '../flow/hole/hole-path.js';
export type { Separation } from '../flow/hole/loss-shares.js';
export type { PistonFlow } from '../flow/piston/parallel-flow.js';
export type { PistonPressureDrop } from '../flow/piston/piston-pressure-drop.js';
export type { ValvePath, ValvePoint } from '../flow/valve/valve-path.js';
export type { BlendCase, MeasuredBlend } from '../fluid/blend/blend-case.js';
export type { OilPair } from '../fluid/blend/blend-estimates.js';
export type { FluidState } from '../fluid/oil/fluid-state.js';
export type { Oil } from '../fluid/oil/oil.js';
export type { MeasuredThinning, OilBase } from '../fluid/oil/oil-definition.js';
export type { ShearThinning } from '../fluid/shear/thinning-viscosity.js';
export type { SiliconeLine } from '../fluid/viscosity/barry-silicone.js';
export type { ViscosityLine } from '../fluid/viscosity/viscosity-line.js';
export type { WaltherLine } from '../fluid/viscosity/walther-line.js';
export type { Gas, GasClosing, GasLayout } from '../gas/gas.js';
export type { GasRoom, RestingRoom } from '../gas/gas-room.js';
export type { GasState } from '../gas/gas-state.js';
export type { Cushion } from '../motion/corner/contact.js';
export type { Corner } from '../motion/corner/corner.js';
export { paretoFront } from '../numeric/pareto-front.js';
export type { Sampling } from '../numeric/samples.js';
export { type SobolSequence, sobolSequence } from '../numeric/sobol-sequence.js';
export {
  betweenReadings,
  type DayPlan,
  type DayProblem,
  type DayStep,
  type DayTemperature,
  dayPlan,
} from './day/day-plan.js';
export {
  type Bottle,
  type FillChoice,
  type FillState,
  fillChoices,
  fillName,
  fillState,
} from './day/fill-choice.js';
export type {
  Design,
  DesignFront,
  DesignProblem,
  MadeForce,
  RobustDesign,
  WantedForce,
} from './design/design-problem.js';
export { designSearch } from './design/design-search.js';
export { type BlendPlan, blendPlan } from './match/blend-plan.js';
export {
  type DampingMismatch,
  dampingMismatch,
  dampingOf,
  scaledDamping,
  type WantedDamping,
} from './match/damping-mismatch.js';
export {
  type MatchCase,
  matchViscosity,
  type ViscosityMatch,
  type ViscosityWindow,
  viscosityWindow,
} from './match/match-viscosity.js';
export { type SpeedWeights, speedRange, type WeightedSpeed } from './match/speed-weights.js';
export { drilledShock, type MeasuredShock, timedShock } from './pair/measured-shock.js';
export {
  bestPairing,
  comparedShocks,
  type Pairing,
  rankedPairs,
  type ShockPair,
} from './pair/pairs.js';
export {
  type CornerMotion,
  cornerMotion,
  dampingRatio,
  type ReloadedCorner,
  reloadedCorner,
  type SpringCorner,
  swingLeft,
} from './pair/setting.js';
export { finish, finishInSlices, type Search, type SearchControl } from './search/search.js';
export {
  type Drawing,
  type ForceSpread,
  forceDraws,
  forceSpread,
  type ToleranceShare,
  toleranceShares,
} from './spread/force-spread.js';
export {
  type SensitivityIndices,
  sensitivityIndices,
  type UnitCubeModel,
  type VarianceShare,
} from './spread/sensitivity-indices.js';
export {
  type TolerancedBuild,
  type ToleranceName,
  type Tolerances,
  toleranceNames,
} from './spread/toleranced-build.js';
export { toleranceModel } from './spread/tolerances.js';
export type { Deviation } from './spread/uncertain.js';
