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
export type { AiryOil } from '../fluid/air/air-in-oil.js';
export type { FluidState } from '../fluid/oil/fluid-state.js';
export type { OilBase } from '../fluid/oil/oil-definition.js';
export type { ShearThinning } from '../fluid/shear/thinning-viscosity.js';
export type { Compensator, GasSide } from '../gas/compensator.js';
export type { Gas, GasClosing, GasLayout } from '../gas/gas.js';
export type { GasRoom, RestingRoom } from '../gas/gas-room.js';
export type { GasState } from '../gas/gas-state.js';
export { HydraulicLock } from '../gas/hydraulic-lock.js';
export { polytropicExponent } from '../gas/polytropic-exponent.js';
export {
  type DissolvingBubble,
  dissolutionTime,
  releasedAir,
  saturationAfterVacuum,
} from './air/bubble-dissolution.js';
export { type BubbleSurface, dragIncrease } from './air/bubble-drag.js';
export { type BubblePassage, bubblePassage } from './air/bubble-passage.js';
export {
  type Bubble,
  type BubbleRise,
  bubbleRise,
  hadamardRybczynskiSpeed,
  stokesSpeed,
} from './air/bubble-rise.js';
export { wallFactor } from './air/bubble-wall.js';
export { type AirySide, airPassageTravel, deadBand } from './air/dead-band.js';
export { airAfterBleeds, type BleedingAssumptions, worthwhileBleeds } from './air/repeated-bleeding.js';
export {
  typicalAirDiffusivity,
  typicalPetroleumBulkModulus,
  typicalSiliconeAirSolubility,
  typicalSurfaceTension,
} from './air/typical-oil.js';
export { largestBubbleLeft, type RiseSpeed, waitingTime } from './air/waiting-time.js';
export { chamberVolume, fluidRoom, type ShockChamber, shaftVolumeInside } from './chamber/chamber.js';
export { type ClosedShock, type Closing, closeShock, compensatorGasAt } from './chamber/closed-shock.js';
export {
  closingPositionForForce,
  type QuietClosing,
  quietClosing,
  type WantedStaticForce,
} from './chamber/closing-position.js';
export { atTemperature, coldestFillTemperature, type DensityAt, lockTemperature } from './chamber/heat.js';
export { type OilNeed, type OilOut, oilNeed, oilOutOnClosing } from './chamber/oil-out.js';
export {
  type ChamberContents,
  chamberContents,
  conditionAtClosing,
  type FillCondition,
  lockPosition,
  pressureInside,
} from './chamber/pressure-inside.js';
export { type RestBand, restBand } from './chamber/rest-band.js';
export { positionAtForce, staticForce } from './chamber/static-force.js';
export { creepSpeed, type HungShaft, pullOutTime } from './friction/creep-speed.js';
export {
  frictionFromScale,
  frictionRulesBelow,
  rideHeightBand,
  type ScaleReading,
  slowHandSpeed,
} from './friction/seal-measurement.js';
export {
  type FrictionAndDamping,
  frictionFromTwoWeights,
  type TimedPull,
  type TimedStretch,
} from './friction/two-weights.js';
export {
  type LengthMismatch,
  lengthMismatch,
  type ShockLength,
  type ShockLengths,
  shaftExposed,
  shockLength,
} from './length/shock-length.js';
