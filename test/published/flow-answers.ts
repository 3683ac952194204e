import { damperModel } from '../../lib/damper/damper-model.js';
import { annularGapConductance } from '../../lib/flow/gap/annular-gap.js';
import { holeArea } from '../../lib/flow/geometry/hole.js';
import { creepingCone } from '../../lib/flow/hole/creeping-parts.js';
import { holePressureDrop } from '../../lib/flow/hole/hole-flow.js';
import {
  idelchikThickEdgeLaw,
  lossCoefficientIdelchikThickEdge,
} from '../../lib/flow/hole/idelchik-thick-edge.js';
import { dischargeCoefficientLichtarowicz, lichtarowiczLaw } from '../../lib/flow/hole/lichtarowicz.js';
import { oneConstantHoleLaw } from '../../lib/flow/hole/one-constant-hole.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import { sealedGas } from '../../lib/gas/gas.js';
import { coneDrop, coneLoss, coneResistance, profileLoss } from './flow-shapes.js';
import { input, type PublishedRow } from './published-rows.js';

export const fluidOf = (dynamicViscosity: number, density = 970) => ({
  density,
  kinematicViscosity: dynamicViscosity / density,
});

/** A thin piston in a closed cylinder, all but without a shaft, so that the textbook dashpot is the limit. */
function dashpotCoefficient(row: PublishedRow): number {
  const [bore, radialClearance] = [input(row, 'D') + 2 * input(row, 'd'), input(row, 'd')];
  const model = damperModel(
    {
      bore,
      shaftDiameter: 1e-9,
      stroke: 0.02,
      piston: {
        diameter: bore - 2 * radialClearance,
        thickness: input(row, 'l'),
        holes: [],
        eccentricity: 0,
      },
      gas: sealedGas({ volume: 1e-6, pressure: 101_325, polytropicExponent: 1, ambientPressure: 101_325 }),
      seal: { kineticForce: 0, breakawayForce: 0 },
    },
    fluidOf(input(row, 'mu')),
  );
  return model.dampingArea ** 2 / model.pistonFlow.creepingConductance + model.rimDrag;
}

/** y = Δp d / (μ V) of a law at a length ratio and a Reynolds number. */
function dimensionlessDrop(lengthRatio: number, reynoldsNumber: number, law = sharpHoleLaw): number {
  const hole = { diameter: 1e-3, length: lengthRatio * 1e-3 };
  const fluid = { density: 970, kinematicViscosity: 1e-4 };
  const speed = (reynoldsNumber * fluid.kinematicViscosity) / hole.diameter;
  const drop = holePressureDrop(hole, fluid, speed * holeArea(hole), law);
  return (drop * hole.diameter) / (fluid.density * fluid.kinematicViscosity * speed);
}

const lichtarowiczAtSpeed = (row: PublishedRow): number =>
  Math.sqrt(
    input(row, 'Re') / (2 * dimensionlessDrop(input(row, 'L_over_d'), input(row, 'Re'), lichtarowiczLaw)),
  );

/** Slow enough that inertia is below the last place, as the creeping rows assume. */
const creepingReynoldsNumber = 1e-9;

const creepingHole = (row: PublishedRow): number => {
  const hole = { diameter: 2 * input(row, 'r'), length: input(row, 'L') };
  const slow = 1e-12;
  const fluid = fluidOf(input(row, 'mu'));
  return holePressureDrop(hole, fluid, input(row, 'Q') * slow, oneConstantHoleLaw) / slow;
};

const annulus = (row: PublishedRow): number =>
  input(row, 'dp') *
  annularGapConductance(
    {
      bore: input(row, 'bore_d'),
      pistonDiameter: input(row, 'bore_d') - input(row, 'diametral_clearance'),
      length: input(row, 'L'),
      eccentricity: 0,
    },
    fluidOf(input(row, 'mu')),
  );

const sharpDischarge = (row: PublishedRow): number =>
  Math.sqrt(input(row, 'Re') / (2 * dimensionlessDrop(0.3, input(row, 'Re'))));

