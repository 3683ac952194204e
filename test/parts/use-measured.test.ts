import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { fitShock } from '../../lib/measure/fit/fit-shock.js';
import { asMeasured } from '../../lib/parts/as-measured.js';
import { assembleShock, type Build, type Parts, readParts } from '../../lib/parts/index.js';
import { measuredProblem } from '../../lib/parts/measured-problem.js';
import { measuredValues, useMeasured } from '../../lib/parts/use-measured.js';

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const stated = readParts(demo);
const used = readParts(useMeasured(demo));
const buildOf = ({ builds }: Parts, name: string): Build => {
  const build = builds.find((one) => one.name === name);
  if (build === undefined) throw new Error(`no ${name}`);
  return build;
};

/** Damping of a build at 294.15 K [N]. */
function damping(build: Build, speed: number, temperature = 294.15): number {
  const model = damperModel(
    assembleShock(build).damper,
    fluidAt(createOil(build.oil.definition), temperature),
  );
  return damperForce(model, { speed, position: build.shock.stroke / 2 }).dampingForce;
}

describe('a build as measured', () => {
  const [before, after] = [buildOf(stated, 'buggy rear'), buildOf(used, 'buggy rear')];

  test('damps as the fit of its readings does, at every speed', () => {
    const { problem } = measuredProblem(stated, before, stated.measurements ?? []);
    const { state } = fitShock(problem);
    const warm = problem.law(state).at(294.15 + state.thermometerError);
    for (const speed of [0.01, 0.1, 0.3, -0.3]) {
      const fitted = warm.dampingForce(speed, before.shock.stroke / 2);
      // The gap, which no reading tells, stays as stated; the file has four digits.
      expect(damping(after, speed) / fitted).toBeCloseTo(1, 2);
    }
    expect(after.shock.seal.typical.kineticForce).toBeCloseTo(state.friction, 3);
    expect(after.shock.seal.measured).toBe(true);
  });

  test('lies between its two shocks, thinner and softer than stated', () => {
    // The invented truth: 338 cSt where the label says 350, holes 8 µm and 60 µm larger than drilled.
    const through = (larger: number): number => 338 * ((1.3e-3 + larger) / 1.3e-3) ** 3.8;
    expect(through(8e-6)).toBeGreaterThan(338);
    expect(damping(after, 0.1)).toBeLessThan(damping(before, 0.1));
    expect(after.measured?.holes).toBeGreaterThan(1);
    expect(after.measured?.viscosity).toBeLessThan(350e-6);
  });

  test('its parts have names of their own, and all others are as they were', () => {
    expect(after.oil.name).toBe(`${before.oil.name}, as measured in buggy rear`);
    expect(used.oils).toHaveLength(stated.oils.length + 1);
    expect(used.oils.slice(0, -1)).toEqual(stated.oils);
    expect(after.oil.bottle).toBeUndefined();
    // It feels right on its own oil, which is the one that was measured.
    expect(before.wanted?.oil).toBe(before.oil);
    expect(after.wanted?.oil).toBe(after.oil);
    expect(used.pistons.at(-1)).toBe(after.piston);
    expect(used.shocks.at(-1)).toBe(after.shock);
    expect(buildOf(used, 'buggy front')).toEqual(buildOf(stated, 'buggy front'));
    // What was measured is fitted about the parts as stated, again and again to the same.
    expect(used.measurements).toEqual(stated.measurements);
    expect(useMeasured(useMeasured(demo))).toBe(useMeasured(demo));
  });

  test('more measured viscosity, holes or friction do what they must', () => {
    const values = { viscosity: 350e-6, holes: 1, friction: 0.2, doubt: 0.05 };
    const of = (changes: Partial<typeof values>) => asMeasured(before, { ...values, ...changes });
    expect(damping(of({}), 0.1)).toBeCloseTo(damping(before, 0.1), 6);
    // So slowly damping goes with the viscosity.
    expect(damping(of({ viscosity: 385e-6 }), 0.001) / damping(before, 0.001)).toBeCloseTo(1.1, 3);
    // And with the holes to about the power −3.8.
    expect(damping(of({ holes: 1.01 }), 0.001) / damping(before, 0.001)).toBeCloseTo(1.01 ** -3.8, 2);
    const { kineticForce, breakawayForce } = of({ friction: 0.4 }).shock.seal.typical;
    const { typical } = before.shock.seal;
    expect(kineticForce).toBe(0.4);
    expect(breakawayForce / kineticForce).toBeCloseTo(typical.breakawayForce / typical.kineticForce, 12);
  });

  test('changes with temperature as the label says, silicone or not', () => {
    const viscosities = (build: Build) =>
      [278.15, 298.15, 318.15].map(
        (kelvin) => fluidAt(createOil(build.oil.definition), kelvin).kinematicViscosity,
      );
    const values = { viscosity: 385e-6, holes: 1, friction: 0.2, doubt: 0.05 };
    viscosities(asMeasured(before, values)).forEach((value, index) => {
      expect(value / (viscosities(before)[index] ?? 0)).toBeCloseTo(1.1, 9);
    });
    const mineral: Build = {
      ...before,
      oil: {
        name: 'mineral',
        definition: {
          base: 'petroleum',
          viscosity: {
            kind: 'viscosity-index',
            point: { temperature: 313.15, kinematicViscosity: 150e-6 },
            viscosityIndex: 120,
          },
        },
      },
    };
    const at25 = viscosities(mineral)[1] ?? 0;
    viscosities(asMeasured(mineral, { ...values, viscosity: 1.1 * at25 })).forEach((value, index) => {
      expect(Math.abs(value / (viscosities(mineral)[index] ?? 0) / 1.1 - 1)).toBeLessThan(0.005);
    });
  });

  test('slower times make it thicker, and fewer readings more doubtful', () => {
    const front = stated.measurements?.slice(0, 2) ?? [];
    const slower = front.map((one) => ({
      ...one,
      readings: one.readings.map((reading) =>
        reading.kind === 'drop' ? { ...reading, times: reading.times.map((time) => 1.2 * time) } : reading,
      ),
    }));
    const [usual, slow, one] = [front, slower, front.slice(0, 1)].map((some) =>
      measuredValues(stated, before, some),
    );
    expect(slow?.viscosity).toBeGreaterThan(usual?.viscosity ?? 0);
    expect(one?.doubt).toBeGreaterThan(usual?.doubt ?? 1);
  });
});

