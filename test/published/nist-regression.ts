import sets from './nist-regression.json' with { type: 'json' };

const { atan, cos, exp, PI, sin } = Math;

/** Value of a parameter; one that is missing is a fault of the test. */
type Model = (b: readonly number[], x: number) => number;

const exponentials: Model = ([a = 0, p = 0, c = 0, q = 0, e = 0, r = 0], x) =>
  a * exp(-p * x) + c * exp(-q * x) + e * exp(-r * x);
const peaks: Model = ([a = 0, p = 0, c = 0, q = 0, w = 0, e = 0, r = 0, u = 0], x) =>
  a * exp(-p * x) + c * exp(-(((x - q) / w) ** 2)) + e * exp(-(((x - r) / u) ** 2));
const cubics: Model = ([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0], x) =>
  (a + x * (b + x * (c + x * d))) / (1 + x * (e + x * (f + x * g)));
const saturation: Model = ([a = 0, p = 0], x) => a * (1 - exp(-p * x));
const chwirut: Model = ([p = 0, a = 0, b = 0], x) => exp(-p * x) / (a + b * x);

const models: Readonly<Record<string, Model>> = {
  Misra1a: saturation,
  Misra1b: ([a = 0, p = 0], x) => a * (1 - (1 + (p * x) / 2) ** -2),
  Misra1c: ([a = 0, p = 0], x) => a * (1 - (1 + 2 * p * x) ** -0.5),
  Misra1d: ([a = 0, p = 0], x) => (a * p * x) / (1 + p * x),
  Chwirut1: chwirut,
  Chwirut2: chwirut,
  Lanczos1: exponentials,
  Lanczos2: exponentials,
  Lanczos3: exponentials,
  Gauss1: peaks,
  Gauss2: peaks,
  Gauss3: peaks,
  DanWood: ([a = 0, p = 0], x) => a * x ** p,
  Kirby2: ([a = 0, b = 0, c = 0, d = 0, e = 0], x) => (a + x * (b + x * c)) / (1 + x * (d + x * e)),
  Hahn1: cubics,
  Thurber: cubics,
  MGH09: ([a = 0, b = 0, c = 0, d = 0], x) => (a * (x * x + x * b)) / (x * x + x * c + d),
  MGH10: ([a = 0, b = 0, c = 0], x) => a * exp(b / (x + c)),
  MGH17: ([a = 0, b = 0, c = 0, p = 0, q = 0], x) => a + b * exp(-x * p) + c * exp(-x * q),
  Rat42: ([a = 0, b = 0, c = 0], x) => a / (1 + exp(b - c * x)),
  Rat43: ([a = 0, b = 0, c = 0, d = 0], x) => a / (1 + exp(b - c * x)) ** (1 / d),
  Roszman1: ([a = 0, b = 0, c = 0, d = 0], x) => a - b * x - atan(c / (x - d)) / PI,
  BoxBOD: saturation,
  Bennett5: ([a = 0, b = 0, c = 0], x) => a * (b + x) ** (-1 / c),
  Eckerle4: ([a = 0, w = 0, c = 0], x) => (a / w) * exp(-0.5 * ((x - c) / w) ** 2),
  ENSO: ([a = 0, b = 0, c = 0, p = 0, d = 0, e = 0, q = 0, f = 0, g = 0], x) =>
    a +
    b * cos((2 * PI * x) / 12) +
    c * sin((2 * PI * x) / 12) +
    d * cos((2 * PI * x) / p) +
    e * sin((2 * PI * x) / p) +
    f * cos((2 * PI * x) / q) +
    g * sin((2 * PI * x) / q),
};

export interface NonlinearSet {
  readonly name: string;
  readonly model: Model;
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly starts: readonly [readonly number[], readonly number[]];
  readonly parameters: readonly number[];
  readonly standardDeviations: readonly number[];
  readonly residualSumOfSquares: number;
  readonly degreesOfFreedom: number;
}

/** The sets of one predictor, by NIST. Those of Kirby2, Gauss3, Roszman1, Eckerle4, MGH17 and Rat42 were copied and their sums of squares recomputed. */
export const nonlinearSets: readonly NonlinearSet[] = Object.entries(sets).flatMap(([name, set]) => {
  const model = models[name];
  if (model === undefined || !('start1' in set)) return [];
  return [{ ...set, name, model, x: set.x as readonly number[], starts: [set.start1, set.start2] as const }];
});

export const norris = sets.Norris;
export const longley = sets.Longley;

/** Digits that agree: minus the decimal logarithm of the largest relative error, at most 15. */
export function agreeingDigits(values: readonly number[], certified: readonly number[]): number {
  const errors = certified.map(
    (value, index) => Math.abs((values[index] ?? Number.NaN) - value) / Math.abs(value),
  );
  return Math.min(15, -Math.log10(Math.max(...errors)));
}
