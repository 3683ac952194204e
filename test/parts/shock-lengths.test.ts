import { describe, expect, it } from 'vitest';
import { assembleShock, lengthsOf } from '../../lib/parts/index.js';
import { buildWith, inside } from './one-statement.js';

describe('lengths', () => {
  const lengths =
    '    lengths: { body-eyelet: 50 mm, shaft: 42 mm, seal-stack: 9 mm, rod-end: 8 mm, droop-spacers: 1 mm }\n';

  it('are read, with the piston travel from the inside', () => {
    const build = buildWith(inside + lengths);
    expect(lengthsOf(build.shock, build.piston)).toEqual({
      bodyEyelet: 0.05,
      shaft: 0.042,
      sealStack: 0.009,
      rodEnd: 0.008,
      innerSpacers: 0.001,
      bumpStop: 0,
      pistonTravel: 0.034 - 0.0025,
    });
    expect(assembleShock(build).closed.chamber.shaftInside).toBe(0.001);
  });

  it('are read with the piston travel that was measured', () => {
    const { shock, piston } = buildWith(inside + lengths.replace(' }', ', piston-travel: 29 mm }'));
    expect(lengthsOf(shock, piston)?.pistonTravel).toBe(0.029);
  });

  it('without the inside, let the piston travel the stroke', () => {
    const { shock, piston } = buildWith(lengths);
    expect(lengthsOf(shock, piston)?.pistonTravel).toBeCloseTo(0.025, 12);
    expect(lengthsOf(buildWith('').shock, piston)).toBeUndefined();
  });
});
