import { expect, test } from 'vitest';
import { pistonFlow } from '../../lib/flow/piston/piston-flow.js';
import { holesUnderDisc } from '../../lib/flow/valve/holes-in-row.js';

test('two hole sizes under one disc share its flow: at rest by their conductances, and what goes through both adds up', () => {
  const piston = {
    diameter: 0.01195,
    thickness: 0.0025,
    holes: [
      { count: 2, diameter: 1.2e-3 },
      { count: 3, diameter: 1.5e-3 },
    ],
    eccentricity: 0,
  };
  const { paths } = pistonFlow(piston, 0.012, { density: 970, kinematicViscosity: 3e-4 });
  const out = new Float64Array(2);
  const under = holesUnderDisc(paths, -1);
  under(0, out);
  const conductances = paths.map(({ area, resistance }) => area / resistance.creepingSlope);
  expect(out[0]).toBe(0);
  expect((out[1] ?? 0) * ((conductances[0] ?? 0) + (conductances[1] ?? 0))).toBeCloseTo(1, 12);
  under(2e-6, out);
  const [drop = 0, slope = 0] = out;
  const through = (pressure: number) =>
    paths.reduce((sum, { area, resistance }) => sum - area * resistance.meanSpeed(-pressure), 0);
  expect(through(drop) / 2e-6).toBeCloseTo(1, 9);
  expect(((through(1.001 * drop) - through(0.999 * drop)) / (0.002 * drop)) * slope).toBeCloseTo(1, 5);
});
