export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
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
export type { FurtherBottle, OrderLine, OrderPlan, PlannedFill, UnservedFill } from './order/order-plan.js';
export { orderPlan } from './order/order-plan-by-program.js';
export type { OrderBuild, OrderProblem } from './order/order-problem.js';
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
