import { expect, test } from 'vitest';
import { largeFlows } from './unsteady-large.js';

test('five flows with inertia were solved, and the mass leaves a fifth to two fifths of the error of steady laws', () => {
  const flows = largeFlows();
  expect(flows).toHaveLength(5);
  for (const { rows, steadyLaw, withApparentMass, meshAndStep } of flows) {
    expect(rows).toBeGreaterThan(18);
    for (const of of ['force', 'drop'] as const) {
      expect(meshAndStep[of]).toBeLessThan(0.0005);
      const left = withApparentMass[of] / steadyLaw[of];
      expect(left).toBeGreaterThan(0.15);
      expect(left).toBeLessThan(0.45);
    }
  }
});
