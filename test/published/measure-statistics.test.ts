import chiSquareCdf from '@stdlib/stats-base-dists-chisquare-cdf';
import chiSquareExact from '@stdlib/stats-base-dists-chisquare-quantile';
import fExact from '@stdlib/stats-base-dists-f-quantile';
import studentExact from '@stdlib/stats-base-dists-t-quantile';
import { describe, expect, test } from 'vitest';
import { correctedAkaike } from '../../lib/measure/answer/fit-quality.js';
import { intervalBelief, jointBelief } from '../../lib/measure/fit/prior.js';
import {
  ballWallFactor,
  fallingBallReading,
  fallingBallViscosity,
} from '../../lib/measure/oil/falling-ball.js';
import { type FlowCup, flowCupViscosity } from '../../lib/measure/oil/flow-cup.js';
import { frameUncertainty } from '../../lib/measure/reading/reading.js';
import { grubbsCritical, oddValue } from '../../lib/measure/statistics/grubbs.js';
import { effectiveDegreesOfFreedom, propagate } from '../../lib/measure/statistics/propagation.js';
import { repeatabilityOf } from '../../lib/measure/statistics/repeatability.js';
import { runsProbability } from '../../lib/measure/statistics/runs-test.js';
import { leastSquares } from '../../lib/numeric/least-squares/least-squares.js';
import { linearLeastSquares } from '../../lib/numeric/least-squares/linear-least-squares.js';
import { huberLoss } from '../../lib/numeric/least-squares/robust-loss.js';
import { chiSquareQuantile, chiSquareTail, fQuantile, studentQuantile } from '../../lib/numeric/quantiles.js';
import { checkRow } from '../measure/invented-shock.js';
import checks from './measure-checks.json' with { type: 'json' };

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe('quantiles against tables, by mpmath with 40 digits', () => {
  const rows = checks.checks.filter(({ group }) => group === 'quantiles');

  test.each(rows)('$id', ({ inputs, expected }) => {
    const {
      distribution,
      probability = 0,
      degreesOfFreedom,
    } = inputs as {
      distribution?: string;
      probability?: number;
      degreesOfFreedom?: number | readonly number[];
    };
    const [first = 0, second = 0] =
      typeof degreesOfFreedom === 'number' ? [degreesOfFreedom] : (degreesOfFreedom ?? []);
    const [page, exact] =
      distribution === 't'
        ? [studentQuantile(probability, first), studentExact(probability, first)]
        : distribution === 'chi2'
          ? [chiSquareQuantile(probability, first), chiSquareExact(probability, first)]
          : [fQuantile(probability, first, second), fExact(probability, first, second)];
    expect(Math.abs(page / Number(expected) - 1)).toBeLessThan(1e-6);
    expect(Math.abs(exact / Number(expected) - 1)).toBeLessThan(1e-10);
  });

  test('a fit without friction to readings with it is unlikely: chi-square 26.5 with 9 degrees', () => {
    const { inputs, expected } = checkRow<{ x: number; degreesOfFreedom: number }, number>('chi2-tail');
    expect(Math.abs(chiSquareTail(inputs.x, inputs.degreesOfFreedom) / expected - 1)).toBeLessThan(1e-8);
    expect(Math.abs((1 - chiSquareCdf(inputs.x, inputs.degreesOfFreedom)) / expected - 1)).toBeLessThan(1e-8);
  });
});

describe("Grubbs' test", () => {
  test.each([
    ['grubbs-5-one', 1],
    ['grubbs-5-two', 2],
  ] as const)('%s: the table of Grubbs & Beck 1972 and of ISO 5725-2', (id, sided) => {
    const { inputs, expected } = checkRow<{ n: number[] }, number[]>(id);
    inputs.n.forEach((count, index) => {
      expect(Math.abs(grubbsCritical(count, 0.05, sided) - (expected[index] ?? 0))).toBeLessThan(0.0015);
    });
  });

  test('NIST/SEMATECH e-Handbook 1.3.5.17.1: 245.57 is odd', () => {
    const { inputs, expected } = checkRow<{ x: number[] }, { G: number; outlier: number }>('grubbs-example');
    const odd = oddValue(inputs.x);
    expect(odd?.value).toBe(expected.outlier);
    expect(odd?.distance).toBeCloseTo(expected.G, 6);
  });

  test('nothing is odd among even values, nor among four', () => {
    expect(oddValue([2.18, 2.31, 2.29, 2.12, 2.14])).toBeUndefined();
    expect(oddValue([1, 1.01, 0.99, 50])).toBeUndefined();
  });
});

