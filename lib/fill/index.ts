export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
export type { Compensator } from '../gas/compensator.js';
export type { GasRoom } from '../gas/gas-room.js';
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
