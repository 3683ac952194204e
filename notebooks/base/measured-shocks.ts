import { InputError } from '../../lib/base/input-error.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { viscosityAt } from '../../lib/fluid/viscosity/viscosity-line.js';
import { dynoReadings } from '../../lib/measure/dyno/dyno-readings.js';
import type { MeasuredShockProblem } from '../../lib/measure/fit/fit-problem.js';
import {
  intervalBelief,
  type StatedTolerances,
  statedUnknowns,
  usualTolerances,
} from '../../lib/measure/fit/prior.js';
import type { Unknown } from '../../lib/measure/fit/unknown.js';
import { damperLaw, statedState } from '../../lib/measure/model/damper-law.js';
import type { Reading } from '../../lib/measure/reading/reading.js';
import { integer } from '../../lib/page/parameters/parameters.js';
import { assembleShock } from '../../lib/parts/assembly/assembled-shock.js';
import type { Build, MeasurementPart, Parts } from '../../lib/parts/parts.js';
import { benchTemperature } from './day.js';

/** Part by which a viscosity on a label may be off where the file does not say so (common practice, no source). */
const labelDoubt = 0.2;
/** Part by which a friction of the file may be off. */
const sealDoubt = 0.2;
/** Standard uncertainty of the zero of a dyno's sensor, and of how far it drifts while the record lasts [N] (common practice, no source). */
const sensorZeroDoubt = 0.2;
/** Most forces of one record that a page takes. */
const mostForces = 80;
/** Temperature to which viscosities belong [K]. */
const reference = 298.15;

/** One shock that was measured, or a build that was not. */
export interface MeasuredShockCase {
  /** `rear left (buggy rear)`. */
  readonly name: string;
  readonly build: Build;
  readonly problem: MeasuredShockProblem;
  /** Least and largest viscosity of the label at 25 °C [m²/s], and what it says. */
  readonly label: readonly [number, number];
  readonly stated: number;
  /** Temperature of most readings by the thermometer [K]; that of the bench without any. */
  readonly temperature: number;
}

/** Which of the measured shocks: one control for every page. */
export const whichShock = integer({
  label: 'Shock',
  help: 'Which of the measured shocks of the file, counted from the first.',
  default: 1,
  min: 1,
  max: 50,
});

/** The measured shocks of a file in its order; what names no shock of its build counts for all of them. */
export function measuredCases(parts: Parts): readonly MeasuredShockCase[] {
  const all = parts.measurements ?? [];
  const keys = [...new Set(all.map(({ build, shock }) => JSON.stringify([build.name, shock ?? ''])))];
  return keys.flatMap((key) => {
    const [buildName, shockName] = JSON.parse(key) as [string, string];
    const ofBuild = all.filter(({ build }) => build.name === buildName);
    const named = ofBuild.some(({ shock }) => shock !== undefined);
    if (shockName === '' && named) return [];
    const counted = ofBuild.filter(({ shock }) => (shock ?? '') === shockName || shock === undefined);
    const [first] = counted;
    if (first === undefined) return [];
    const name = shockName === '' ? buildName : `${shockName} (${buildName})`;
    return [caseOf(parts, first.build, name, counted)];
  });
}

/** The measured shock of a place in the file. */
export function measuredCase(parts: Parts, place: number): MeasuredShockCase {
  const cases = measuredCases(parts);
  const found = cases[place - 1];
  if (found !== undefined) return found;
  const accepted =
    cases.length === 0
      ? '"measurements" in the parts file: a weight hung on the shaft and timed will do, or a dyno file'
      : `1 to ${cases.length}: ${cases.map(({ name }) => name).join(', ')}`;
  throw new InputError({ field: 'which', value: place, accepted });
}

/** A build as it is stated, with some readings or none. */
export function caseOf(
  parts: Parts,
  build: Build,
  name: string,
  measured: readonly MeasurementPart[],
): MeasuredShockCase {
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
    name,
    build,
    problem: { law, known, unknowns, readings },
    label,
    stated: known.kinematicViscosity,
    temperature: temperatures[0] ?? benchTemperature,
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

/** A tolerance either way as a standard uncertainty. */
function halved<Name extends 'holeDiameter' | 'gap'>(name: Name, tolerance: number | undefined) {
  return tolerance === undefined || tolerance === 0 ? {} : { [name]: tolerance / Math.sqrt(3) };
}

/** Viscosity at 25 °C that the label allows [m²/s]: its own interval, or as much either way as the file or usage says. */
function labelInterval({ tolerances }: Parts, { oil: { definition } }: Build): readonly [number, number] {
  const oil = createOil(definition);
  if (oil.isInterval) return [viscosityAt(oil.low, reference), viscosityAt(oil.high, reference)];
  const typical = viscosityAt(oil.typical, reference);
  const doubt =
    tolerances?.viscosity === undefined || tolerances.viscosity === 0 ? labelDoubt : tolerances.viscosity;
  return [typical * (1 - doubt), typical * (1 + doubt)];
}

/** `385 ± 20 cSt`: a value and its uncertainty with two digits of it at most. */
export function plusMinus(value: number, half: number, unit: string): string {
  const digits = Math.max(0, Math.min(4, 1 - Math.floor(Math.log10(half || 1))));
  const coarse = half >= 10 ? 10 ** Math.floor(Math.log10(half) - 1) : 1;
  const shown = (number: number): string =>
    half >= 10 ? String(Math.round(number / coarse) * coarse) : number.toFixed(digits);
  return `${shown(value)} ± ${shown(half)} ${unit}`;
}

/** Cautions of every page that tells to measure. */
export const measuringCautions =
  'Take the spring off without letting it fly, and wear eye protection. A hung weight can fall: clear the space below it and set it down before you touch the shock. Oil of a cold bag or a hot track is cold or hot to the skin. The maker’s instructions and local rules come first.';

/** What the pages of measured shocks take for granted. */
export const measuringAssumptions: readonly string[] = [
  'The shaft moves steadily over the stretch; its first millimetres are left out. Shaft and rod end are counted in the weight.',
  'One time by hand is off by 0.1 s and all of them together by 0.05 s, a filmed one by two frames, the thermometer by 0.5 K, a scale by 2 g, each as a standard uncertainty (common practice, no source) where the file says nothing else.',
  `The oil is off its label by ${100 * labelDoubt} % at most where neither file nor label says how far, a drilled hole by 15 µm, a friction of the file by a fifth.`,
  `The sensor of a dyno is off by 0.1 N and 1 % of the force, all of its forces together by ${sensorZeroDoubt} N, and it drifts by as much while a record lasts (common practice, no source); one test cannot tell its zero from the gas. Samples slower than a tenth of the fastest are left out, and windows of seven samples do not overlap, and of a long record as many are passed over that ${mostForces} forces are left at most.`,
  'The law itself is off by 2 % between the speeds measured and by 2 % more for each factor of 3 beyond: our own choice (common practice, no source).',
  'Air in the oil has no part in a steady force, and no reading here tells it. Nothing leaves this machine.',
];

/** What they rest on. */
export const measuringSources: readonly string[] = [
  'JCGM 100:2008, Guide to the Expression of Uncertainty in Measurement, 4.3, 5.1 and 5.2.',
  'Levenberg, Quart. Appl. Math. 2 (1944) 164; Marquardt, J. SIAM 11 (1963) 431; Moré, Lect. Notes Math. 630 (1978) 105: the fit.',
  'Grubbs & Beck, Technometrics 14 (1972) 847: odd repeats.',
];