test('NIST SiRstv: scatter within and between groups by ISO 5725-2', () => {
  type Groups = { groups: number[][] };
  const { inputs, expected } = checkRow<Groups, { between: number; within: number; F: number }>(
    'nist-SiRstv',
  );
  const found = repeatabilityOf(inputs.groups);
  expect(found.meanSquareBetween / expected.between).toBeCloseTo(1, 8);
  expect(found.meanSquareWithin / expected.within).toBeCloseTo(1, 8);
  expect(found.ratio / expected.F).toBeCloseTo(1, 8);
  const iso = checkRow<Groups, { sr: number; sL: number; sR: number }>('repeatability-SiRstv').expected;
  expect(found.repeatability).toBeCloseTo(iso.sr, 9);
  expect(found.betweenPersons).toBeCloseTo(iso.sL, 9);
  expect(found.reproducibility).toBeCloseTo(iso.sR, 9);
});

describe('examples of the GUM, JCGM 100:2008', () => {
  type Length = {
    ls: number;
    d: number;
    asMean: number;
    thMean: number;
    uLs: number;
    uD: number;
    daHalfWidth: number;
    dtHalfWidth: number;
  };

  test('H.1: length of a gauge block, 50 000 838 nm with 32 nm', () => {
    const { inputs, expected } = checkRow<
      Length,
      { l: number; u: number; components: Record<string, number> }
    >('gum-h1-l');
    // Difference of expansion and of temperature, both near zero.
    const length = ([ls = 0, d = 0, da = 0, theta = 0, as = 0, dt = 0]: readonly number[]) => [
      ls + d - ls * (da * theta + as * dt),
    ];
    const half = (width: number) => intervalBelief(-width, width).standardDeviation;
    const uncertainties = [inputs.uLs, inputs.uD, half(inputs.daHalfWidth), 0, 0, half(inputs.dtHalfWidth)];
    const found = propagate(length, [inputs.ls, inputs.d, 0, inputs.thMean, inputs.asMean, 0], uncertainties);
    expect(Math.round(found.values[0] ?? 0)).toBe(expected.l);
    expect(Math.round(found.uncertainties[0] ?? 0)).toBe(expected.u);
    const part = (index: number) =>
      propagate(
        length,
        [inputs.ls, inputs.d, 0, inputs.thMean, inputs.asMean, 0],
        uncertainties.map((u, at) => (at === index ? u : 0)),
      ).uncertainties[0] ?? 0;
    expect(part(2)).toBeCloseTo(expected.components['da'] ?? 0, 1);
    expect(part(5)).toBeCloseTo(expected.components['dt'] ?? 0, 1);
  });

  test('H.1: 16 degrees of freedom, 93 nm at 99 %', () => {
    const { inputs } = checkRow<{ u: number[]; dof: number[] }, number>('gum-h1-dof');
    const freedom = effectiveDegreesOfFreedom(
      inputs.u.map((uncertainty, index) => ({ uncertainty, degreesOfFreedom: inputs.dof[index] ?? 0 })),
    );
    expect(Math.abs(freedom - 16.7)).toBeLessThan(0.1);
    const expanded = checkRow<{ u: number; dof: number }, number>('gum-h1-U99');
    expect(
      Math.abs(studentQuantile(0.995, Math.floor(freedom)) * expanded.inputs.u - expanded.expected),
    ).toBeLessThan(0.6);
  });

  type Readings = { V: number[]; I_mA: number[]; phi: number[] };

  test('H.2: resistance, reactance and impedance from means that are correlated', () => {
    const { inputs, expected } = checkRow<Readings, Record<string, number>>('gum-h2-result');
    const series = [inputs.V, inputs.I_mA.map((value) => value / 1000), inputs.phi];
    const means = series.map(mean);
    const count = inputs.V.length;
    const covariance = series.map((first, row) =>
      series.map((second, column) => {
        const products = first.map(
          (value, index) => (value - (means[row] ?? 0)) * ((second[index] ?? 0) - (means[column] ?? 0)),
        );
        return products.reduce((sum, product) => sum + product, 0) / (count - 1) / count;
      }),
    );
    const found = propagate(
      ([V = 0, I = 1, phi = 0]) => [(V * Math.cos(phi)) / I, (V * Math.sin(phi)) / I, V / I],
      means,
      covariance,
    );
    const correlation = (row: number, column: number) =>
      (found.covariance[row]?.[column] ?? 0) /
      ((found.uncertainties[row] ?? 1) * (found.uncertainties[column] ?? 1));
    expect(found.values[0]).toBeCloseTo(expected['R'] ?? 0, 3);
    expect(found.values[1]).toBeCloseTo(expected['X'] ?? 0, 3);
    expect(found.values[2]).toBeCloseTo(expected['Z'] ?? 0, 3);
    expect(found.uncertainties[0]).toBeCloseTo(expected['uR'] ?? 0, 3);
    // The GUM prints 0.295; unrounded it is 0.2956.
    expect(Math.abs((found.uncertainties[1] ?? 0) - 0.295)).toBeLessThan(0.001);
    expect(found.uncertainties[2]).toBeCloseTo(expected['uZ'] ?? 0, 3);
    expect(correlation(0, 1)).toBeCloseTo(expected['rRX'] ?? 0, 3);
    expect(correlation(0, 2)).toBeCloseTo(expected['rRZ'] ?? 0, 3);
    expect(correlation(1, 2)).toBeCloseTo(expected['rXZ'] ?? 0, 2);
  });

  test('H.3: line of a thermometer, and its correction at 30 °C', () => {
    type Line = { t: number[]; b: number[]; t0: number };
    const { inputs, expected } = checkRow<Line, Record<string, number>>('gum-h3-line');
    const fit = linearLeastSquares(
      inputs.t.map((t) => [1, t - inputs.t0]),
      inputs.b,
    );
    const [y1 = 0, y2 = 0] = fit.coefficients;
    const [s1 = 0, s2 = 0] = fit.standardDeviations;
    expect(y1).toBeCloseTo(expected['y1'] ?? 0, 4);
    expect(y2).toBeCloseTo(expected['y2'] ?? 0, 5);
    expect(s1).toBeCloseTo(expected['s1'] ?? 0, 4);
    expect(s2).toBeCloseTo(expected['s2'] ?? 0, 5);
    expect(fit.residualStandardDeviation).toBeCloseTo(expected['s'] ?? 0, 4);
    expect((fit.covariance[0]?.[1] ?? 0) / (s1 * s2)).toBeCloseTo(expected['r'] ?? 0, 3);
    const at30 = propagate(([a = 0, b = 0]) => [a + b * (30 - inputs.t0)], fit.coefficients, fit.covariance);
    const predicted = checkRow<Line, { b30: number; u: number }>('gum-h3-predict').expected;
    expect(at30.values[0]).toBeCloseTo(predicted.b30, 4);
    expect(at30.uncertainties[0]).toBeCloseTo(predicted.u, 4);
  });
});

