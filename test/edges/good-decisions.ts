import * as decisions from '../../lib/decisions/index.js';
import { createOil } from '../../lib/index.js';
import { shockWith } from '../decisions/demo.js';
import { design } from '../decisions/design-case.js';
import { problem } from '../decisions/order-case.js';
import { free, type GoodCalls, whole } from './good-call.js';
import { damper, fluid, model, oil, point } from './good-core.js';

const weights = [
  { speed: 0.05, weight: 1 },
  { speed: 0.3, weight: 2 },
];
const wanted = decisions.dampingOf(model, weights);
const bottles = [
  { name: 'thin', oil, volume: 60e-6, price: 8 },
  {
    name: 'thick',
    oil: whole(
      createOil({
        base: 'silicone',
        viscosity: { kind: 'silicone', point: { ...point, kinematicViscosity: 500e-6 } },
      }),
    ),
    volume: 60e-6,
    price: 9,
  },
];
const choice = { first: 0, second: 1, secondShare: 1 };
const shocks = ['a', 'b', 'c'].map((name, index) => ({
  name,
  damping: 1 + index / 10,
  relativeUncertainty: 0.02,
}));
const corner = { sprungMass: 0.34, motionRatio: 0.7, springRate: 600 };
const build: decisions.TolerancedBuild = {
  damper: whole(shockWith(4, 1.2e-3)),
  oil,
  temperature: 298.15,
  position: 0.0125,
  speeds: [-0.05, -0.3],
  tolerances: {
    holeDiameter: { kind: 'normal', standardDeviation: 0.02e-3 },
    viscosity: { kind: 'uniform', halfWidth: 0.05 },
    temperature: { kind: 'exact' },
  },
};
const blend = {
  pair: { first: oil, second: bottles[1]?.oil ?? oil },
  temperature: 298.15,
  measured: { temperature: 298.15, secondVolumeFraction: 0.5, kinematicViscosity: 420e-6 },
};
const cube: decisions.UnitCubeModel = {
  inputs: 2,
  outputs: 1,
  evaluate: (at, out) => {
    out[0] = (at[0] ?? 0) + 2 * (at[1] ?? 0);
  },
};
const some = problem({
  bottles,
  temperatures: [298.15],
  fills: 2,
  parts: 1,
  owned: [1, 0],
  tolerance: 0.5,
});
const twoStates = { ...some, builds: some.builds.map((one) => ({ ...one, damper: whole(one.damper) })) };
function* search(): decisions.Search<number> {
  yield 0.5;
  return 1;
}

/** Calls of the entry of decisions. */
export const decisionCalls: GoodCalls = {
  bestPairing: [[shocks, 0.05]],
  betweenReadings: [
    [
      [
        { time: 0, temperature: 290 },
        { time: 3600, temperature: 300 },
      ],
      600,
    ],
  ],
  blendPlan: [[blend, 420e-6, 5e-5]],
  comparedShocks: [[shocks[0], shocks[1], 0.05]],
  cornerMotion: [[corner]],
  dampingMismatch: [[model, wanted]],
  dampingOf: [[model, weights]],
  dampingRatio: [[corner, 20]],
  dayPlan: [
    [
      {
        bottles,
        damper: whole({ ...damper }),
        parts: 1,
        temperatures: [
          { time: 0, temperature: 290 },
          { time: 3600, temperature: 300 },
        ],
        wanted,
        worthwhile: 0.1,
      },
    ],
  ],
  designSearch: [
    [
      {
        ...design,
        counts: [3],
        drills: [1.2e-3],
        tapers: [0],
        thicknesses: [2.5e-3],
        oils: [{ name: 'one', oil }],
      },
    ],
  ],
  drilledShock: [['a', shockWith(4, 1.2e-3), fluid, -0.1, 1e-5]],
  fillChoices: [[bottles, 2]],
  fillName: [[bottles, choice, 2]],
  fillState: [[bottles, { ...choice, secondShare: 0.5 }, 298.15]],
  finish: [[search()]],
  finishInSlices: [],
  forceDraws: [[build, { count: 8, seed: 1, sampling: 'low-discrepancy' }]],
  forceSpread: [[build, { count: 8, seed: 1, sampling: 'low-discrepancy' }]],
  matchViscosity: [[{ damper: whole(shockWith(4, 1.2e-3)), density: 970, wanted }]],
  orderPlan: [[twoStates]],
  paretoFront: [
    [[free({ cost: 1 }), free({ cost: 2 })], ({ cost }: { readonly cost: number }) => [cost, -cost]],
  ],
  rankedPairs: [[shocks, 0.05]],
  reloadedCorner: [[corner, 0.4]],
  scaledDamping: [[wanted, 1.1]],
  sensitivityIndices: [[whole(cube), 16, 1]],
  sobolSequence: [[3, 1]],
  speedRange: [[0.05, 1, 3]],
  swingLeft: [[0.4]],
  timedShock: [['a', [4, 4.1], 0.1]],
  toleranceModel: [[build]],
  toleranceShares: [[build, 8, 1]],
  viscosityWindow: [[{ damper: whole(shockWith(4, 1.2e-3)), density: 970, wanted }, 0.1]],
};
