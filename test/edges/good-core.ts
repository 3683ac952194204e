import * as core from '../../lib/index.js';
import { type GoodCalls, whole } from './good-call.js';

/** An invented shock with a shim on one of two rows of holes, so that every place of a damper is tried. */
export const damper: core.Damper = {
  bore: 0.012,
  shaftDiameter: 0.003,
  stroke: 0.025,
  piston: {
    diameter: 0.0119,
    thickness: 0.0025,
    eccentricity: 0.2,
    holes: [
      { count: 2, diameter: 0.0012, pitchDiameter: 0.0075 },
      {
        count: 2,
        diameter: 0.0011,
        shape: { kind: 'straight', blindEdge: { kind: 'rounded', radius: 0.0002 } },
      },
    ],
  },
  gas: {
    layout: 'blind-side',
    rooms: [{ volume: 1e-6, stiffness: 1e9, vented: false, dissolvedAir: 0 }],
    closing: { displacedVolume: 0, pressure: 101_325, temperature: 293.15, oilVolume: 3e-6, oilDensity: 970 },
    ambientPressure: 101_325,
    polytropicExponent: 1.2,
    airReleasePressure: 5000,
  },
  seal: { kineticForce: 0.2, breakawayForce: 0.3 },
};

const valve: core.DiscValve = {
  face: 'shaft-side',
  covers: [0],
  outerDiameter: 0.0095,
  clampDiameter: 0.005,
  thickness: 0.0001,
  count: 1,
  elasticModulus: 2e11,
  poissonRatio: 0.3,
  preload: 0,
  largestLift: 0.0005,
};
const { face: _face, covers: _covers, ...shim } = valve;
const valved: core.Damper = {
  ...damper,
  piston: {
    ...damper.piston,
    holes: damper.piston.holes.slice(0, 1).concat({ count: 2, diameter: 0.001, pitchDiameter: 0.003 }),
    valves: [valve],
  },
};
const shaped = (shape: core.HoleShape): core.Damper => ({
  ...damper,
  piston: { ...damper.piston, holes: [{ count: 3, diameter: 0.0012, shape }] },
});

export const fluid: core.FluidState = { kinematicViscosity: 350e-6, density: 970, temperature: 298.15 };
const thinning: core.ShearThinning = {
  kind: 'carreau-yasuda',
  time: 1e-4,
  exponent: 0.6,
  bend: 2,
  floor: 0.1,
};
const thinFluid = { ...fluid, shearThinning: thinning };
export const point = { temperature: 298.15, kinematicViscosity: 350e-6 };
export const oil = whole(core.createOil({ base: 'silicone', viscosity: { kind: 'silicone', point } }));
export const model = whole(core.damperModel(damper, fluid));
const valvedModel = whole(core.damperModel(valved, fluid));
const gasNow = whole(core.gasState(damper.gas));
const law = whole(core.sharpHoleLaw);
const hole = { diameter: 0.0012, length: 0.0025, areaRatio: 0.1 };
const gap = { bore: 0.012, pistonDiameter: 0.0119, length: 0.0025, eccentricity: 0.1 };
const motion = { speed: 0.3, position: 0.01 };
const path = whole(model.pistonFlow.paths[0] as core.HolePath);

const definitions: readonly core.OilDefinition[] = [
  {
    base: 'silicone',
    viscosity: { kind: 'silicone', point },
    densityAt15Celsius: 975,
    shearThinning: { temperature: 298.15, thinning },
  },
  {
    base: 'petroleum',
    viscosity: { kind: 'points', points: [point, { temperature: 313.15, kinematicViscosity: 150e-6 }] },
  },
  { base: 'petroleum', viscosity: { kind: 'viscosity-index', point, viscosityIndex: 100 } },
  { base: 'silicone', viscosity: { kind: 'viscosity-temperature-coefficient', point, coefficient: 0.6 } },
  { base: 'petroleum', viscosity: { kind: 'iso-grade', grade: 46, viscosityIndex: 100 } },
  { base: 'silicone', viscosity: { kind: 'trade-weight', weight: 30 } },
];

