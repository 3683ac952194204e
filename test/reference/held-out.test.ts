import { describe, expect, test } from 'vitest';
import { holePath } from '../../lib/flow/hole/hole-path.js';
import { specificRecoil } from '../../lib/flow/hole/jet-momentum.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import rows from './held-out-rows.json' with { type: 'json' };

// Own solutions (hole.edp, mesh error below 0.1 %) of holes that the law was not fitted to. Their bore slips, as where it moves along with
// the oil, and their pressure before the hole is the static one: the total is a² more, a the share of the bore. The last one, L/d 0.5,
// repeats a hole of the fit for its force.
// Each point: Reynolds number, Euler number to the face behind the hole, force on the piston over its area.
describe.each(rows)(
  'L/d $lengthRatio, holes $areaRatio of the bore',
  ({ lengthRatio, areaRatio, points }) => {
    const path = (reynoldsNumber: number) =>
      holePath(
        { count: 1, diameter: 1 },
        lengthRatio,
        { density: 2, kinematicViscosity: 1 / reynoldsNumber },
        sharpHoleLaw,
        areaRatio,
      );

    test.each(points)('the law meets the face pressure at Re %d', (reynoldsNumber = 0, face = 0) => {
      const law = path(reynoldsNumber).resistance.pressureDrop(1) - areaRatio ** 2;
      // The law was fitted in a pipe that holds the oil. A bore that slips lets a little less pressure back to a face of which the holes take 12 %: 1.5 % of the drop of creeping oil.
      const bound = reynoldsNumber > 30 ? 0.02 : areaRatio > 0.1 ? 0.018 : 0.01;
      expect(Math.abs(law / face - 1)).toBeLessThan(bound);
    });

    test.each(points)(
      'less the recoil of the jet it meets the force at Re %d',
      (reynoldsNumber = 0, _, force = 0) => {
        const { resistance, momentumFlow } = path(reynoldsNumber);
        const recoil = 2 * areaRatio * specificRecoil(momentumFlow(1), 1, areaRatio);
        expect(Math.abs((resistance.pressureDrop(1) - recoil) / force - 1)).toBeLessThan(
          areaRatio > 0.1 ? 0.022 : 0.012,
        );
      },
    );
  },
);