/** Which code answers which rows. Each row by its name; one without an entry must be in `notCovered` with its reason. */
export const computed: readonly [
  ids: readonly string[],
  value: (row: PublishedRow) => number,
  looserBecause?: [(row: PublishedRow) => number, string],
][] = [
  [['dagan_dp'], creepingHole],
  [
    ['fem_creep_Ld1', 'fem_creep_Ld2', 'fem_creep_Ld3'],
    (row) => dimensionlessDrop(input(row, 'L_over_d'), creepingReynoldsNumber),
  ],
  [
    ['couette_equiv'],
    () => (dimensionlessDrop(1, creepingReynoldsNumber) - 32) / 16,
    [() => 0.02, 'the default law carries the finite-length correction of the ends, the row is the bare sum'],
  ],
  [
    [
      'fem_K_0.5_100',
      'fem_K_0.5_300',
      'fem_K_1_100',
      'fem_K_1_300',
      'fem_K_1_1000',
      'fem_K_2_300',
      'fem_K_2_1000',
      'fem_K_3_100',
      'fem_K_3_300',
    ],
    (row) => {
      const [lengthRatio, reynoldsNumber] = [input(row, 'L_over_d'), input(row, 'Re')];
      const creeping = dimensionlessDrop(lengthRatio, creepingReynoldsNumber);
      return (2 * (dimensionlessDrop(lengthRatio, reynoldsNumber) - creeping)) / reynoldsNumber;
    },
  ],
  [
    [
      'law_default_0.5_0.01',
      'law_default_0.5_1',
      'law_default_0.5_10',
      'law_default_0.5_30',
      'law_default_0.5_100',
      'law_default_0.5_300',
      'law_default_0.5_3000',
      'law_default_1_0.01',
      'law_default_1_0.1',
      'law_default_1_1',
      'law_default_1_10',
      'law_default_1_100',
      'law_default_1_300',
      'law_default_1_1000',
      'law_default_1_3000',
      'law_default_1.5_0.01',
      'law_default_1.5_1',
      'law_default_1.5_10',
      'law_default_1.5_30',
      'law_default_1.5_100',
      'law_default_1.5_300',
      'law_default_1.5_3000',
      'law_default_2_0.01',
      'law_default_2_0.1',
      'law_default_2_1',
      'law_default_2_10',
      'law_default_2_100',
      'law_default_2_300',
      'law_default_2_1000',
      'law_default_2_3000',
      'law_default_3_0.01',
      'law_default_3_1',
      'law_default_3_10',
      'law_default_3_30',
      'law_default_3_100',
      'law_default_3_300',
      'law_default_3_3000',
    ],
    (row) => dimensionlessDrop(input(row, 'L_over_d'), input(row, 'Re'), oneConstantHoleLaw),
  ],
  [
    ['lich_Reh10_x2', 'lich_Reh100_x2', 'lich_Reh1000_x3', 'lich_Reh20000_x2', 'lich_Reh10000_x4'],
    (row) => dischargeCoefficientLichtarowicz(input(row, 'Re_h'), input(row, 'L_over_d')),
  ],
  [['lich_Re1_x2', 'lich_Re10_x2', 'lich_Re1000_x2', 'lich_Re100_x1', 'lich_Re1000_x3'], lichtarowiczAtSpeed],
  [
    ['idelchik_1', 'idelchik_1.5', 'idelchik_2', 'idelchik_3'],
    (row) => lossCoefficientIdelchikThickEdge(input(row, 'L_over_d')),
  ],
  [['annulus_thin_2e-05', 'annulus_thin_0.0001'], annulus],
  [
    ['annulus_exact_2e-05', 'annulus_exact_0.0001'],
    annulus,
    [
      (row) => 0.1 * (input(row, 'diametral_clearance') / 2 / input(row, 'bore_d')) ** 2 + 1e-7,
      'the thin gap leaves out terms of order (h/D)², 1/15 of it by series; the exact form loses digits at 1e-7',
    ],
  ],
  [
    ['ecc_factor'],
    () => {
      const gap = { bore: 0.012, pistonDiameter: 0.0119, length: 0.0025, eccentricity: 0 };
      const off = { ...gap, eccentricity: 0.99 };
      const growth =
        annularGapConductance(off, fluidOf(0.34)) / annularGapConductance(gap, fluidOf(0.34)) - 1;
      return 1 + growth / 0.99 ** 2;
    },
  ],
  [['dash_mid_0.012_2e-05', 'dash_mid_0.012_5e-05', 'dash_mid_0.05_0.0005'], dashpotCoefficient],
  [
    ['dash_exact_0.012_2e-05', 'dash_exact_0.05_0.0005'],
    dashpotCoefficient,
    [(row) => 3 * (input(row, 'd') / input(row, 'D')) ** 2, 'the thin gap leaves out terms of order (h/D)²'],
  ],
  [
    ['dash_rao_0.012_2e-05', 'dash_rao_0.012_5e-05', 'dash_rao_0.05_0.0005'],
    dashpotCoefficient,
    [() => 0.011, 'the textbook formula is itself 0.2 to 1 % below the exact annulus, as the row notes'],
  ],
  [
    ['white_6_4_Q'],
    (row) => {
      // The pipe of the example: gravity makes up for the rest of the pressure difference.
      const [density, gravity] = [input(row, 'rho'), input(row, 'g')];
      const rise = input(row, 'L') * Math.sin((input(row, 'angle_deg') * Math.PI) / 180);
      const drop = input(row, 'p1') - input(row, 'p2') - density * gravity * rise;
      const pipe = { diameter: input(row, 'd'), length: input(row, 'L') };
      const fluid = { density, kinematicViscosity: input(row, 'nu') };
      return (drop / idelchikThickEdgeLaw.resistance(pipe, fluid).creepingSlope) * holeArea(pipe);
    },
  ],
  [
    ['shah_K_0.01', 'shah_K_0.1', 'shah_K_1'],
    profileLoss,
    [() => 0.03, 'the law bends between the two limits of the row in a simpler way'],
  ],
  [
    ['wu_100'],
    sharpDischarge,
    [() => 0.05, 'a plate without thickness, the law at L/d 0.3; coefficients of the row uncertain'],
  ],
  [
    ['cone_R'],
    (row) => {
      const [narrow, wide] = [input(row, 'd1'), input(row, 'd2')];
      return coneResistance(row, creepingCone(narrow, wide, input(row, 'L'), 0));
    },
  ],
  [
    ['cone_creep_total'],
    (row) =>
      coneResistance(
        row,
        coneDrop(input(row, 'd2') / input(row, 'd1'), input(row, 'L') / input(row, 'd1'), 1e-9),
      ),
    [() => 0.015, 'the tube takes 1 % of its ends, the face behind a wide mouth some of its pressure'],
  ],
  [['fem_cone_y0'], (row) => coneDrop(input(row, 'ratio'), input(row, 'L_over_d'), 1e-9)],
  [['fem_cone_K_conv_100', 'fem_cone_K_div_100', 'fem_cone_K_div_300'], coneLoss],
];
