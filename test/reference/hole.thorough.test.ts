import { describe, expect, test } from 'vitest';
import { shapedHoleResistance } from '../../lib/flow/hole/shaped-hole.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import { holeWall, turnedRound } from './hole-wall.js';
import { haveFreeFem, solveHole } from './solve-hole.js';

// On this coarse mesh (about 700 cells) the solutions are within 0.3 % of those on the fine one (about 6500).
const meshFactor = 3;
const meshError = 0.003;

describe.skipIf(!haveFreeFem)(
  'own numerical reference (skipped without FreeFem++, Debian package freefem++)',
  () => {
    test('a sharp hole gives the rows of the fine mesh again, and the law its 1 %', () => {
      // L/d 1, hole over bore diameter 0.2: Eu to the face and force over area, mesh factor 1.
      const fine = new Map([
        [0.1, [1016.674, 1010.268]],
        [30, [4.90009, 4.80362]],
        [100, [2.82968, 2.73462]],
      ]);
      const rows = solveHole({
        wall: [
          [0, 0.5],
          [1, 0.5],
        ],
        boreRadius: 2.5,
        reynoldsNumbers: [...fine.keys()],
        meshFactor,
      });
      expect(rows).toHaveLength(3);
      for (const { reynoldsNumber, eulerFace, eulerForce } of rows) {
        const [face = 0, force = 0] = fine.get(reynoldsNumber) ?? [];
        expect(Math.abs(eulerFace / face - 1)).toBeLessThan(meshError);
        expect(Math.abs(eulerForce / force - 1)).toBeLessThan(meshError);
        const fluid = { density: 2, kinematicViscosity: 1 / reynoldsNumber };
        const law = sharpHoleLaw.resistance({ diameter: 1, length: 1 }, fluid).pressureDrop(1);
        expect(Math.abs(law / eulerFace - 1)).toBeLessThan(0.01 + meshError);
        // The piston feels the face pressure less the momentum of the jet: 2 b (1.2 − b) of its dynamic pressure, b the area ratio.
        const recoil = 2 * 0.04 * (1.2 - 0.04);
        expect(Math.abs((law - recoil) / eulerForce - 1)).toBeLessThan(0.015 + meshError);
      }
    });

    test('a tapered hole not solved before, both ways', () => {
      const shape = { kind: 'conical', shaftSideDiameter: 1.2 } as const;
      const wall = holeWall(1, 1.5, shape);
      for (const turned of [false, true]) {
        const rows = solveHole({
          wall: turned ? turnedRound(wall) : wall,
          boreRadius: 2.2,
          reynoldsNumbers: [1, 40],
          meshFactor,
        });
        expect(rows).toHaveLength(2);
        for (const { reynoldsNumber, eulerFace } of rows) {
          const fluid = { density: 2, kinematicViscosity: 1 / reynoldsNumber };
          const law = shapedHoleResistance(1, shape, 1.5, fluid).pressureDrop(turned ? -1 : 1);
          expect(Math.abs(Math.abs(law) / eulerFace - 1)).toBeLessThan(0.075 + meshError);
        }
      }
    });

    test('a Carreau oil: within 6 % of the law that takes the viscosity at the tube wall', async () => {
      const { thinningResistance } = await import('../../lib/flow/hole/thinning-hole.js');
      const thinning = { kind: 'carreau-yasuda', time: 0.2, exponent: 0.6, bend: 2, floor: 0 } as const;
      const rows = solveHole({
        wall: [
          [0, 0.5],
          [2, 0.5],
        ],
        boreRadius: 2.5,
        reynoldsNumbers: [1, 20],
        meshFactor,
        thinning: { exponent: thinning.exponent, time: thinning.time },
      });
      expect(rows).toHaveLength(2);
      for (const { reynoldsNumber, eulerFace } of rows) {
        const bind = (fluid: { density: number; kinematicViscosity: number }) =>
          sharpHoleLaw.resistance({ diameter: 1, length: 2 }, fluid);
        const fluid = { density: 2, kinematicViscosity: 1 / reynoldsNumber };
        const law = thinningResistance(bind, 1, fluid, thinning).pressureDrop(1);
        expect(Math.abs(law / eulerFace - 1)).toBeLessThan(0.06);
      }
    });
  },
);
