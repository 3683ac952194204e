import { describe, expect, it } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import type { Block } from '../../lib/page/index.js';
import { assembleShock } from '../../lib/parts/index.js';
import { exactCheck } from '../../notebooks/match/checks.js';
import { frontChecks } from '../../notebooks/what-to-drill/checks.js';
import { files } from './answers.js';

// A check of a page is there to fail. Here each is shown something wrong, and something that is just right.
const passed = (block: Block | undefined): boolean => {
  if (block?.kind !== 'check') throw new Error('no check');
  return block.passed;
};
const [build] = files.demo.builds;
if (build === undefined) throw new Error('no build');

describe('checks fail where the page is wrong', () => {
  it('match: an oil that the page names wrong by more than the step of 1.35^(1/60) to the next one tried', () => {
    const { damper } = assembleShock(build);
    const density = 970;
    const model = damperModel(damper, { kinematicViscosity: 300e-6, density });
    const speeds = [0.03, 0.3];
    const wanted = {
      weights: speeds.map((speed) => ({ speed, weight: 1 })),
      forces: speeds.map((speed) => damperForce(model, { speed, position: 0.012 }).dampingForce),
    };
    const match = { wanted } as unknown as Parameters<typeof exactCheck>[0];
    const said = (steps: number, atLimit = false) =>
      passed(exactCheck(match, damper, density, 300e-6 * 1.35 ** (steps / 60), atLimit));
    for (const steps of [0, 0.9, -0.9]) expect(said(steps), `${steps} steps off`).toBe(true);
    for (const steps of [1.6, -1.6, 20, -20]) expect(said(steps), `${steps} steps off`).toBe(false);
    // Beyond the oils that are sought nothing can be said.
    expect(said(20, true)).toBe(true);
  });

  it('what-to-drill: a design that another beats at both speeds', () => {
    const search = {
      problem: { damper: { gas: { layout: 'emulsion' } } },
      shown: [],
    } as unknown as Parameters<typeof frontChecks>[0];
    const front = (...errors: readonly (readonly [number, number])[]) =>
      frontChecks(
        search,
        errors.map(
          ([slowError, fastError]) => ({ slowError, fastError }) as Parameters<typeof frontChecks>[1][0],
        ),
      )[0];
    expect(passed(front([0.1, 0.3], [0.2, 0.2], [0.3, 0.1]))).toBe(true);
    // Twins beat each other in nothing.
    expect(passed(front([0.1, 0.2], [0.1, 0.2]))).toBe(true);
    for (const beaten of [
      [0.1, 0.4],
      [0.2, 0.3],
      [0.2, 0.4],
    ] as const) {
      expect(passed(front([0.1, 0.3], beaten))).toBe(false);
      expect(passed(front(beaten, [0.1, 0.3]))).toBe(false);
    }
    expect(front([0.1, 0.3], [0.2, 0.4], [0.3, 0.1])).toMatchObject({ detail: '2 of 3 designs' });
  });
});
