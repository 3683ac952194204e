import { createOil } from '../fluid/oil/oil.js';
import { viscosityAt } from '../fluid/viscosity/viscosity-line.js';
import { dynoReadings } from '../measure/dyno/dyno-readings.js';
import type { MeasuredShockProblem } from '../measure/fit/fit-problem.js';
import {
  intervalBelief,
  type StatedTolerances,
  statedUnknowns,
  usualTolerances,
} from '../measure/fit/prior.js';
import type { Unknown } from '../measure/fit/unknown.js';
import { damperLaw, statedState } from '../measure/model/damper-law.js';
import type { Reading } from '../measure/reading/reading.js';
import { assembleShock } from './assembly/assembled-shock.js';
import type { Build, MeasurementPart, Parts } from './parts.js';

/** Part by which a viscosity on a label may be off where the file does not say so (common practice, no source). */
export const labelDoubt = 0.2;
/** Part by which a friction of the file may be off. */
const sealDoubt = 0.2;
/** Standard uncertainty of the zero of a dyno's sensor, and of how far it drifts while the record lasts [N] (common practice, no source). */
export const sensorZeroDoubt = 0.2;
/** Most forces of one record that a page takes. */
export const mostForces = 80;
/** Temperature to which viscosities belong [K]. */
const reference = 298.15;

/** What was measured on a build, and what was believed of it before. */
export interface MeasuredProblem {
  readonly problem: MeasuredShockProblem;
  /** Least and largest viscosity of the label at 25 °C [m²/s], and what it says. */
  readonly label: readonly [number, number];
  readonly stated: number;
  /** Temperature of the first reading by the thermometer [K], where there is one. */
  readonly temperature: number | undefined;
}

/** A build as it is stated, with what was measured on it or nothing. */
export function measuredProblem(
  parts: Pick<Parts, 'tolerances'>,
  build: Build,
  measured: readonly MeasurementPart[],
): MeasuredProblem {
  const { damper, seal } = assembleShock(build);
  const oil = createOil(build.oil.definition);
  const known = statedState(damper, oil);
  const law = damperLaw(damper, oil);
  const stated = law(known);
  const readings = measured.flatMap(({ readings: read, dyno }): readonly Reading[] =>
    dyno === undefined ? read : everyFew(dynoReadings(dyno.record, dyno.setup, stated)),
  );
  const label = labelInterval(parts, build);
  const tolerances: StatedTolerances = {
    ...usualTolerances,
    ...halved('holeDiameter', parts.tolerances?.holeDiameter),
    ...halved('gap', parts.tolerances?.gap),
    friction: seal.measured
      ? { mean: known.friction, standardDeviation: Math.max(sealDoubt * known.friction, 0.01) }
      : intervalBelief(seal.low.kineticForce, seal.high.kineticForce),
  };
  const unknowns = [
    ...statedUnknowns({ ...known, kinematicViscosity: label }, tolerances),
    ...sensorUnknowns(readings),
  ];
  const temperatures = readings.flatMap((reading) => ('temperature' in reading ? [reading.temperature] : []));
  return {
    problem: { law, known, unknowns, readings },
    label,
    stated: known.kinematicViscosity,
    temperature: temperatures[0],
  };
}

/** So many of a record that a page still answers at once, evenly taken. What they share, zero and thermometer, no number of them lowers. */
function everyFew<One>(readings: readonly One[]): readonly One[] {
  const step = Math.ceil(readings.length / mostForces);
  return readings.filter((_, index) => index % step === 0);
}

/** What a sensor adds to all forces of a dyno, where there are some: its zero, and its drift where the record tells the time. */
function sensorUnknowns(readings: readonly Reading[]): readonly Unknown[] {
  const times = readings.flatMap((reading) => (reading.kind === 'force' ? [reading.time] : []));
  const [first = 0] = times;
  if (times.length === 0) return [];
  const lasted = times.reduce((longest, time) => Math.max(longest, Math.abs(time - first)), 0);
  const plain = (quantity: 'sensorZero' | 'sensorDrift', standardDeviation: number): Unknown => ({
    quantity,
    scale: 'plain',
    prior: { mean: 0, standardDeviation },
  });
  const zero = plain('sensorZero', sensorZeroDoubt);
  return lasted === 0 ? [zero] : [zero, plain('sensorDrift', sensorZeroDoubt / lasted)];
}

/** What no gauge and no cup tells from nought: a length [m], and a part of a viscosity. A file that says less has said nothing. */
const leastLength = 1e-9;
const leastPart = 1e-6;

/** A tolerance either way as a standard uncertainty. */
function halved<Name extends 'holeDiameter' | 'gap'>(name: Name, tolerance: number | undefined) {
  return tolerance === undefined || tolerance < leastLength ? {} : { [name]: tolerance / Math.sqrt(3) };
}

/** Viscosity at 25 °C that the label allows [m²/s]: its own interval, or as much either way as the file or usage says. */
function labelInterval(
  { tolerances }: Pick<Parts, 'tolerances'>,
  { oil: { definition } }: Build,
): readonly [number, number] {
  const oil = createOil(definition);
  if (oil.isInterval) return [viscosityAt(oil.low, reference), viscosityAt(oil.high, reference)];
  const typical = viscosityAt(oil.typical, reference);
  const said = tolerances?.viscosity ?? 0;
  const doubt = said < leastPart ? labelDoubt : said;
  return [typical * (1 - doubt), typical * (1 + doubt)];
}
