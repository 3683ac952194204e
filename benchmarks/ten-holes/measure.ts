import type { Damper } from '../../lib/damper/damper.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { forceVelocityCurve, symmetricSpeeds } from '../../lib/damper/force-velocity.js';
import type { Piston } from '../../lib/flow/geometry/piston.js';
import { sealedGas } from '../../lib/gas/gas.js';

const damper = (piston: Omit<Piston, 'diameter' | 'thickness' | 'eccentricity'>): Damper => ({
  bore: 0.016,
  shaftDiameter: 0.003,
  stroke: 0.03,
  piston: { diameter: 0.01595, thickness: 0.0025, eccentricity: 0.2, ...piston },
  gas: sealedGas({ volume: 2e-6, pressure: 2e6, polytropicExponent: 1.4, ambientPressure: 1e5 }),
  seal: { kineticForce: 0.2, breakawayForce: 0.3 },
});
const unlike = Array.from({ length: 9 }, (_, index) => ({ count: 1, diameter: (0.8 + 0.07 * index) * 1e-3 }));
const valve = {
  face: 'shaft-side',
  covers: [9],
  outerDiameter: 0.0125,
  clampDiameter: 0.007,
  thickness: 1e-4,
  count: 1,
  elasticModulus: 4e9,
  poissonRatio: 0.3,
  preload: 1e-5,
} as const;
const cases = {
  plain: damper({ holes: [{ count: 4, diameter: 1.3e-3 }] }),
  'two sizes': damper({
    holes: [
      { count: 2, diameter: 1.3e-3 },
      { count: 2, diameter: 1.1e-3 },
    ],
  }),
  'ten unlike, one valve': damper({
    holes: [...unlike, { count: 1, diameter: 1.5e-3, pitchDiameter: 0.01 }],
    valves: [valve],
  }),
};
const oil = { kinematicViscosity: 3.5e-4, density: 970 };
const speeds = symmetricSpeeds(1, 100);

const models = Object.entries(cases).map(([name, one]) => ({
  name,
  model: damperModel(one, oil),
  best: 1e9,
}));
const repeats = 20;
for (let round = 0; round < 60; round++) {
  // In turn, so that a busy machine slows all of them alike.
  for (const one of models) {
    const start = performance.now();
    for (let repeat = 0; repeat < repeats; repeat++) forceVelocityCurve(one.model, speeds, 0.01);
    one.best = Math.min(one.best, (performance.now() - start) / repeats);
  }
}
const plain = models[0]?.best ?? 1;
for (const { name, best } of models) {
  console.log(
    `${name.padEnd(24)} ${(1000 * best).toFixed(0).padStart(6)} µs   ${(best / plain).toFixed(1)} x`,
  );
}
