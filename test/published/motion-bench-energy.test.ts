import { describe, test } from 'vitest';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import { strokeFigures } from '../../lib/motion/bench/stroke-figures.js';
import type { MovingShock } from '../../lib/motion/shock/moving-shock.js';
import { linearShock } from '../motion/linear-shock.js';
import { stroke } from './bench-sine.js';
import { expectRow, motionRow, number } from './motion-rows.js';

describe('energy of a cycle on the bench', () => {
  const figures = (id: string, shock: MovingShock) => {
    const row = motionRow(id);
    const each = stroke(number(row, 'f'), number(row, 'X'));
    const result = benchStroke(shock, each, { tolerance: 1e-9 });
    return [row, result.cycles[0]?.work ?? 0, strokeFigures(result, each).equivalentDamping] as const;
  };

  test('cycle_viscous', () => {
    const c = number(motionRow('cycle_viscous'), 'c');
    const [row, work] = figures('cycle_viscous', linearShock({ rimDrag: (v) => c * v }));
    expectRow(row, [work]);
  });

  test('cycle_quadratic', () => {
    const a = number(motionRow('cycle_quadratic'), 'a');
    const [row, work, damping] = figures(
      'cycle_quadratic',
      linearShock({ rimDrag: (v) => a * v * Math.abs(v) }),
    );
    expectRow(row, [work, damping]);
  });

  test('cycle_coulomb', () => {
    const force = number(motionRow('cycle_coulomb'), 'F');
    const [row, work, damping] = figures(
      'cycle_coulomb',
      linearShock({ sealForce: (v) => force * Math.sign(v) }),
    );
    expectRow(row, [work, damping]);
  });

  // A stroke so small that the chamber is a linear spring; work goes with its square, stiffness does not.
  test('maxwell_loop', () => {
    const row = motionRow('maxwell_loop');
    const amplitude = 1e-7;
    const pistonArea = 1.1e-4;
    const spring = number(row, 'springRate');
    const volume = 3e-6 + pistonArea * 0.012;
    const shock = linearShock({
      passage: (drop, passage) => {
        passage.flow = (drop * pistonArea ** 2) / number(row, 'c');
        passage.recoil = 0;
      },
      shaftArea: 1e-12,
      oil: {
        volume: 1e-5,
        referencePressure: 101_325,
        bulkModulus: (spring * volume) / pistonArea ** 2,
        airFraction: 0,
        airExponent: 1,
      },
    });
    const each = stroke(number(row, 'f'), amplitude, 2);
    const result = benchStroke(shock, each, { tolerance: 1e-10 });
    const scale = (number(row, 'X') / amplitude) ** 2;
    const { dynamicStiffness } = strokeFigures(result, each);
    expectRow(row, [(result.cycles[1]?.work ?? 0) * scale, dynamicStiffness]);
  });
});
