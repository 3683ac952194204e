import { Matrix, pseudoInverse } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { type Candidate, nextMeasurement } from '../../lib/measure/answer/next-measurement.js';
import type { MeasuredShockProblem } from '../../lib/measure/fit/fit-problem.js';
import type { Unknown } from '../../lib/measure/fit/unknown.js';
import { exactInstruments } from '../../lib/measure/model/shock-state.js';
import { predictionOf } from '../../lib/measure/reading/prediction.js';
import { differenceJacobian } from '../../lib/numeric/least-squares/difference-jacobian.js';
import { normalQuantile } from '../../lib/numeric/normal-distribution.js';
import { samplePoints } from '../../lib/numeric/samples.js';
import checks from '../published/measure-checks.json' with { type: 'json' };
import {
  allEight,
  checkRow,
  inventedLaw,
  problemB,
  type RowObservation,
  type RowValues,
  readingOfRow,
  stateOfRow,
} from './invented-shock.js';

const drops = (by: string, mass: number, count: number, u: number, T = 295.15): readonly RowObservation[] =>
  Array.from({ length: count }, () => ({ kind: 'drop', by, mass, T, u }));

const rows: Readonly<Record<string, readonly RowObservation[]>> = {
  'stopwatch 50 g x5': drops('stopwatch', 0.05, 5, 0.1),
  'stopwatch 100 g x5': drops('stopwatch', 0.1, 5, 0.1),
  'video 50 g x3': drops('video240', 0.05, 3, 0.008),
  'video 100 g x3': drops('video240', 0.1, 3, 0.008),
  'video 200 g x3': drops('video240', 0.2, 3, 0.008),
  'video 50 g at 8 C x3': drops('video240', 0.05, 3, 0.008, 281.15),
  'scale, 3 places': [0.005, 0.014, 0.024].flatMap((x) => [
    { kind: 'scaleIn', x, u: 0.02 },
    { kind: 'scaleOut', x, u: 0.02 },
  ]),
  'falling ball': [{ kind: 'ball', T: 295.15, u: 0.03 }],
  'pin gauge': [{ kind: 'pin', u: 5e-6 }],
};

type One = Record<string, { after: number; minutes: number; lnGainPerMinute: number }>;
interface Expected {
  readonly start: number;
  readonly one: One;
  readonly bestPairs: readonly (readonly [number, string, string])[];
  readonly cold: { readonly start: number; readonly one: Record<string, number> };
}
const { inputs, expected } = checkRow<{ minutes: Record<string, number> }, Expected>('shock-next');
const truth = checkRow<{ true: RowValues }, unknown>('shock-force').inputs.true;
const parameters = allEight.map((name) => truth[name] ?? 0);
const candidates: readonly Candidate[] = Object.entries(rows).map(([name, observations]) => ({
  name,
  minutes: inputs.minutes[name] ?? 0,
  readings: observations.map((row) => readingOfRow(row, 1)),
}));
const start = problemB(rows['stopwatch 50 g x5'] ?? [], [2, 2, 2, 2, 2]);
const question = { speeds: [0.3], position: 0.014, temperature: 295.15, lawDeviation: 0 };

