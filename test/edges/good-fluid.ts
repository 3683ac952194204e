import * as fluid from '../../lib/fluid/index.js';
import { type GoodCalls, whole } from './good-call.js';
import { coreCalls, oil, point } from './good-core.js';

const components = [
  { fraction: 0.4, kinematicViscosity: 100e-6 },
  { fraction: 0.6, kinematicViscosity: 500e-6 },
];
const silicone: fluid.SiliconeLine = { kind: 'silicone', viscosityAt25Celsius: 350e-6, slope: 740 };
const walther: fluid.WaltherLine = whole(
  fluid.fitWaltherLine([point, { temperature: 313.15, kinematicViscosity: 150e-6 }]).line,
);
const second = whole(
  fluid.createOil({
    base: 'silicone',
    viscosity: { kind: 'silicone', point: { ...point, kinematicViscosity: 500e-6 } },
  }),
);
const blend = {
  pair: { first: oil, second },
  temperature: 298.15,
  measured: { temperature: 298.15, secondVolumeFraction: 0.5, kinematicViscosity: 420e-6 },
};
const thinning = { kind: 'cross', time: 1e-4, exponent: 0.6, floor: 0.1 };
const carreau = { kind: 'carreau-yasuda', time: 1e-4, exponent: 0.6, bend: 2, floor: 0.1 };

/** Calls of the entry of fluids that the core has not. */
export const fluidCalls: GoodCalls = {
  ...coreCalls,
  arrheniusBlend: [[components]],
  astmBlend: [[components]],
  barryLine: [[point]],
  barusViscosityRatio: [[1e-8, 1e5]],
  blendFraction: [[blend, 420e-6]],
  blendInteraction: [[420e-6, 400e-6, 0.5]],
  blendViscosity: [[blend, 0.4]],
  bubblyOil: [[{ liquidBulkModulus: 0.85e9, airFraction: 0.05, referencePressure: 101_325 }, 1e5]],
  bubblyViscosityRatio: [[0.05, 0.3]],
  rigidBubblesViscosityRatio: [[0.05]],
  compressAiryOil: [
    [{ airFraction: 0.01, referencePressure: 101_325, liquidBulkModulus: 1e9, polytropicExponent: 1.2 }, 2e5],
  ],
  fitWaltherLine: [[[point, { temperature: 313.15, kinematicViscosity: 150e-6 }]]],
  interactingBlend: [[400e-6, 0.5, 0.1]],
  isoGradeViscosity: [[46]],
  kendallMonroeBlend: [[components]],
  kinematicViscosityOfSayboltUniversal: [[200, 311]],
  kinematicViscosityOfZ: [[100]],
  kinematicViscosityOfZShort: [[100]],
  localExponent: [
    [thinning, 1000],
    [carreau, 1000],
  ],
  molarMassBlend: [[components]],
  oilDensity: [['petroleum', 298.15, 870]],
  petroleumAirSolubility: [[298.15, 870]],
  polymerBlend: [[components]],
  refutasBlend: [[components]],
  rouseRelaxationTime: [[{ kinematicViscosity: 350e-6, molarMass: 20, temperature: 298.15 }]],
  sayboltUniversalSeconds: [[50e-6, 311]],
  shearThinningWarnings: [[1e-5, 1000]],
  siliconeBulkModulus: [[298.15]],
  siliconeLineFromCoefficient: [[point, 0.6]],
  siliconeMolarMass: [[350e-6]],
  siliconeViscosityOfMolarMass: [[14]],
  temperatureAt: [[silicone, 300e-6]],
  thermalExpansionCoefficient: [['petroleum', 298.15, 870]],
  tradeWeightViscosity: [[30]],
  viscosityIndex: [[50e-6, 8e-6]],
  viscosityRatio: [
    [thinning, 1000],
    [carreau, 1000],
  ],
  viscosityTemperatureCoefficient: [[silicone]],
  waltherLineFromViscosityIndex: [[point, 100]],
  waltherZ: [[50e-6]],
  waltherZShort: [[50e-6]],
  wrightBlend: [
    [
      [
        { fraction: 0.4, line: walther },
        { fraction: 0.6, line: walther },
      ],
    ],
  ],
};
