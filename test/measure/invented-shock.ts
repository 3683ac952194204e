import type { MeasuredShockProblem } from '../../lib/measure/fit/fit-problem.js';
import type { Unknown } from '../../lib/measure/fit/unknown.js';
import type { ShockLaw } from '../../lib/measure/model/shock-law.js';
import { exactInstruments, type MeasuredState, type Quantity } from '../../lib/measure/model/shock-state.js';
import type { Reading } from '../../lib/measure/reading/reading.js';
import checks from '../published/measure-checks.json' with { type: 'json' };

/**
 * A shock that does not exist, with a law simpler than the library's: bore 12 mm, shaft 3 mm, 4 holes, piston 2.5 mm thick. Independent programs
 * computed what it shows (`measure-checks.json`), so that the fits can be checked to many digits.
 */
const { bore, shaft, thickness, holes, gasVolume, density25, expansion, barry, K } = checks.shock.spec;

export const inventedLaw: ShockLaw = (state) => {
  const { holeDiameter: d, gap: h } = state;
  const meanDiameter = bore - h;
  const shaftArea = (Math.PI / 4) * shaft ** 2;
  const area = (Math.PI / 4) * (bore - 2 * h) ** 2 + (Math.PI * meanDiameter * h) / 2 - shaftArea;
  const holeArea = holes * (Math.PI / 4) * d * d;
  return {
    friction: state.friction,
    at: (temperature) => {
      const density = density25 * Math.exp(-expansion * (temperature - 298.15));
      const kinematicViscosity =
        state.kinematicViscosity * 10 ** (barry * state.temperatureSlope * (1 / temperature - 1 / 298.15));
      const mu = density * kinematicViscosity;
      const creeping = (mu / d) * (6 * Math.PI + (32 * thickness) / d);
      const gapConductance = (Math.PI * meanDiameter * h ** 3) / (12 * mu * thickness);
      const drag = (mu * Math.PI * meanDiameter * thickness) / h;
      const dampingForce = (speed: number): number => {
        const flow = area * Math.abs(speed);
        let v = flow / (holeArea + gapConductance * creeping);
        let drop = 0;
        for (let iteration = 0; iteration < 50; iteration++) {
          const x = (v * d) / (28 * kinematicViscosity);
          const cube = 1 + x ** 3;
          const share = x / Math.cbrt(cube);
          drop = creeping * v + 0.5 * density * K * v * v * share;
          const slope = creeping + 0.5 * density * K * v * share * (2 + 1 / cube);
          const step = (holeArea * v + gapConductance * drop - flow) / (holeArea + gapConductance * slope);
          v -= step;
          if (Math.abs(step) <= 1e-15 * v) break;
        }
        return Math.sign(speed) * (area * drop + drag * Math.abs(speed));
      };
      const gasForce = (position: number): number =>
        shaftArea * (state.gasPressure / (1 - (shaftArea * position) / gasVolume) - 101_325);
      return { kinematicViscosity, density, dampingForce, gasForce };
    },
  };
};

/** Names of the rows, and what they are here. */
export const rowNames = {
  lnNu: 'kinematicViscosity',
  slope: 'temperatureSlope',
  d: 'holeDiameter',
  h: 'gap',
  F: 'friction',
  p0: 'gasPressure',
  bias: 'handDelay',
  dT: 'thermometerError',
  offset: 'sensorZero',
} as const satisfies Readonly<Record<string, Quantity>>;

export type RowName = keyof typeof rowNames;
export type RowValues = Readonly<Partial<Record<RowName, number>>>;

/** A state from the values of a row. */
export function stateOfRow(values: RowValues): MeasuredState {
  const state: Record<Quantity, number> = {
    kinematicViscosity: 0,
    temperatureSlope: 1,
    density: density25,
    holeDiameter: 0,
    gap: 0,
    friction: 0,
    gasPressure: 0,
    ...exactInstruments,
  };
  for (const [name, value] of Object.entries(values)) {
    state[rowNames[name as RowName]] = name === 'lnNu' ? Math.exp(value) : value;
  }
  return state;
}

