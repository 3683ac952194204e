import * as measure from '../../lib/measure/index.js';
import { inventedLaw, problemA, readingOfRow, stateOfRow } from '../measure/invented-shock.js';
import { type GoodCalls, whole } from './good-call.js';
import { damper, oil } from './good-core.js';

const known = { lnNu: Math.log(3e-4), slope: 1, d: 1.5e-3, h: 4e-5, F: 0.2, p0: 101_325 };
const problem = problemA([4, 4.1, 3.9, 4, 4.05, 1.9, 2, 1.95, 2, 1.98], known);
const fit = whole(measure.fitShock(problem));
const posterior = whole(measure.posteriorOf(fit, 200, 1));
const steady = whole(inventedLaw(stateOfRow(known)));
const place = { position: 0.014, temperature: 295.15 };
const values = Float64Array.of(1, 2, 3, 4);
const weights = Float64Array.of(0.25, 0.25, 0.25, 0.25);
const stroke = {
  time: Array.from({ length: 40 }, (_, index) => index * 0.01),
  travel: Array.from({ length: 40 }, (_, index) => 0.01 + 0.004 * Math.sin(index * 0.4)),
  speed: Array.from({ length: 40 }, (_, index) => 0.16 * Math.cos(index * 0.4)),
  force: Array.from(
    { length: 40 },
    (_, index) => 5 * Math.cos(index * 0.4) + 0.1 * Math.sign(Math.cos(index * 0.4)),
  ),
};
const ball = {
  ballDensity: 7800,
  ballDiameter: 0.002,
  oilDensity: 970,
  stretch: 0.1,
  time: 3,
  tubeDiameter: 0.02,
};
const tolerances: measure.StatedTolerances = {
  holeDiameter: 2e-5,
  gap: 1e-5,
  gasPressure: 2000,
  friction: { mean: 0.2, standardDeviation: 0.1 },
  temperatureSlope: 0.1,
  thermometer: 0.5,
  handDelay: 0.05,
};
const scale = readingOfRow({ kind: 'scaleIn', x: 0.01, u: 0.02 }, 1);
const drop = readingOfRow({ kind: 'drop', by: 'stopwatch', mass: 0.05, u: 0.1 }, 4);
const readings = [
  drop,
  scale,
  readingOfRow({ kind: 'ball', u: 0.03 }, Math.log(3e-4)),
  readingOfRow({ kind: 'pin', u: 5e-6 }, 1.5e-3),
  readingOfRow({ kind: 'force', v: 0.1, x: 0.014, u: 0.1 }, 4),
  { kind: 'density', density: 965, temperature: 295.15, uncertainty: 3 },
];

/** Calls of the entry of measuring. */
export const measureCalls: GoodCalls = {
  ballWallFactor: [[0.1]],
  chiSquareQuantile: [[0.9, 5]],
  chiSquareTail: [[3, 5]],
  coordinate: [[posterior, 0]],
  correctedAkaike: [[10, 2, 12]],
  damperLaw: [[damper, oil]],
  dampingAnswers: [[fit, [0.1, 0.3], place, { inside: 0.02, perThreefold: 0.05 }]],
  drawnForces: [[fit, posterior, 0.3, place]],
  dropTime: [[steady, { mass: 0.05, from: 0.025, to: 0.003, temperature: 295.15 }]],
  dynoReadings: [
    [
      { force: [1, 2, 3, -1], speed: [0.1, 0.2, 0.3, -0.1] },
      { ...place, uncertainty: 0.1, relativeUncertainty: 0.01 },
      steady,
    ],
  ],
  effectiveDegreesOfFreedom: [
    [
      [
        { uncertainty: 1, degreesOfFreedom: 5 },
        { uncertainty: 2, degreesOfFreedom: 3 },
      ],
    ],
  ],
  fQuantile: [[0.9, 3, 8]],
  fallingBallReading: [[ball, 295.15, { ballDiameter: 1e-5, densityDifference: 5, time: 0.05 }]],
  fallingBallViscosity: [[ball]],
  fitQuality: [[fit]],
  fitShock: [
    [{ ...problem, law: problem.law }],
    [{ ...problem, readings: [...problem.readings, ...readings] }],
  ],
  flowCupViscosity: [['Ford 4', 60]],
  frameUncertainty: [[240, 1]],
  grubbsCritical: [[10, 0.05, 2]],
  huberLoss: [[1.5]],
  intervalBelief: [[1, 2]],
  jointBelief: [
    [
      { mean: 1, standardDeviation: 0.1 },
      { mean: 1.1, standardDeviation: 0.2 },
    ],
  ],
  linearDyno: [[stroke, 0.01]],
  linearLeastSquares: [
    [
      [
        [1, 0],
        [1, 1],
        [1, 2],
      ],
      [1, 2, 3.1],
    ],
  ],
  nextMeasurement: [
    [
      problem,
      [fit.parameters],
      [{ name: 'scale', minutes: 5, readings: [scale] }],
      { ...place, speeds: [0.3], lawDeviation: 0.02 },
    ],
  ],
  oddValue: [[[1, 1.1, 0.9, 5, 1]]],
  posteriorOf: [[fit, 100, 1]],
  profileInterval: [[fit, 'friction', 0.9]],
  propagate: [[(inputs: readonly number[]) => [2 * (inputs[0] ?? 0)], [1], [0.1]]],
  readDynoFile: [['speed (m/s),force (N)\n0.1,1\n0.2,2\n0.3,3\n-0.1,-1\n']],
  repeatabilityOf: [
    [
      [
        [1, 1.1, 0.9],
        [1.2, 1.1, 1.3],
      ],
    ],
  ],
  runsProbability: [[[1, -1, 1, 1, -1]]],
  shortestInterval: [[values, weights, 0.5]],
  spreadOf: [[values, weights, [0.1, 0.9]]],
  statedState: [[damper, oil]],
  statedUnknowns: [
    [{ gap: 4e-5, gasPressure: 101_325, holeDiameter: 1.5e-3, kinematicViscosity: [2e-4, 3e-4] }, tolerances],
  ],
  studentLoss: [[4]],
  studentQuantile: [[0.9, 5]],
  tellingOf: [[fit]],
};
