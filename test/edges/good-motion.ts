import * as motion from '../../lib/motion/index.js';
import { sampleCorner } from '../motion/sample-corner.js';
import { sampleModel, sampleShock } from '../motion/sample-shock.js';
import { type GoodCalls, whole } from './good-call.js';

const shock = whole(sampleShock({ airFraction: 0.005 }));
const stroke: motion.RepeatedStroke = {
  kind: 'sine',
  amplitude: 0.004,
  frequency: 4,
  cycles: 1,
  middle: 0.012,
};
const options = { parts: 40, tolerance: 1e-3 };
const cornerOptions = {
  ...options,
  duration: 0.05,
  bristles: {
    breakawayForce: 0.27,
    kineticForce: 0.18,
    stiffness: 5000,
    damping: 1,
    stribeckSpeed: 0.01,
    viscous: 0,
  },
};
const bristles = cornerOptions.bristles;
const body = { diameter: 0.016, length: 0.045, emissivity: 0.1 };
const corner = {
  ...sampleCorner,
  clearance: 0.02,
  tyre: { stiffness: 4000, damping: 2, progression: 100 },
};

/** Calls of the entry of motion. */
export const motionCalls: GoodCalls = {
  airAt: [[300]],
  benchStroke: [
    [shock, stroke, options],
    [shock, { kind: 'table', times: [0, 0.05, 0.1], travels: [0.01, 0.012, 0.01] }, options],
  ],
  bristleForce: [[bristles, 1e-5, 0.01]],
  bristleRate: [[bristles, 1e-5, 0.01]],
  closingSpike: [[1e7, 1e-6, 1e9, 1e-6]],
  heatToAir: [[body, 313, 293, 8]],
  holeInertance: [[970, 0.0025, 0.0006, 4]],
  landingSpeed: [[0.3]],
  moveCorner: [
    [shock, corner, { kind: 'landing', dropHeight: 0.1 }, cornerOptions],
    [shock, sampleCorner, { kind: 'step', height: 0.01 }, cornerOptions],
    [shock, sampleCorner, { kind: 'bump', height: 0.01, length: 0.1, speed: 5 }, cornerOptions],
    [shock, sampleCorner, { kind: 'washboard', height: 0.005, frequency: 10 }, cornerOptions],
    [shock, sampleCorner, { kind: 'table', times: [0, 0.02, 0.04], heights: [0, 0.005, 0] }, cornerOptions],
  ],
  movingShock: [
    [
      whole(sampleModel()),
      { volume: 3.2e-6, farVolume: 4e-7, bulkModulus: 9e8, airFraction: 0.01, airExponent: 1.2 },
    ],
  ],
  oilExpansion: [
    [
      { airExponent: 1.2, airFraction: 0.01, bulkModulus: 9e8, referencePressure: 101_325, volume: 3e-6 },
      2e5,
    ],
  ],
  stillNusseltNumber: [[1e5, 0.71]],
  strokeFigures: [[whole(motion.benchStroke(shock, stroke, options)), stroke]],
  swingingTube: [[10, 0.0006, 350e-6]],
  tubeSettlingTime: [[0.0006, 350e-6]],
  warmingRun: [
    [
      {
        body,
        heatCapacity: 15.5,
        airTemperature: 293.15,
        startTemperature: 295.15,
        parts: [{ duration: 60, windSpeed: 8, power: () => 1.5 }],
      },
    ],
  ],
  windNusseltNumber: [[1000, 0.71]],
};
