export { type BlendPlan, blendPlan } from './blend-plan.js';
export {
  type DampingMismatch,
  dampingMismatch,
  dampingOf,
  scaledDamping,
  type WantedDamping,
} from './damping-mismatch.js';
export {
  type DayPlan,
  type DayProblem,
  type DayStep,
  type DayTemperature,
  dayPlan,
} from './day-plan.js';
export type {
  Design,
  DesignFront,
  DesignProblem,
  MadeForce,
  RobustDesign,
  WantedForce,
} from './design-problem.js';
export { designSearch } from './design-search.js';
export {
  type Bottle,
  type FillChoice,
  type FillState,
  fillChoices,
  fillName,
  fillState,
} from './fill-choice.js';
export {
  type Drawing,
  type ForceSpread,
  forceSpread,
  type ToleranceShare,
  toleranceShares,
} from './force-spread.js';
export {
  type MatchCase,
  matchViscosity,
  type ViscosityMatch,
  type ViscosityWindow,
  viscosityWindow,
} from './match-viscosity.js';
export { drilledShock, type MeasuredShock, timedShock } from './measured-shock.js';
export {
  type FurtherBottle,
  type OrderLine,
  type OrderPlan,
  orderPlan,
  type PlannedFill,
} from './order-plan.js';
export { orderPlanByProgram } from './order-plan-by-program.js';
export type { OrderBuild, OrderProblem } from './order-problem.js';
export {
  bestPairing,
  comparedShocks,
  type Pairing,
  rankedPairs,
  type ShockPair,
} from './pairs.js';
export { paretoFront } from './pareto-front.js';
export type { Sampling } from './samples.js';
export { finish, finishInSlices, type Search, type SearchControl } from './search.js';
export {
  type SensitivityIndices,
  sensitivityIndices,
  type UnitCubeModel,
  type VarianceShare,
} from './sensitivity-indices.js';
export {
  type Corner,
  type CornerMotion,
  cornerMotion,
  dampingRatio,
  type ReloadedCorner,
  reloadedCorner,
  swingLeft,
} from './setting.js';
export { type SobolSequence, sobolSequence } from './sobol-sequence.js';
export { type SpeedWeights, speedRange, type WeightedSpeed } from './speed-weights.js';
export {
  type TolerancedBuild,
  type ToleranceName,
  type Tolerances,
  toleranceModel,
  toleranceNames,
} from './tolerances.js';
export type { Deviation } from './uncertain.js';