describe('after five drops of 50 g by hand', () => {
  const advice = nextMeasurement(start, [parameters], candidates, question);

  test('the doubt left by each candidate, as computed by NumPy', () => {
    expect(advice.now / expected.start).toBeCloseTo(1, 4);
    expect(advice.singles).toHaveLength(9);
    for (const { names, after, minutes, gainPerMinute } of advice.singles) {
      const row = expected.one[names[0] ?? ''];
      expect(after / (row?.after ?? 0), names[0]).toBeCloseTo(1, 3);
      expect(minutes).toBe(row?.minutes);
      expect(Math.abs(gainPerMinute - (row?.lnGainPerMinute ?? 0))).toBeLessThan(1e-4);
    }
    expect(advice.singles[0]?.names).toEqual(['video 200 g x3']);
    expect(advice.next.names).toEqual(['video 200 g x3']);
    expect(advice.enough).toBe(false);
  });

  test('filming the same weight brings nothing; a heavier one brings most', () => {
    const left = (name: string) => advice.singles.find(({ names }) => names[0] === name)?.after ?? 0;
    expect(left('video 50 g x3') / advice.now).toBeGreaterThan(0.999);
    expect(left('video 200 g x3') / advice.now).toBeLessThan(0.2);
  });

  test('the three best pairs', () => {
    expected.bestPairs.forEach(([after, ...names], index) => {
      expect((advice.pairs[index]?.after ?? 0) / after).toBeCloseTo(1, 3);
      expect([...(advice.pairs[index]?.names ?? [])].sort()).toEqual([...names].sort());
    });
  });

  test('for a cold track at 8 °C', () => {
    const cold = nextMeasurement(start, [parameters], candidates, { ...question, temperature: 281.15 });
    expect(cold.now / expected.cold.start).toBeCloseTo(1, 3);
    for (const { names, after } of cold.singles) {
      expect(after / (expected.cold.one[names[0] ?? ''] ?? 0), names[0]).toBeCloseTo(1, 3);
    }
  });

  test('with 2 % of error in the law itself, it says "enough" once little can be gained', () => {
    const known = { ...start, readings: candidates.flatMap(({ readings }) => readings) };
    expect(nextMeasurement(known, [parameters], candidates, { ...question, lawDeviation: 0.02 }).enough).toBe(
      true,
    );
    expect(nextMeasurement(known, [parameters], candidates, question).enough).toBe(false);
  });

  test('averaged over draws, the variance is the mean of the variances', () => {
    const other = parameters.map((value, index) => (index === 0 ? value + 0.2 : value));
    const [one, two, both] = [[parameters], [other], [parameters, other]].map(
      (at) => nextMeasurement(start, at, candidates, question).now,
    );
    expect(both).toBeCloseTo(Math.sqrt(((one ?? 0) ** 2 + (two ?? 0) ** 2) / 2), 10);
  });
});

/** Relative standard deviation of the force by brute force: every reading stacked, the inverse by singular values. */
function bruteForce(
  problem: MeasuredShockProblem,
  at: readonly number[],
  extra: readonly Candidate[],
): number {
  const readings = [...problem.readings, ...extra.flatMap((candidate) => candidate.readings)];
  const predict = predictionOf(inventedLaw, readings);
  const state = (theta: readonly number[]) =>
    stateOfRow(Object.fromEntries(allEight.map((name, index) => [name, theta[index] ?? 0])));
  const scales = allEight.map((name) => checks.prior[name][1] ?? 1);
  const columns = differenceJacobian((theta) => predict(state(theta)), at, scales, predict(state(at)));
  const stacked = readings.map((reading, row) => {
    const u = reading.kind === 'viscosity' ? reading.relativeUncertainty : reading.uncertainty;
    return columns.map((column, index) => ((column[row] ?? 0) / u) * (scales[index] ?? 1));
  });
  const priors = allEight.map((_, row) => allEight.map((__, column) => (row === column ? 1 : 0)));
  const root = pseudoInverse(new Matrix([...stacked, ...priors]));
  const force = (theta: readonly number[]): readonly number[] => {
    const moved = state(theta);
    return [
      Math.log(
        inventedLaw(moved)
          .at(295.15 + moved.thermometerError)
          .dampingForce(0.3, 0.014),
      ),
    ];
  };
  const slopes = differenceJacobian(force, at, scales, force(at)).map(
    (column, index) => (column[0] ?? 0) * (scales[index] ?? 1),
  );
  return Matrix.rowVector(slopes).mmul(root).norm();
}

