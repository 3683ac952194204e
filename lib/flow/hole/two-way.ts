import { evaluateHole, type HoleResistance } from './hole-law.js';

/** A hole that resists flow towards the shaft side, the compression stroke, and flow back with two laws of one creeping limit. */
export function twoWayResistance(towardsShaft: HoleResistance, towardsBlind: HoleResistance): HoleResistance {
  const [shaftGap, blindGap] = [towardsShaft.besideGap, towardsBlind.besideGap];
  return {
    creepingSlope: towardsShaft.creepingSlope,
    pressureDrop: (speed) => (speed < 0 ? towardsBlind : towardsShaft).pressureDrop(speed),
    evaluate: (speed, out) => evaluateHole(speed < 0 ? towardsBlind : towardsShaft, speed, out),
    slope: (speed) => (speed < 0 ? towardsBlind : towardsShaft).slope(speed),
    meanSpeed: (drop) => (drop < 0 ? towardsBlind : towardsShaft).meanSpeed(drop),
    ...(shaftGap !== undefined &&
      blindGap !== undefined && {
        besideGap: (area, gapConductance) => {
          const [shaft, blind] = [shaftGap(area, gapConductance), blindGap(area, gapConductance)];
          return (flow) => (flow < 0 ? blind(flow) : shaft(flow));
        },
      }),
  };
}
