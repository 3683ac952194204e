import { InputError } from '../../lib/base/input-error.js';
import { usualUncertainty } from '../../lib/measure/reading/reading.js';
import { integer } from '../../lib/page/parameters/declare-parameters.js';
import {
  labelDoubt,
  type MeasuredProblem,
  measuredProblem,
  mostForces,
  sensorZeroDoubt,
} from '../../lib/parts/measured-problem.js';
import type { Build, MeasurementPart, Parts } from '../../lib/parts/parts.js';
import { benchTemperature } from './day.js';

/** One shock that was measured, or a build that was not. */
export interface MeasuredShockCase extends MeasuredProblem {
  /** `rear left (buggy rear)`. */
  readonly name: string;
  readonly build: Build;
  /** Temperature of the first reading by the thermometer [K]; that of the bench without any. */
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
  if (cases.length === 0)
    throw new InputError({
      field: 'measurements',
      value: 'none',
      accepted: 'one or more in the parts file: a weight hung on the shaft and timed will do, or a dyno file',
    });
  throw new InputError({
    field: 'which',
    value: place,
    accepted: `1 to ${cases.length}: ${cases.map(({ name }) => name).join(', ')}`,
  });
}

/** A build as it is stated, with some readings or none. */
export function caseOf(
  parts: Parts,
  build: Build,
  name: string,
  measured: readonly MeasurementPart[],
): MeasuredShockCase {
  const found = measuredProblem(parts, build, measured);
  return { ...found, name, build, temperature: found.temperature ?? benchTemperature };
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
  `One time by hand is off by ${usualUncertainty.stopwatch} s and all of them together by ${usualUncertainty.handDelay} s, a filmed one by two frames, the thermometer by ${usualUncertainty.thermometer} K, a scale by 2 g, each as a standard uncertainty (common practice, no source) where the file says nothing else.`,
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
