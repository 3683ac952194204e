import { describe, expect, it } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import type { DesignProblem, WantedForce } from '../../lib/decisions/design/design-problem.js';
import { designSearch } from '../../lib/decisions/design/design-search.js';
import { finish } from '../../lib/decisions/search/search.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil, type Oil } from '../../lib/fluid/oil/oil.js';
import { paretoFront } from '../../lib/numeric/pareto-front.js';
import { shockWith, silicone } from './demo.js';
import { design } from './design-case.js';

describe('design search', () => {
  it('finds the very piston that the wanted forces came from', () => {
    const model = damperModel(shockWith(4, 1.2e-3), fluidAt(createOil(silicone(350)), 298.15));
    const forces = (speed: number) => ({
      speed,
      compression: oilForce(model, speed),
      rebound: -oilForce(model, -speed),
    });
    const { front, computed } = finish(designSearch({ ...design, slow: forces(0.05), fast: forces(0.5) }));
    expect(front.length).toBe(1);
    expect(front[0]).toMatchObject({ count: 4, drill: 1.2e-3, taper: 0, thickness: 2.5e-3, oil: '350' });
    expect(front[0]?.slowError).toBeLessThan(1e-12);
    expect(computed).toBeGreaterThan(200);
  });

  it('has a front that rises in one error and falls in the other, with what a small error does', () => {
    const { front } = finish(designSearch(design));
    expect(front.length).toBeGreaterThan(1);
    for (const [index, one] of front.entries()) {
      const next = front[index + 1];
      if (next !== undefined) {
        expect(next.slowError).toBeGreaterThan(one.slowError);
        expect(next.fastError).toBeLessThan(one.fastError);
      }
      // The creeping force goes with d⁻⁴ to d⁻³: 0.02 mm of 1.0 to 1.4 mm make 4 to 9 %.
      expect(one.drillChange).toBeGreaterThan(0.04);
      expect(one.drillChange).toBeLessThan(0.09);
      // Barry's law: 5 K below 25 °C make 10.6 % in viscosity, 11.1 % with the density; less in a force that is part inertia.
      expect(one.temperatureChange).toBeGreaterThan(0.05);
      expect(one.temperatureChange).toBeLessThan(0.111);
    }
  });

  it('leaves out holes that a drill off by its error would leave no room, or nothing of', () => {
    const asked = (drill: number, drillError: number) =>
      finish(designSearch({ ...design, counts: [1], drills: [drill], tapers: [0], drillError })).computed;
    // One hole of 0.3 mm is drilled with an error of 0.2 mm, and not with one of 0.3 mm.
    expect(asked(0.3e-3, 0.2e-3)).toBeGreaterThan(0);
    expect(asked(0.3e-3, 0.3e-3)).toBe(0);
    // A hole of 3.5 mm lies between a shaft of 3 mm and a rim of 12 mm; one of 5 mm does not.
    expect(asked(3.5e-3, 0.02e-3)).toBeGreaterThan(0);
    expect(asked(3.5e-3, 1.5e-3)).toBe(0);
  });

  it('leaves out holes that find no room', () => {
    const { unfit, computed } = finish(
      designSearch({ ...design, counts: [12], drills: [2.2e-3], tapers: [0] }),
    );
    expect(unfit).toBe(6);
    expect(computed).toBe(0);
  });

  it('the Pareto front of a handful is the one found by hand', () => {
    const points = [
      [3, 1],
      [1, 3],
      [2, 2],
      [2, 3],
      [3, 3],
      [1, 3],
    ] as const;
    expect(paretoFront(points, (point) => point)).toEqual([
      [1, 3],
      [2, 2],
      [3, 1],
    ]);
  });

  it('has no front of costs that cannot be compared', () => {
    const front = (costs: unknown) => () =>
      paretoFront([1, 2], (member) => (member === 1 ? [1, 2] : costs) as number[]);
    expect(front([2, Number.POSITIVE_INFINITY])()).toEqual([1]);
    expect(front([1, Number.NaN])).toThrow('costs(members[1])[1] must be a number, got NaN');
    expect(front([1])).toThrow('number of costs must be 2, the same for all members, got 1');
    expect(front(3)).toThrow('costs(members[1]) must be a list');
  });

  it('refuses nothing to try', () => {
    expect(() => finish(designSearch({ ...design, oils: [] }))).toThrow('oils must be 1 or more');
    expect(() => finish(designSearch({ ...design, slow: { ...design.slow, rebound: 0 } }))).toThrow(
      'slow.rebound',
    );
  });
});

