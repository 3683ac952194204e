import { evaluateHole, type HoleResistance } from './hole-law.js';

/** A hole that resists flow towards the shaft side, the compression stroke, and flow back with two laws of one creeping limit. */
export function twoWayResistance(towardsShaft: HoleResistance, towardsBlind: HoleResistance): HoleResistance {
  return {
    creepingSlope: towardsShaft.creepingSlope,
    pressureDrop: (speed) => (speed < 0 ? towardsBlind : towardsShaft).pressureDrop(speed),
    evaluate: (speed, out) => evaluateHole(speed < 0 ? towardsBlind : towardsShaft, speed, out),
    slope: (speed) => (speed < 0 ? towardsBlind : towardsShaft).slope(speed),
    meanSpeed: (drop) => (drop < 0 ? towardsBlind : towardsShaft).meanSpeed(drop),
  };
}
