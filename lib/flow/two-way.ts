import type { HoleResistance } from './hole-law.js';

/** A hole that resists flow towards the shaft side, the compression stroke, and flow back with two laws of one creeping limit. */
export function twoWayResistance(towardsShaft: HoleResistance, towardsBlind: HoleResistance): HoleResistance {
  return {
    creepingSlope: towardsShaft.creepingSlope,
    pressureDrop: (speed) => (speed < 0 ? towardsBlind : towardsShaft).pressureDrop(speed),
    look: (speed, out) => {
      const one = speed < 0 ? towardsBlind : towardsShaft;
      if (one.look !== undefined) return one.look(speed, out);
      out[0] = one.pressureDrop(speed);
      out[1] = one.slope(speed);
    },
    slope: (speed) => (speed < 0 ? towardsBlind : towardsShaft).slope(speed),
    meanSpeed: (drop) => (drop < 0 ? towardsBlind : towardsShaft).meanSpeed(drop),
  };
}