/** Calls of the core entry. */
export const coreCalls: GoodCalls = {
  annularGapConductance: [[gap, fluid]],
  annularGapDrag: [[gap, fluid]],
  annularGapFlow: [[gap, fluid, 1e4, 0.3]],
  apparentMass: [[hole, fluid]],
  apparentMassAtShaft: [[model]],
  bindDamper: [],
  cavitationOnset: [[model, 'compression', 0.01]],
  createOil: definitions.map((one) => [one]),
  creepingDampingCoefficient: [[model]],
  damperForce: [
    [model, motion],
    [valvedModel, motion],
  ],
  damperForces: [[model, Float64Array.of(-0.2, 0.1), 0.01]],
  damperModel: [
    [damper, fluid, law],
    [valved, thinFluid],
    [shaped({ kind: 'conical', shaftSideDiameter: 0.0013 }), fluid],
    [shaped({ kind: 'stepped', shaftSideDiameter: 0.0015, shaftSideLength: 0.001 }), fluid],
    [shaped({ kind: 'slot', travel: 0.001 }), fluid],
    [shaped({ kind: 'straight', shaftEdge: { kind: 'chamfered', depth: 0.0002, halfAngle: 0.7 } }), fluid],
  ],
  discAtFlow: [[shim, { count: 2, diameter: 0.0012, pitchDiameter: 0.0075 }, 1e-6, 0.3]],
  dischargeCoefficientLichtarowicz: [[500, 2]],
  discOpeningPressure: [[valve, { ...valved.piston, valves: [] }]],
  displacedVolumeAt: [[gasNow, 1.2e5]],
  fastestRebound: [[model, { force: 8, position: 0.01 }]],
  fluidAt: [[oil, 298.15, 'low']],
  forceAfterTravel: [[model, motion, 0.005]],
  forceSlope: [[model, motion]],
  forceVelocityCurve: [[model, [-0.2, 0.1], 0.01]],
  forceWithCavity: [[model, motion, 1e-8]],
  forcesAlongTravel: [[model, motion, [0.001, 0.002]]],
  gasPressure: [[gasNow, 1e-8]],
  gasPressureAgainstCavitation: [[model, 0.3]],
  gasState: [[damper.gas, { temperature: 300, oilExpansion: 1.01, polytropicExponent: 1.1 }]],
  holeArea: [[{ diameter: 0.0012, length: 0.0025 }]],
  holeFlow: [[hole, fluid, 1e4, law]],
  holePathWarnings: [[path, law, 100]],
  holePressureDrop: [[hole, fluid, 1e-6, law]],
  holeReynoldsNumber: [[hole, fluid, 1e-6]],
  inertialLoss: [
    [
      {
        slow: 0.5,
        contraction: 0.5,
        development: 0.6,
        exit: 1,
        lengthRatio: 2,
        onset: 30,
        bubbleGrowth: 1,
        profileLengthRatio: 2,
        separation: { loss: 0.3, reynoldsNumber: 200, power: 2 },
      },
    ],
  ],
  jetMomentumFlow: [
    [
      { momentum: 1.1, creepingShare: 0.3, attachedShare: 0.1, separationNumber: 100, separationPower: 2 },
      3,
      0.0012,
      350e-6,
    ],
    [
      {
        momentum: 1.1,
        creepingShare: 0.3,
        attachedShare: 0.1,
        separatedShare: 1.4,
        separationNumber: 100,
        separationPower: 2,
      },
      3,
      0.0012,
      350e-6,
    ],
  ],
  inertiaForce: [[model, 100]],
  gapPlayBounds: [[gap]],
  jetRecoil: [[model, [1, 1], 1e-6]],
  landingShaftSpeed: [[0.3, 0.7]],
  lossCoefficientIdelchikThickEdge: [[2, 0.1]],
  oilForce: [[model, 0.3]],
  largestTilt: [[gap]],
  packSpeed: [[model, 'compression']],
  passageAtDrop: [[model, 1e4]],
  pistonFlow: [[valved.piston, 0.012, fluid, law]],
  pocketExponent: [[1e-6, 3]],
  polytropicExponent: [[0.005, 3]],
  requireDamper: [[damper]],
  ringPlateCompliance: [
    [
      { elasticModulus: 2e11, poissonRatio: 0.3, innerRadius: 0.0025, outerRadius: 0.005, thickness: 1e-4 },
      0.004,
      0.005,
    ],
  ],
  playOfPiston: [[model, 0.3]],
  sealFrictionForce: [[damper.seal, 0.3]],
  sealedGas: [
    [
      {
        volume: 1e-6,
        pressure: 101_325,
        polytropicExponent: 1.2,
        ambientPressure: 101_325,
        layout: 'blind-side',
        airReleasePressure: 1000,
        temperature: 293.15,
      },
    ],
  ],
  speedsAtForce: [[model, { force: 2, position: 0.01, fastest: 0.5 }]],
  strokeDamping: [[model, { middle: 0.012, amplitude: 0.004, frequency: 5 }]],
  specificRecoil: [[1e-3, 3, 0.3]],
  standingGas: [
    [damper.gas, { displacedVolume: 1e-8, temperature: 300, oilExpansion: 1.01, polytropicExponent: 1 }],
  ],
  symmetricSpeeds: [[0.5, 5]],
  totalHoleArea: [[damper.piston]],
  unsteadyFlowError: [[hole, fluid, 10]],
  unsteadyFlowWarnings: [[hole, fluid, 10, true]],
  valveOpenings: [[valvedModel]],
  viscosityAt: [[{ kind: 'silicone', viscosityAt25Celsius: 350e-6, slope: 740 }, 298.15]],
};