describe('against brute force in ten states drawn from the priors', () => {
  const points = samplePoints('random', allEight.length + 1, 5);
  const uniform = new Float64Array(allEight.length + 1);
  const states = Array.from({ length: 10 }, (_, index) => {
    points.point(index, uniform);
    const at = allEight.map((name, place) => {
      const [mean = 0, deviation = 0] = checks.prior[name];
      return Math.max(mean + deviation * normalQuantile(uniform[place] ?? 0.5), name === 'F' ? 0.02 : -100);
    });
    // What was measured before differs too.
    const before = Object.values(rows)[Math.floor((uniform[allEight.length] ?? 0) * 4)] ?? [];
    return {
      at,
      problem: problemB(
        before,
        before.map(() => 1),
      ),
    };
  });

  test('the order of the single candidates is the same in nine or more', () => {
    const same = states.filter(({ at, problem }) => {
      const { singles } = nextMeasurement(problem, [at], candidates, question);
      const brute = candidates
        .map((candidate) => ({ name: candidate.name, after: bruteForce(problem, at, [candidate]) }))
        .sort((first, second) => first.after - second.after);
      for (const { name, after } of brute) {
        const found = singles.find(({ names }) => names[0] === name);
        expect((found?.after ?? 0) / after).toBeCloseTo(1, 5);
      }
      return brute.every(({ name }, index) => singles[index]?.names[0] === name);
    });
    expect(same.length).toBeGreaterThanOrEqual(9);
  });

  test('what it says to do next leads to a pair at most 10 % worse than the best', () => {
    for (const { at, problem } of states) {
      const { next } = nextMeasurement(problem, [at], candidates, question);
      const pairs = candidates.flatMap((first, index) =>
        candidates.slice(index + 1).map((second) => ({
          names: [first.name, second.name],
          after: bruteForce(problem, at, [first, second]),
        })),
      );
      const best = Math.min(...pairs.map(({ after }) => after));
      const led = Math.min(
        ...pairs.filter(({ names }) => names.includes(next.names[0] ?? '')).map(({ after }) => after),
      );
      expect(led / best).toBeLessThanOrEqual(1.1);
    }
  });
});

describe('closed forms of optimal designs', () => {
  /** A law whose force at "speed" x is a line or a curve in two unknowns, so that a reading of force is one point of the design. */
  const unknowns: readonly Unknown[] = [
    { quantity: 'kinematicViscosity', scale: 'plain', prior: { mean: 1, standardDeviation: 1e3 } },
    { quantity: 'density', scale: 'plain', prior: { mean: 1, standardDeviation: 1e3 } },
  ];

  test('the force of a straight line at 2 from −1 to 1: three of four readings at 1, one at −1 (Hoel & Levine 1964)', () => {
    let problem: MeasuredShockProblem = {
      law: ({ kinematicViscosity, density }) => ({
        friction: 0,
        at: () => ({
          gasForce: () => 0,
          kinematicViscosity,
          density,
          dampingForce: (x) => kinematicViscosity + density * x,
        }),
      }),
      known: { ...stateOfRow({}), ...exactInstruments, kinematicViscosity: 1, density: 1 },
      unknowns,
      readings: [],
    };
    const at = (x: number): Candidate => ({
      name: String(x),
      minutes: 1,
      readings: [
        { kind: 'force', speed: x, position: 0, temperature: 295, time: 0, force: 0, uncertainty: 1 },
      ],
    });
    const places = [-1, -0.75, -0.5, -0.25, 0.25, 0.5, 0.75, 1].map(at);
    const ask = { speeds: [2], position: 0, temperature: 295, lawDeviation: 0 };
    const chosen: Record<string, number> = {};
    const count = 120;
    for (let step = 0; step < count; step++) {
      const best = nextMeasurement(problem, [[1, 1]], places, ask).singles[0]?.names[0] ?? '';
      chosen[best] = (chosen[best] ?? 0) + 1;
      problem = {
        ...problem,
        readings: [...problem.readings, ...(places.find(({ name }) => name === best)?.readings ?? [])],
      };
    }
    expect(Object.keys(chosen).sort()).toEqual(['-1', '1']);
    expect(Math.abs((chosen['1'] ?? 0) / count - 0.75)).toBeLessThan(0.02);
    // The variance of the design times its readings is 4; the force there is 3.
    const { now } = nextMeasurement(problem, [[1, 1]], places, ask);
    expect(Math.abs((now * 3) ** 2 * count - 4)).toBeLessThan(0.05);
  });
});