describe('design search against every design worked out one by one', () => {
  type Sizes = readonly [count: number, drill: number, taper: number, thickness: number];

  /** Slow compression, slow rebound, fast compression, fast rebound [N], by the public force law at half stroke. */
  function fourForces(
    problem: DesignProblem,
    sizes: Sizes,
    oil: Oil,
    temperature: number,
  ): readonly number[] {
    const [count, drill, taper, thickness] = sizes;
    const shaftSideDiameter = drill + taper / 2;
    const hole = taper === 0 ? {} : { shape: { kind: 'conical', shaftSideDiameter } as const };
    const holes = [{ count, diameter: drill - taper / 2, ...hole }];
    const { diameter, eccentricity } = problem.damper.piston;
    const damper = { ...problem.damper, piston: { diameter, eccentricity, thickness, holes } };
    const model = damperModel(damper, fluidAt(oil, temperature));
    const at = (speed: number) =>
      Math.abs(damperForce(model, { speed, position: damper.stroke / 2 }).dampingForce);
    return [problem.slow, problem.fast].flatMap(({ speed }) => [at(speed), at(-speed)]);
  }

  /** How many times as large the larger of two is, less 1. */
  const apart = (a: number, b: number): number => Math.max(a / b, b / a) - 1;

  function bruteForce(problem: DesignProblem) {
    const { counts, drills, tapers, thicknesses, oils, temperature, drillError, temperatureError } = problem;
    const both = ({ compression, rebound }: WantedForce) => [compression, rebound];
    const wanted = [...both(problem.slow), ...both(problem.fast)];
    const all = oils.flatMap(({ name, oil }) =>
      counts.flatMap((count) =>
        drills.flatMap((drill) =>
          tapers.flatMap((taper) =>
            thicknesses.map((thickness) => {
              const sizes: Sizes = [count, drill, taper, thickness];
              const forces = fourForces(problem, sizes, oil, temperature);
              const [a = 0, b = 0, c = 0, d = 0] = forces.map((force, at) => apart(force, wanted[at] ?? 0));
              return { name, oil, sizes, forces, slow: Math.max(a, b), fast: Math.max(c, d) };
            }),
          ),
        ),
      ),
    );
    const front = all.filter(
      (one) =>
        !all.some(
          ({ slow, fast }) => slow <= one.slow && fast <= one.fast && (slow < one.slow || fast < one.fast),
        ),
    );
    const change = (from: readonly number[], to: readonly number[]): number =>
      Math.max(...from.map((force, at) => apart(to[at] ?? 0, force)));
    return front
      .sort((a, b) => a.slow - b.slow)
      .map(({ name, oil, sizes, forces, slow, fast }) => {
        const [count, drill, ...others] = sizes;
        const drilled = [drillError, -drillError].map((error) =>
          change(forces, fourForces(problem, [count, drill + error, ...others], oil, temperature)),
        );
        const warmed = [temperatureError, -temperatureError].map((error) =>
          change(forces, fourForces(problem, sizes, oil, temperature + error)),
        );
        return { name, sizes, forces, errors: [slow, fast, Math.max(...drilled), Math.max(...warmed)] };
      });
  }

  it.each([
    ['more slow, less fast', {}],
    ['all of it in rebound', { slow: { speed: 0.1, compression: 1.5, rebound: 6 } }],
    [
      'a wide choice of tapers',
      { tapers: [-0.3e-3, -0.1e-3, 0, 0.1e-3, 0.3e-3], counts: [3, 4], thicknesses: [2.5e-3] },
    ],
  ] as const)('%s: the same front, forces and robustness', (_case, change) => {
    const problem: DesignProblem = { ...design, ...change };
    const expected = bruteForce(problem);
    const { front, computed, unfit } = finish(designSearch(problem));
    expect(computed).toBe(
      problem.oils.length *
        problem.counts.length *
        problem.drills.length *
        problem.tapers.length *
        problem.thicknesses.length,
    );
    expect(unfit).toBe(0);
    expect(front.length).toBeGreaterThan(2);
    expect(
      front.map(({ oil, count, drill, taper, thickness }) => [oil, count, drill, taper, thickness]),
    ).toEqual(expected.map(({ name, sizes }) => [name, ...sizes]));
    for (const [place, one] of front.entries()) {
      const { forces, errors } = expected[place] ?? { forces: [], errors: [] };
      const made = [one.slow.compression, one.slow.rebound, one.fast.compression, one.fast.rebound];
      const found = [one.slowError, one.fastError, one.drillChange, one.temperatureChange];
      // Forces are the same arithmetic; errors go through a logarithm and back.
      for (const [at, force] of made.entries()) expect(force / (forces[at] ?? 0)).toBeCloseTo(1, 12);
      for (const [at, error] of found.entries()) expect(error).toBeCloseTo(errors[at] ?? 0, 10);
    }
  });

  it('looks at none of the holes and valves of the piston that the shock has now', () => {
    const other = { ...design.damper, piston: { ...design.damper.piston, holes: [], thickness: 9e-3 } };
    expect(finish(designSearch({ ...design, damper: other }))).toEqual(finish(designSearch(design)));
  });
});
