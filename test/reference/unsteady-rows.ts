import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import { apparentMass } from '../../lib/flow/hole/apparent-mass.js';

/** One solution of creeping flow that swings through a sharp hole; `Z = Δp d/(μ V)`, complex (axisymmetric, mesh error 0.01 % to ω d²/ν 300). */
export interface UnsteadyRow {
  readonly lengthRatio: number;
  /** `ω d²/ν`. */
  readonly frequencyNumber: number;
  readonly real: number;
  readonly imaginary: number;
  /** Error of the resistance at rest alone, in parts of the swing. */
  readonly steadyLaw: number;
  /** Error with the apparent mass of the library. */
  readonly withApparentMass: number;
}

const diameter = 1.3e-3;
const fluid = { density: 970, kinematicViscosity: 3.5e-4 };

/** `m ω d/(μ A)`, the imaginary part that the mass gives `Z`. */
function massPart(lengthRatio: number, frequencyNumber: number): number {
  const mass = apparentMass({ diameter, length: lengthRatio * diameter }, fluid);
  return (mass / (fluid.density * (Math.PI / 4) * diameter ** 3)) * frequencyNumber;
}

export function unsteadyRows(): readonly UnsteadyRow[] {
  const rows = csvParse(readFileSync(new URL('unsteady-hole.csv', import.meta.url), 'utf8')).map((row) => ({
    lengthRatio: Number(row['L_over_d']),
    frequencyNumber: Number(row['omega_d2_over_nu']),
    real: Number(row['Z_real']),
    imaginary: Number(row['Z_imag']),
  }));
  return rows.map((row) => {
    const { lengthRatio, frequencyNumber, real, imaginary } = row;
    // Where it hardly swings.
    const atRest = rows.find((one) => one.lengthRatio === lengthRatio && one.frequencyNumber === 0.01);
    const off = real - (atRest?.real ?? Number.NaN);
    const size = Math.hypot(real, imaginary);
    return {
      ...row,
      steadyLaw: Math.hypot(off, imaginary) / size,
      withApparentMass: Math.hypot(off, imaginary - massPart(lengthRatio, frequencyNumber)) / size,
    };
  });
}