describe('goodness and beliefs', () => {
  test('Birge 1932: three readings that disagree, as a fit of one number', () => {
    const { inputs, expected } = checkRow<
      { x: number[]; u: number[] },
      { mean: number; u: number; birge: number }
    >('birge');
    const fit = leastSquares({
      residuals: ([value = 0]) => inputs.x.map((x, index) => (value - x) / (inputs.u[index] ?? 1)),
      start: [385],
    });
    expect(fit.parameters[0]).toBeCloseTo(expected.mean, 8);
    expect(1 / fit.jacobian.getColumnVector(0).norm()).toBeCloseTo(expected.u, 8);
    expect(Math.sqrt(fit.cost / 2)).toBeCloseTo(expected.birge, 9);
  });

  test('Swed & Eisenhart 1943: 6 runs or fewer of 10 and 10 signs', () => {
    const even = [2, 2, 4, 4, 4, 4].flatMap((length, run) =>
      Array.from({ length }, () => (run % 2 === 0 ? 1 : -1)),
    );
    expect(even.filter((sign) => sign > 0)).toHaveLength(10);
    expect(Math.abs(runsProbability(even) / checkRow<unknown, number>('runs-10').expected - 1)).toBeLessThan(
      1e-6,
    );
  });

  test('Hurvich & Tsai 1989 on four models of one NIST set', () => {
    type Sums = { residualSumOfSquares: Record<string, number>; n: number };
    const { inputs, expected } = checkRow<Sums, Record<string, number>>('aicc-misra');
    const scores = Object.entries(inputs.residualSumOfSquares).map(([name, sum]) => ({
      name,
      score: correctedAkaike(inputs.n * Math.log(sum / inputs.n), 3, inputs.n),
    }));
    const best = Math.min(...scores.map(({ score }) => score));
    for (const { name, score } of scores) expect(score - best).toBeCloseTo(expected[name] ?? 0, 6);
  });

  test('GUM 4.3.7: a printed interval, and a label beside a ball', () => {
    const uniform = checkRow<{ low: number; high: number }, { mean: number; sd: number }>('prior-uniform');
    const belief = intervalBelief(uniform.inputs.low, uniform.inputs.high);
    expect(belief.mean).toBe(uniform.expected.mean);
    expect(belief.standardDeviation).toBeCloseTo(uniform.expected.sd, 8);
    type Two = { label: [number, number]; ball: [number, number] };
    const joint = checkRow<Two, { nu: number; relativeSd: number }>('prior-combine');
    const of = ([value, relative]: [number, number]) => ({
      mean: Math.log(value),
      standardDeviation: relative,
    });
    const both = jointBelief(of(joint.inputs.label), of(joint.inputs.ball));
    expect(Math.exp(both.mean)).toBeCloseTo(joint.expected.nu, 6);
    expect(both.standardDeviation).toBeCloseTo(joint.expected.relativeSd, 10);
  });

  test('GUM 4.3.7: frames of a film', () => {
    const { inputs, expected } = checkRow<{ fps: number }, number>('frames-240');
    expect(frameUncertainty(inputs.fps) / expected).toBeCloseTo(1, 9);
    expect(frameUncertainty(inputs.fps, 0.008)).toBeCloseTo(Math.hypot(expected, 0.008), 12);
  });

  test('Venables & Ripley: copper in flour by Huber, with the scale fixed', () => {
    const { inputs, expected } = checkRow<{ x: number[] }, { mu: number; s: number; plainMean: number }>(
      'huber-chem',
    );
    const residuals = ([mu = 0]: readonly number[]) => inputs.x.map((x) => (mu - x) / expected.s);
    expect(leastSquares({ residuals, start: [3], loss: huberLoss(1.5) }).parameters[0]).toBeCloseTo(
      expected.mu,
      5,
    );
    expect(leastSquares({ residuals, start: [3] }).parameters[0]).toBeCloseTo(expected.plainMean, 6);
  });
});

