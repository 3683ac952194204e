export {
  type DissolvingBubble,
  dissolutionTime,
  releasedAir,
  saturationAfterVacuum,
} from './bubble-dissolution.js';
export { type BubbleSurface, dragIncrease } from './bubble-drag.js';
export { type BubblePassage, bubblePassage } from './bubble-passage.js';
export {
  type Bubble,
  type BubbleRise,
  bubbleRise,
  hadamardRybczynskiSpeed,
  stokesSpeed,
} from './bubble-rise.js';
export { wallFactor } from './bubble-wall.js';
export { chamberVolume, fluidRoom, type ShockChamber, shaftVolumeInside } from './chamber.js';
export { type ClosedShock, type Closing, closeShock } from './closed-shock.js';
export {
  closingPositionForForce,
  type QuietClosing,
  quietClosing,
  type WantedForce,
} from './closing-position.js';
export type { Compensator } from './compensator.js';
export { creepSpeed, type HungShaft, pullOutTime } from './creep-speed.js';
export { type AirySide, airPassageTravel, deadBand } from './dead-band.js';
export type { GasRoom } from './gas-room.js';
export { atTemperature, coldestFillTemperature, type DensityAt, lockTemperature } from './heat.js';
export { HydraulicLock } from './hydraulic-lock.js';
export { type OilNeed, type OilOut, oilNeed, oilOutOnClosing } from './oil-out.js';
export { polytropicExponent } from './polytropic-exponent.js';
export {
  asClosed,
  type ChamberContents,
  chamberContents,
  type FillCondition,
  lockPosition,
  pressureInside,
} from './pressure-inside.js';
export { airAfterBleeds, type BleedingAssumptions, worthwhileBleeds } from './repeated-bleeding.js';
export { type RestBand, restBand } from './rest-band.js';
export {
  frictionFromScale,
  frictionRulesBelow,
  rideHeightBand,
  type ScaleReading,
} from './seal-measurement.js';
export {
  type LengthMismatch,
  lengthMismatch,
  type ShockLength,
  type ShockLengths,
  shaftExposed,
  shockLength,
} from './shock-length.js';
export { positionAtForce, staticForce } from './static-force.js';
export { type FrictionAndDamping, frictionFromTwoWeights, type TimedPull } from './two-weights.js';
export {
  typicalAirDiffusivity,
  typicalPetroleumBulkModulus,
  typicalSiliconeAirSolubility,
  typicalSurfaceTension,
} from './typical-oil.js';
export { largestBubbleLeft, type RiseSpeed, waitingTime } from './waiting-time.js';