/** The unknown of a row; its prior where it is asked for. */
export function unknownOfRow(name: RowName, withPrior: boolean): Unknown {
  const [mean = 0, standardDeviation = 1] = checks.prior[name];
  return {
    quantity: rowNames[name],
    scale: name === 'lnNu' ? 'logarithm' : 'plain',
    ...(withPrior ? { prior: { mean, standardDeviation } } : {}),
    ...(name === 'F' ? { least: 0 } : {}),
    // No gap is none: the law has no value there, and none that means anything beyond.
    ...(name === 'h' ? { least: 5e-6 } : {}),
  };
}

/** How an observation is written in the rows. */
export interface RowObservation {
  readonly kind: string;
  readonly by?: string;
  readonly mass?: number;
  readonly T?: number;
  readonly x?: number;
  readonly v?: number;
  readonly u: number;
}

/** One reading an observation. */
export function readingOfRow(row: RowObservation, value: number): Reading {
  const temperature = row.T ?? 295.15;
  const { kind, x: position = 0, u: uncertainty } = row;
  if (kind === 'drop') {
    const timing = row.by === 'stopwatch' ? 'hand' : 'frames';
    const stretch = { from: 0.025, to: 0.003 };
    return { kind, mass: row.mass ?? 0, times: [value], timing, uncertainty, temperature, ...stretch };
  }
  if (kind === 'scaleIn')
    return { kind: 'scale', position, moving: 'in', temperature, force: value, uncertainty };
  if (kind === 'scaleOut')
    return { kind: 'scale', position, moving: 'out', temperature, force: value, uncertainty };
  if (kind === 'ball') {
    return {
      kind: 'viscosity',
      kinematicViscosity: Math.exp(value),
      temperature,
      relativeUncertainty: uncertainty,
    };
  }
  if (kind === 'pin') return { kind: 'hole', diameter: value, uncertainty };
  return { kind: 'force', speed: row.v ?? 0, position, temperature, time: 0, force: value, uncertainty };
}

/** Inputs and expected values of a row; one that is missing is a fault of the test. */
export function checkRow<Inputs, Expected>(
  id: string,
): { readonly inputs: Inputs; readonly expected: Expected } {
  const row = checks.checks.find((one) => one.id === id);
  if (row === undefined) throw new Error(`no row ${id}`);
  return row as unknown as { inputs: Inputs; expected: Expected };
}

export const allEight: readonly RowName[] = ['lnNu', 'slope', 'd', 'h', 'F', 'p0', 'bias', 'dT'];

/** Five times of 50 g and five of 100 g by hand at 22 °C; viscosity and friction unknown, without priors. */
export function problemA(
  times: readonly number[],
  known: RowValues,
  unknowns: readonly RowName[] = ['lnNu', 'F'],
): MeasuredShockProblem {
  const drop = (mass: number, some: readonly number[]): Reading => ({
    ...(readingOfRow({ kind: 'drop', by: 'stopwatch', mass, u: 0.1 }, 0) as Reading & { kind: 'drop' }),
    times: some,
  });
  return {
    law: inventedLaw,
    known: stateOfRow(known),
    unknowns: unknowns.map((name) => unknownOfRow(name, false)),
    readings: [drop(0.05, times.slice(0, 5)), drop(0.1, times.slice(5))],
  };
}

/** All eight unknowns with priors, begun at their means. */
export function problemB(
  observations: readonly RowObservation[],
  values: readonly number[],
): MeasuredShockProblem {
  return {
    law: inventedLaw,
    known: stateOfRow(Object.fromEntries(allEight.map((name) => [name, checks.prior[name][0] ?? 0]))),
    unknowns: allEight.map((name) => unknownOfRow(name, true)),
    readings: observations.map((row, index) => readingOfRow(row, values[index] ?? 0)),
  };
}
