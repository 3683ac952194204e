export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
export type { Warning } from '../base/warning.js';
export { type WarningCode, warningCodes } from '../base/warning-codes.js';
export type { Damper } from '../damper/damper.js';
export type { SealFriction } from '../damper/seal-friction.js';
export type { Bottle, FillChoice } from '../decisions/day/fill-choice.js';
export type {
  Design,
  DesignFront,
  DesignProblem,
  MadeForce,
  RobustDesign,
  WantedForce,
} from '../decisions/design/design-problem.js';
export type { WantedDamping } from '../decisions/match/damping-mismatch.js';
export type { SpeedWeights, WeightedSpeed } from '../decisions/match/speed-weights.js';
export type {
  FurtherBottle,
  OrderLine,
  OrderPlan,
  PlannedFill,
  UnservedFill,
} from '../decisions/order/order-plan.js';
export type { OrderBuild, OrderProblem } from '../decisions/order/order-problem.js';
export type { SearchControl } from '../decisions/search/search.js';
export type { Drawing, ForceSpread, ToleranceShare } from '../decisions/spread/force-spread.js';
export type {
  TolerancedBuild,
  ToleranceName,
  Tolerances,
  toleranceNames,
} from '../decisions/spread/toleranced-build.js';
export type { Deviation } from '../decisions/spread/uncertain.js';
export type { DiscValve } from '../flow/geometry/disc-valve.js';
export type { HoleEdge, HoleShape } from '../flow/geometry/hole-shape.js';
export type { HoleGroup, Piston } from '../flow/geometry/piston.js';
export type { Oil } from '../fluid/oil/oil.js';
export type { MeasuredThinning, OilBase } from '../fluid/oil/oil-definition.js';
export type { ShearThinning } from '../fluid/shear/thinning-viscosity.js';
export type { SiliconeLine } from '../fluid/viscosity/barry-silicone.js';
export type { ViscosityLine } from '../fluid/viscosity/viscosity-line.js';
export type { WaltherLine } from '../fluid/viscosity/walther-line.js';
export type { Gas, GasClosing, GasLayout } from '../gas/gas.js';
export type { GasRoom } from '../gas/gas-room.js';
export type { Sampling } from '../numeric/samples.js';
export { type DecisionWorkers, startDecisionWorkers } from './decision-workers.js';