describe('what is refused', () => {
  test('a file without measurements or builds, and values that no shock has', () => {
    expect(() => useMeasured('dashpot: 1\n')).toThrow('no "measurements"');
    const wrong = (text: string) => () =>
      readParts(demo.replace('\n  - name: buggy rear\n', `\n  - name: buggy rear\n    measured: ${text}\n`));
    expect(wrong('{ viscosity: 338, holes: 1, friction: 0.2 N, doubt: 4 % }')).toThrow('measured.viscosity');
    expect(wrong('{ viscosity: 338 cSt, holes: 2, friction: 0.2 N, doubt: 4 % }')).toThrow(
      'a number from 0.8 to 1.25',
    );
    expect(wrong('{ viscosity: 338 cSt, holes: 1, friction: 0.2 N, doubt: 4 % }')).not.toThrow();
  });
});

test('a tolerance that no gauge tells from nought leaves what is usual, as one of nought does; one of 0.1 mm does not', () => {
  const build = buildOf(stated, 'buggy rear');
  const doubts = (length: number, viscosity: number) =>
    measuredProblem(
      { tolerances: { holeDiameter: length, gap: length, viscosity } },
      build,
      [],
    ).problem.unknowns.map(({ quantity, prior }) => [quantity, prior?.standardDeviation]);
  expect(doubts(1e-111, 1e-200)).toEqual(doubts(0, 0));
  // ± 0.1 mm, each value as likely: 0.1 mm/√3.
  const [[, hole = 0] = []] = doubts(1e-4, 0.05).filter(([quantity]) => quantity === 'holeDiameter') as [
    string,
    number,
  ][];
  const diameter = build.piston.piston.holes[0]?.diameter ?? 0;
  expect(hole * diameter).toBeCloseTo(1e-4 / Math.sqrt(3), 9);
});