describe('oil by itself', () => {
  test('a worked answer for a ball in open oil: 1.237 Pa·s', () => {
    type Ball = { mass: number; radius: number; density: number; speed: number };
    const { inputs, expected } = checkRow<Ball, number>('ball-stokes');
    const ballDensity = inputs.mass / ((4 / 3) * Math.PI * inputs.radius ** 3);
    const found = fallingBallViscosity({
      ballDiameter: 2 * inputs.radius,
      ballDensity,
      tubeDiameter: 1e6,
      oilDensity: inputs.density,
      stretch: inputs.speed,
      time: 1,
    });
    expect((found.kinematicViscosity * inputs.density) / expected).toBeCloseTo(1, 7);
    expect(found.warnings.map(({ code }) => code)).toEqual(['ball-too-quick']);
  });

  test('Faxén 1923, and Haberman & Sayre 1958 within 0.2 %', () => {
    const faxen = checkRow<{ k: number[] }, number[]>('ball-wall-faxen');
    const haberman = checkRow<{ k: number[] }, number[]>('ball-wall-haberman');
    for (const index of [0, 1]) {
      const factor = ballWallFactor(faxen.inputs.k[index] ?? 0);
      expect(Math.abs(factor - (faxen.expected[index] ?? 0))).toBeLessThan(0.0001);
      expect(Math.abs(factor / (haberman.expected[index] ?? 0) - 1)).toBeLessThan(0.002);
    }
    expect(() => ballWallFactor(0.2)).toThrow('ballDiameter / tubeDiameter');
  });

  test('a ball of 1.5 mm takes 5.10 s over 100 mm of 385 mm²/s, known to 2.5 %', () => {
    type Design = {
      ball: number;
      ballDensity: number;
      tube: number;
      density: number;
      kinematicViscosity: number;
      stretch: number;
    };
    const { inputs, expected } = checkRow<Design, { time: number; reynolds: number }>('ball-design');
    const ball = {
      ballDiameter: inputs.ball,
      ballDensity: inputs.ballDensity,
      tubeDiameter: inputs.tube,
      oilDensity: inputs.density,
      stretch: inputs.stretch,
      time: expected.time,
    };
    const found = fallingBallViscosity(ball);
    expect(found.kinematicViscosity / inputs.kinematicViscosity).toBeCloseTo(1, 6);
    expect(found.reynoldsNumber / expected.reynolds).toBeCloseTo(1, 6);
    expect(found.warnings).toEqual([]);
    const doubt = checkRow<
      { uTime: number; uDiameter: number; uDensities: number; uTemperature: number },
      number
    >('ball-uncertainty');
    const reading = fallingBallReading(ball, 295.15, {
      ballDiameter: doubt.inputs.uDiameter,
      densityDifference: doubt.inputs.uDensities,
      time: doubt.inputs.uTime,
    });
    // The row has the thermometer in it, 2.0 % a kelvin, which a fit knows as an unknown.
    const thermometer = (doubt.inputs.uTemperature * Math.LN10 * 763.1) / 295.15 ** 2;
    expect(Math.abs(Math.hypot(reading.relativeUncertainty, thermometer) / doubt.expected - 1)).toBeLessThan(
      1e-3,
    );
  });

  test.each([
    ['ford-1', 'Ford 1', ['cup-time-outside']],
    ['ford-3', 'Ford 3', []],
    ['ford-4', 'Ford 4', []],
    ['iso2431-3', 'ISO 3', ['cup-not-confirmed']],
    ['iso2431-4', 'ISO 4', ['cup-not-confirmed']],
    ['iso2431-6', 'ISO 6', ['cup-not-confirmed']],
  ] as const)('%s by ASTM D1200 or ISO 2431', (id, cup, codes) => {
    const { inputs, expected } = checkRow<{ t: number }, number>(id);
    const found = flowCupViscosity(cup, inputs.t);
    // Printed to 1e-4.
    expect(found.kinematicViscosity * 1e6).toBeCloseTo(expected, 4);
    expect(found.warnings.map(({ code }) => code)).toEqual(codes);
  });

  test('an unknown cup and an impossible time are refused', () => {
    expect(() => flowCupViscosity('Ford 9' as FlowCup, 40)).toThrow('cup must be one of');
    expect(() => flowCupViscosity('Ford 1', 20)).toThrow('time must be 55 to 100');
  });
});
