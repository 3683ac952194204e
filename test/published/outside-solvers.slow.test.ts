import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as mathjs from 'mathjs';
import { afterAll, describe, expect, test } from 'vitest';
import type { DifferentialEquation } from '../../lib/numeric/integrator/differential-equation.js';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { toolRuns } from '../project/tools.js';
import { relativeError } from './published-rows.js';
import { stiffProblems } from './stiff-problems.js';

// General-purpose solvers that share nothing with ours: another method each.

const pendulum: DifferentialEquation = {
  size: 2,
  rates: (_time, [angle, speed], rates) => {
    rates[0] = speed as number;
    rates[1] = -Math.sin(angle as number);
  },
};
const fine = { relative: 1e-9, absolute: [1e-11, 1e-11] };

function solved(name: string, relative: number): readonly number[] {
  const problem = stiffProblems.find((each) => each.name.startsWith(name));
  if (problem === undefined) throw new Error(`no problem ${name}`);
  const { equation, start, end, absolute } = problem;
  const { state } = integrate(equation, {
    from: 0,
    to: end,
    state: start,
    relative,
    absolute,
    firstStep: 1e-6,
  });
  return [...state];
}

/** The types of mathjs leave this function out. */
const mathSolver = mathjs as unknown as {
  readonly solveODE: (
    rates: (time: number, state: readonly [number, number]) => readonly number[],
    span: readonly [number, number],
    start: readonly number[],
    options: { readonly tol: number; readonly minStep: number },
  ) => { readonly y: readonly (readonly number[])[] };
};

test('mathjs solveODE (explicit Runge-Kutta 4(5)) swings the same pendulum', () => {
  const swing = (_t: number, [angle, speed]: readonly [number, number]) => [speed, -Math.sin(angle)];
  const { y } = mathSolver.solveODE(swing, [0, 6], [2, 0], { tol: 1e-10, minStep: 1e-8 });
  const { state } = integrate(pendulum, { from: 0, to: 6, state: [2, 0], ...fine });
  y.at(-1)?.forEach((value, i) => {
    expect(relativeError(state[i] ?? 0, value)).toBeLessThan(1e-7);
  });
});

// Debian's own Python, since only that one sees Debian's packages.
const python = '/usr/bin/python3';
const scipy = toolRuns(python, ['-c', 'import scipy.integrate']);

describe.skipIf(!scipy)('SciPy (skips where python3-scipy is absent)', () => {
  const script = fileURLToPath(new URL('outside-solvers.py', import.meta.url));
  const found: Readonly<Record<'hires' | 'vanDerPol' | 'pendulum', readonly number[]>> = scipy
    ? JSON.parse(execFileSync(python, [script], { encoding: 'utf8' }))
    : { hires: [], vanDerPol: [], pendulum: [] };

  test.each([
    ['HIRES', found.hires],
    ['van der Pol', found.vanDerPol],
  ])('Radau solves %s to the same state', (name, expected) => {
    const state = solved(name, 1e-8);
    expect(expected).toHaveLength(state.length);
    expected.forEach((value, i) => {
      expect(relativeError(state[i] ?? 0, value)).toBeLessThan(1e-6);
    });
  });

  test('LSODA finds the same events of a pendulum', () => {
    const times: number[] = [];
    integrate(pendulum, {
      from: 0,
      to: 6,
      state: [2, 0],
      ...fine,
      events: ([0, 1] as const).map((index) => ({
        value: (_time, state) => state[index] as number,
        direction: () => (times[index] === undefined ? (index === 0 ? -1 : 1) : 0),
        happens: (time) => {
          times[index] = time;
          return 'restart';
        },
      })),
    });
    expect(found.pendulum).toHaveLength(2);
    found.pendulum.forEach((time, i) => {
      expect(relativeError(times[i] ?? 0, time)).toBeLessThan(1e-8);
    });
  });
});

const folder = mkdtempSync(join(tmpdir(), 'outside-solvers-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** The program in C, built where a compiler and SUNDIALS are; undefined elsewhere. */
function builtWithCvode(): string | undefined {
  const program = join(folder, 'outside-solvers');
  const source = fileURLToPath(new URL('outside-solvers.c', import.meta.url));
  const libraries = ['cvode', 'nvecserial', 'sunmatrixdense', 'sunlinsoldense'].map(
    (name) => `-lsundials_${name}`,
  );
  try {
    execFileSync('gcc', ['-O2', '-o', program, source, ...libraries, '-lm'], { stdio: 'pipe' });
    return program;
  } catch (error) {
    if (process.env['CI'] === 'true') throw error;
    return undefined;
  }
}
const cvode = builtWithCvode();

describe.skipIf(cvode === undefined)('CVODE (skips where gcc or libsundials-dev is absent)', () => {
  const found: readonly { readonly time: number; readonly state: readonly number[] }[] =
    cvode === undefined ? [] : JSON.parse(execFileSync(cvode, { encoding: 'utf8' }));

  test('solves Robertson to the same states', () => {
    expect(found.map(({ time }) => time)).toEqual([40, 4e5, 4e10]);
    const problem = stiffProblems[0];
    for (const { time, state: expected } of found) {
      const { state } = integrate(problem?.equation as DifferentialEquation, {
        from: 0,
        to: time,
        state: [1, 0, 0],
        relative: 1e-8,
        absolute: [1e-16, 1e-21, 1e-13],
        firstStep: 1e-6,
      });
      expected.forEach((value, i) => {
        expect(relativeError(state[i] ?? 0, value)).toBeLessThan(1e-6);
      });
    }
  });
});
