export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
export type { Warning } from '../base/warning.js';
export { type WarningCode, warningCodes } from '../base/warning-codes.js';
export type { Damper } from '../damper/damper.js';
export type { SealFriction } from '../damper/seal-friction.js';
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
export type { Quadrature } from '../numeric/gauss-legendre.js';
export { FitError, type FitFault } from '../numeric/least-squares/fit-error.js';
export { type LinearFit, linearLeastSquares } from '../numeric/least-squares/linear-least-squares.js';
export { huberLoss, type RobustLoss, studentLoss } from '../numeric/least-squares/robust-loss.js';
export { chiSquareQuantile, chiSquareTail, fQuantile, studentQuantile } from '../numeric/quantiles.js';
export {
  coordinate,
  type Draws,
  type Spread,
  shortestInterval,
  spreadOf,
} from '../numeric/sampling/draws.js';
export {
  type DampingAnswer,
  dampingAnswers,
  type ForcePlace,
} from './answer/damping-answer.js';
export { correctedAkaike, type FitQuality, fitQuality } from './answer/fit-quality.js';
export { exactLaw, type LawError, usualLawError } from './answer/law-error.js';
export {
  type Advice,
  type Candidate,
  type ForceQuestion,
  nextMeasurement,
  type Plan,
} from './answer/next-measurement.js';
export { drawnForces, type Posterior, posteriorOf } from './answer/posterior.js';
export { profileInterval } from './answer/profile.js';
export { type Telling, tellingOf } from './answer/telling.js';
export { type DynoSetup, dynoReadings } from './dyno/dyno-readings.js';
export { type DynoStroke, type LinearDyno, linearDyno } from './dyno/linear-dyno.js';
export { type DynoRecord, readDynoFile } from './dyno/read-dyno.js';
export type { MeasuredShockProblem } from './fit/fit-problem.js';
export { fitShock, type Residual, type ShockFit } from './fit/fit-shock.js';
export {
  intervalBelief,
  jointBelief,
  type StatedShock,
  type StatedTolerances,
  statedUnknowns,
  usualTolerances,
} from './fit/prior.js';
export type { Belief, Unknown } from './fit/unknown.js';
export { damperLaw, statedState } from './model/damper-law.js';
export { type Drop, dropTime } from './model/drop-time.js';
export type { ShockLaw, SteadyShock, WarmShock } from './model/shock-law.js';
export {
  exactInstruments,
  type InstrumentState,
  type MeasuredState,
  type Quantity,
  type ShockState,
} from './model/shock-state.js';
export {
  ballWallFactor,
  type FallingBall,
  type FallingBallUncertainties,
  fallingBallReading,
  fallingBallViscosity,
} from './oil/falling-ball.js';
export { type FlowCup, flowCupViscosity } from './oil/flow-cup.js';
export {
  type DensityReading,
  type DropReading,
  type ForceReading,
  frameUncertainty,
  type HoleReading,
  type Reading,
  type ScaleReading,
  type Timing,
  usualUncertainty,
  type ViscosityReading,
} from './reading/reading.js';
export { grubbsCritical, type OddValue, oddValue } from './statistics/grubbs.js';
export { effectiveDegreesOfFreedom, type Propagated, propagate } from './statistics/propagation.js';
export { type Repeatability, repeatabilityOf } from './statistics/repeatability.js';
export { runsProbability } from './statistics/runs-test.js';
