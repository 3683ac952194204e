import { beforeAll, describe, expect, test } from 'vitest';
import { dampingAnswers } from '../../lib/measure/answer/damping-answer.js';
import { exactLaw } from '../../lib/measure/answer/law-error.js';
import { fitShock } from '../../lib/measure/fit/fit-shock.js';
import { predictionOf } from '../../lib/measure/reading/prediction.js';
import { normalQuantile } from '../../lib/numeric/normal-distribution.js';
import { studentQuantile } from '../../lib/numeric/quantiles.js';
import { samplePoints } from '../../lib/numeric/samples.js';
import checks from '../published/measure-checks.json' with { type: 'json' };
import {
  allEight,
  checkRow,
  inventedLaw,
  problemA,
  problemB,
  type RowName,
  type RowObservation,
  type RowValues,
  readingOfRow,
  stateOfRow,
} from './invented-shock.js';

// How often a 95 % interval holds the truth, over 500 seeded repeats. Chance alone keeps the count within 93 % and 97 % 19 times of 20.

const repeats = 500;
const normal95 = normalQuantile(0.975);

/**
 * Standard normal numbers of a repeat, one a dimension. The repeats are spread evenly over all dimensions (scrambled Sobol points), so that the count
 * is less at the mercy of chance than that of independent ones.
 */
function normals(dimensions: number, seed: number): () => readonly number[] {
  const points = samplePoints('low-discrepancy', dimensions, seed);
  const uniform = new Float64Array(dimensions);
  let index = 0;
  return () => {
    points.point(index++, uniform);
    return Array.from(uniform, normalQuantile);
  };
}

/** How many of the repeats held the truth, by what was asked. */
type Held = Readonly<Record<string, number>>;

/** A: two unknowns, with known uncertainty and with one from the scatter. */
function heldInA(): Held {
  const known = checkRow<{ known: RowValues }, unknown>('shock-A-fit').inputs.known;
  const truth = [known.lnNu ?? 0, known.F ?? 0];
  const exact = predictionOf(
    inventedLaw,
    problemA([2, 2, 2, 2, 2, 1, 1, 1, 1, 1], known).readings,
  )(stateOfRow(known));
  const next = normals(10, 11);
  const held = { viscosity: 0, friction: 0, 'viscosity by scatter': 0, 'friction by scatter': 0 };
  for (let repeat = 0; repeat < repeats; repeat++) {
    const times = next().map((normal, index) => (exact[index < 5 ? 0 : 1] ?? 0) + 0.1 * normal);
    const fit = fitShock(problemA(times, known));
    const scatter = studentQuantile(0.975, fit.degreesOfFreedom) * Math.sqrt(fit.cost / fit.degreesOfFreedom);
    const off = truth.map(
      (value, index) => Math.abs((fit.parameters[index] ?? 0) - value) / (fit.standardDeviations[index] ?? 1),
    );
    if ((off[0] ?? 9) < normal95) held.viscosity++;
    if ((off[1] ?? 9) < normal95) held.friction++;
    if ((off[0] ?? 9) < scatter) held['viscosity by scatter']++;
    if ((off[1] ?? 9) < scatter) held['friction by scatter']++;
  }
  return held;
}

/** B: eight unknowns drawn from their priors, shared errors among them, and the force at three speeds. */
function heldInB(): Held {
  const { observations } = checkRow<{ observations: RowObservation[] }, unknown>('shock-B-fit').inputs;
  const next = normals(allEight.length + observations.length, 12);
  const speeds = [0.05, 0.3, 1];
  const place = { position: 0.014, temperature: 295.15 };
  const held: Record<string, number> = Object.fromEntries(
    [...allEight, ...speeds.map(forceAt)].map((name) => [name, 0]),
  );
  for (let repeat = 0; repeat < repeats; ) {
    const draw = next();
    const values = Object.fromEntries(
      allEight.map((name, index) => {
        const [mean = 0, deviation = 0] = checks.prior[name];
        return [name, mean + deviation * (draw[index] ?? 0)];
      }),
    ) as Record<RowName, number>;
    const truth = stateOfRow(values);
    const shown = predictionOf(
      inventedLaw,
      observations.map((row) => readingOfRow(row, 1)),
    )(truth);
    // Friction below 0 is none; a weight that does not move the shaft, or hardly, is no measurement.
    if (values.F < 0.02 || !shown.every((value) => value < 20)) continue;
    repeat++;
    const read = observations.map(
      (row, index) => (shown[index] ?? 0) + row.u * (draw[allEight.length + index] ?? 0),
    );
    const fit = fitShock(problemB(observations, read));
    allEight.forEach((name, index) => {
      const off =
        Math.abs((fit.parameters[index] ?? 0) - (values[name] ?? 0)) / (fit.standardDeviations[index] ?? 1);
      if (off < normal95) held[name] = (held[name] ?? 0) + 1;
    });
    const warm = inventedLaw(truth).at(place.temperature + truth.thermometerError);
    dampingAnswers(fit, speeds, place, exactLaw).forEach(({ speed, interval }) => {
      const force = warm.dampingForce(speed, place.position);
      if (force > interval[0] && force < interval[1]) held[forceAt(speed)] = (held[forceAt(speed)] ?? 0) + 1;
    });
  }
  return held;
}

const titles = {
  A: 'Two unknowns, ten times of two weights: by the uncertainty of the clock, and by the scatter of the times',
  B: 'Eight unknowns drawn from their priors, and the damping force at three speeds',
} as const;

const names: Readonly<Record<string, string>> = {
  lnNu: 'viscosity',
  slope: 'slope of viscosity with temperature',
  d: 'hole diameter',
  h: 'gap',
  F: 'friction',
  p0: 'gas pressure',
  bias: 'late hand',
  dT: 'thermometer',
};

/** The shares as a page of the docs. */
function sharesPage(all: Readonly<Record<keyof typeof titles, Held>>): string {
  const table = (held: Held): string =>
    Object.entries(held)
      .map(
        ([name, count]) =>
          `| ${names[name] ?? name} | ${count} | ${((100 * count) / repeats).toFixed(1)} % |`,
      )
      .join('\n');
  const tables = (['A', 'B'] as const).map(
    (problem) =>
      `## ${titles[problem]}\n\n| interval of | held the truth | share |\n| --- | --- | --- |\n${table(all[problem])}\n`,
  );
  return `# How often a 95 % interval holds the truth

Written by \`test/measure/coverage.thorough.test.ts\`, not by hand: readings of an invented shock are drawn ${repeats} times with their errors, fitted, and the interval is compared with
the shock that they were drawn from. Chance alone keeps a share within 93 % and 97 % 19 times of 20; the test holds each to that.

${tables.join('\n')}`;
}

function forceAt(speed: number): string {
  return `force at ${1000 * speed} mm/s`;
}

describe('how often the interval holds the truth', () => {
  let all: Readonly<Record<keyof typeof titles, Held>>;
  beforeAll(() => {
    all = { A: heldInA(), B: heldInB() };
  });

  test.each(['A', 'B'] as const)('%s: between 93 and 97 % of the repeats', (problem) => {
    const held = Object.entries(all[problem]);
    expect(held).toHaveLength(problem === 'A' ? 4 : allEight.length + 3);
    for (const [name, count] of held) {
      expect(count / repeats, name).toBeGreaterThanOrEqual(0.93);
      expect(count / repeats, name).toBeLessThanOrEqual(0.97);
    }
  });

  test('the docs have the shares as they are', async () => {
    await expect(sharesPage(all)).toMatchFileSnapshot('../../docs/coverage-of-intervals.md');
  });
});
