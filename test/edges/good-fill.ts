import * as fill from '../../lib/fill/index.js';
import { type GoodCalls, whole } from './good-call.js';
import { coreCalls, fluid, model } from './good-core.js';

const chamber: fill.ShockChamber = {
  bore: 0.012,
  shaftDiameter: 0.003,
  stroke: 0.025,
  length: 0.038,
  capVolume: 0.6e-6,
  solidVolume: 0.27e-6,
  shaftInside: 0.001,
};
const closing: fill.Closing = {
  position: 0.002,
  temperature: 293.15,
  ambientPressure: 101_325,
  freeAir: 1e-8,
  dissolvedAir: 1e-8,
  airReleasePressure: 1000,
  polytropicExponent: 1.2,
  oilDensity: 970,
};
const { position: _position, ...closingAnywhere } = closing;
const bladder: fill.Compensator = {
  kind: 'bladder',
  volume: 8e-7,
  stiffness: 1e10,
  vented: false,
  side: 'blind-side',
};
const compensators: readonly fill.Compensator[] = [
  bladder,
  { kind: 'air-pocket', volume: 8e-7, side: 'blind-side' },
  { kind: 'foam', volume: 8e-7, gasFraction: 0.7, stiffness: 1e10, side: 'blind-side' },
  { kind: 'emulsion', gasFraction: 0.15 },
];
const shock = whole(fill.closeShock(chamber, bladder, closing));
const condition = { temperature: 300, oilExpansion: 1.005, polytropicExponent: 1.1 };
const densityAt = (temperature: number): number => 970 * (1 - 1e-3 * (temperature - 293.15));
const rise = (radius: number): number => 1e4 * radius * radius;
const close = (temperature: number) => fill.closeShock(chamber, bladder, { ...closing, temperature });
const bubble = { radius: 0.0003, surface: 'clean' };
const lengths: fill.ShockLengths = {
  bodyEyelet: 0.05,
  bumpStop: 0.002,
  innerSpacers: 0.001,
  pistonTravel: 0.03,
  rodEnd: 0.01,
  sealStack: 0.008,
  shaft: 0.05,
};

/** Calls of the entry of filling that the core has not. */
export const fillCalls: GoodCalls = {
  polytropicExponent: coreCalls['polytropicExponent'] ?? [],
  airAfterBleeds: [
    [
      {
        airAtFill: 1e-7,
        airDrawnIn: 1e-9,
        height: 0.03,
        largestRadius: 0.001,
        riseSpeed: rise,
        smallestRadius: 0.0001,
        wait: 60,
      },
      4,
    ],
  ],
  airPassageTravel: [[model, 1e-8]],
  atTemperature: [[shock, 300, densityAt, 1]],
  bubblePassage: [[0.0006, { density: 970, surfaceTension: 0.021 }]],
  bubbleRise: [[bubble, fluid, { bore: 0.012, surfaceTension: 0.021 }]],
  chamberContents: [[shock, 0.01, condition]],
  chamberVolume: [[chamber]],
  closeShock: compensators.map((one) => [chamber, one, closing]),
  closingPositionForForce: [[chamber, bladder, closingAnywhere, { force: 0.05, position: 0.012 }]],
  coldestFillTemperature: [[close, { coldest: 273, hottest: 320, reserve: 1e-8 }, densityAt]],
  compensatorGasAt: compensators.slice(0, 3).map((one) => [one, closing, 7e-6, 3e-6]),
  conditionAtClosing: [[shock]],
  creepSpeed: [[model, 0.5]],
  deadBand: [
    [
      model,
      {
        volume: 3e-6,
        oil: {
          airFraction: 0.01,
          referencePressure: 101_325,
          liquidBulkModulus: 1e9,
          polytropicExponent: 1.2,
        },
      },
      0.1,
      0.9,
    ],
  ],
  dissolutionTime: [
    [
      {
        airSolubility: 0.17,
        diffusivity: 2e-9,
        pressure: 101_325,
        radius: 0.0001,
        saturation: 0.8,
        surfaceTension: 0.021,
      },
    ],
  ],
  dragIncrease: [[10, 'clean']],
  fluidRoom: [[chamber, 0.01]],
  frictionFromScale: [[0.8, 0.3]],
  frictionFromTwoWeights: [
    [
      { pull: 0.5, time: 4 },
      { pull: 1, time: 1.7 },
      { gasForce: 0.1, length: 0.02, timeError: 0.1 },
    ],
  ],
  frictionRulesBelow: [[model, 0.3]],
  hadamardRybczynskiSpeed: [[0.0003, 970, 0.34, 0.01]],
  largestBubbleLeft: [[60, 0.03, rise, 0.001]],
  lengthMismatch: [[0.1, 0.101, { tolerance: 0.002, motionRatio: 0.7 }]],
  lockPosition: [[shock, condition]],
  lockTemperature: [[shock, 0.02, densityAt, 340]],
  oilNeed: [[7e-6, { shocks: 4, rebuilds: 6, spilledFraction: 0.2, bottleVolume: 60e-6 }]],
  oilOutOnClosing: [[chamber, bladder, closing, 0.001]],
  positionAtForce: [[shock, 0.2, condition]],
  pressureInside: [[shock, 0.01, condition]],
  pullOutTime: [[model, shock, { pull: 1, from: 0.02, to: 0.005 }, condition]],
  quietClosing: [[chamber, bladder, closingAnywhere, { from: 0.005, to: 0.02 }]],
  releasedAir: [[3e-6, 0.17, { saturated: 101_325, now: 5e4 }]],
  restBand: [[shock, 0.1, condition]],
  rideHeightBand: [[0.2, { wheelRate: 300, motionRatio: 0.7 }]],
  saturationAfterVacuum: [[1e4, 101_325]],
  shaftExposed: [[whole(fill.shockLength(lengths)), 0.01]],
  shaftVolumeInside: [[chamber, 0.01]],
  shockLength: [[lengths]],
  slowHandSpeed: [[model, 0.3]],
  staticForce: [[shock, 0.01, condition]],
  stokesSpeed: [[0.0003, 970, 0.34]],
  waitingTime: [[0.0003, 0.03, rise]],
  wallFactor: [[0.1, 'clean']],
  worthwhileBleeds: [[[1e-7, 5e-8, 4e-8], 2e-8]],
};
