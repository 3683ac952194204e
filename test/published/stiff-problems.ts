import type { DifferentialEquation } from '../../lib/numeric/integrator/differential-equation.js';

/** A test problem of integrators, with the values that the literature gives for it. */
export interface StiffProblem {
  readonly name: string;
  readonly equation: DifferentialEquation;
  readonly start: readonly number[];
  readonly end: number;
  readonly expected: readonly number[];
  /** Largest relative error of a run at relative tolerance 1e-7: rule of thumb, a hundred times the tolerance. */
  readonly rtol: number;
  readonly absolute: readonly number[];
  readonly source: string;
}

const testSet = 'Test Set for IVP Solvers (University of Bari)';

const robertson: DifferentialEquation = {
  size: 3,
  rates: (_time, state, rates) => {
    const [a, b, c] = state as unknown as [number, number, number];
    rates[0] = -0.04 * a + 1e4 * b * c;
    rates[2] = 3e7 * b * b;
    rates[1] = -rates[0] - rates[2];
  },
  scales: [1, 1e-6, 1],
};

const vanDerPol: DifferentialEquation = {
  size: 2,
  rates: (_time, state, rates) => {
    const [place, speed] = state as unknown as [number, number];
    rates[0] = speed;
    rates[1] = 1000 * (1 - place * place) * speed - place;
  },
};

const oregonator: DifferentialEquation = {
  size: 3,
  rates: (_time, state, rates) => {
    const [a, b, c] = state as unknown as [number, number, number];
    rates[0] = 77.27 * (b + a * (1 - 8.375e-6 * a - b));
    rates[1] = (c - (1 + a) * b) / 77.27;
    rates[2] = 0.161 * (a - c);
  },
};

const hires: DifferentialEquation = {
  size: 8,
  rates: (_time, y, rates) => {
    const [a, b, c, d, e, f, g, h] = y as unknown as readonly [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    rates[0] = -1.71 * a + 0.43 * b + 8.32 * c + 0.0007;
    rates[1] = 1.71 * a - 8.75 * b;
    rates[2] = -10.03 * c + 0.43 * d + 0.035 * e;
    rates[3] = 8.32 * b + 1.71 * c - 1.12 * d;
    rates[4] = -1.745 * e + 0.43 * f + 0.43 * g;
    rates[5] = -280 * f * h + 0.69 * d + 1.71 * e - 0.43 * f + 0.69 * g;
    rates[6] = 280 * f * h - 1.81 * g;
    rates[7] = -280 * f * h + 1.81 * g;
  },
  scales: new Array<number>(8).fill(1e-4),
};

/** Values of a run of order 1e-12 as the test set prints them, unless the source says otherwise. */
export const stiffProblems: readonly StiffProblem[] = [
  {
    name: 'Robertson, t = 40',
    equation: robertson,
    start: [1, 0, 0],
    end: 40,
    expected: [0.7158270687194077, 9.185534764557878e-6, 0.284163745745829],
    rtol: 1e-6,
    absolute: [1e-11, 1e-15, 1e-11],
    source:
      'Robertson 1966; recomputed with SciPy Radau at 1e-12; CVODE prints 7.158e-1, 9.185e-6, 2.842e-1 (from memory)',
  },
  {
    name: 'Robertson, t = 1e11',
    equation: robertson,
    start: [1, 0, 0],
    end: 1e11,
    expected: [2.083340149701255e-8, 8.333360770334713e-14, 0.999999979166505],
    rtol: 1e-5,
    absolute: [1e-17, 1e-22, 1e-11],
    source: testSet,
  },
  {
    name: 'van der Pol, stiffness 1000, t = 2000',
    equation: vanDerPol,
    start: [2, 0],
    end: 2000,
    expected: [1.706167732170469, -0.0008928097010248125],
    rtol: 1e-5,
    absolute: [1e-9, 1e-12],
    source: testSet,
  },
  {
    name: 'Oregonator, t = 360',
    equation: oregonator,
    start: [1, 2, 3],
    end: 360,
    expected: [1.000814870318523, 1228.178521549917, 132.0554942846706],
    rtol: 1e-5,
    absolute: [1e-9, 1e-9, 1e-9],
    source: testSet,
  },
  {
    name: 'HIRES, t = 321.8122',
    equation: hires,
    start: [1, 0, 0, 0, 0, 0, 0, 0.0057],
    end: 321.8122,
    expected: [
      0.7371312573325668e-3, 0.1442485726316185e-3, 0.5888729740967575e-4, 0.1175651343283149e-2,
      0.2386356198831331e-2, 0.6238968252742796e-2, 0.2849998395185769e-2, 0.2850001604814231e-2,
    ],
    rtol: 1e-5,
    absolute: new Array<number>(8).fill(1e-11),
    source: `${testSet}; in outside-solvers.slow.test.ts SciPy recomputes it`,
  },
];
