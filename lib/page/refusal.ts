import { DashpotError } from '../base/dashpot-error.js';
import { InputError } from '../base/input-error.js';
import { optionName } from './parameters/parameter-text.js';
import type { Parameters } from './parameters/parameters.js';

/** What in a refusal of the library belongs to which key of a parts file, and what helps; the first that fits. */
const keys: readonly (readonly [field: RegExp, key: string, accepted: string])[] = [
  [
    /gas|rooms|displacedVolume|pressure/u,
    'compensator',
    'with room for the shaft, for a cavity behind the piston and for oil that grows as it warms: more gas, less oil, or a cooler temperature',
  ],
  [/^position$|^closing|^travels?/u, 'closing', 'a place within the stroke of the shock'],
  [
    /iscosity|temperature|density|fluid/u,
    'oils',
    'liquid enough, and not too thin, at every temperature that the page looks at: the cold and the hot end of the day, and what points or index say of the oil there',
  ],
  [
    /^valve|\.valves/u,
    'valves',
    'discs of a piston that open at less pressure: thinner, or with less preload',
  ],
  [
    /iameter|bore|holes|shape|thickness|gap/u,
    'pistons',
    'of sizes that stay possible when each is off by its tolerance: smaller tolerances, or other holes',
  ],
  [
    /riction|^seal|^pull|[bB]reakaway|kineticForce/u,
    'seal',
    'a friction that the oil does not drown and that does not hold the shaft: 0 N or some tenths of a newton, as measured with a scale',
  ],
  [
    /^(?:oil\.|far|oilV|shaft|stroke$|chamber|piston)/u,
    'shocks',
    'of sizes that leave oil on both sides of the piston over the whole stroke: another inside, oil-volume, shaft or stroke',
  ],
  [
    /^(?:speeds?|fastest|slowest)(?:\[|$)/u,
    'builds',
    'of parts through which the oil flows at the speeds that the page looks at: larger holes, thinner oil, or lower speeds in its settings',
  ],
  [
    /^spring|preload|corner|mass|motionRatio/u,
    'springs',
    'such that spring and gas carry the corner within the stroke',
  ],
];

const otherwise: (typeof keys)[number] = [
  /^/u,
  'builds',
  'of parts nearer to those of a small shock: a law cannot follow a size, a spring or an oil that one of them has',
];

/** Units that a reader never writes, after a number. */
const libraryUnits = /\d (?:K|Pa|m|m²|m³|m²\/s)(?![\p{L}²³/])/u;

/** Whether a refusal speaks of fields and units of the library rather than of settings and keys; names of parts may hold anything. */
function speaksOfTheLibrary({ field, unit, value }: InputError): boolean {
  return unit !== '' || /^\S*(?:[.[\]]|[a-z][A-Z])\S*$/u.test(field) || libraryUnits.test(String(value));
}

/**
 * A refusal in keys of the parts file: what a notebook refuses is worded already, what a law refuses or gives up on the way is not.
 *
 * @param error - what was thrown
 * @param parameters - of the notebook: a setting is told by the name of its option
 * @returns an InputError that names a key; anything else as it is
 */
export function inKeysOfTheFile(error: unknown, parameters: Parameters): unknown {
  // This layer knows no search and no integration by its class.
  if (
    error instanceof DashpotError &&
    (error.name === 'ConvergenceError' || error.name === 'IntegrationError')
  )
    return inWords(otherwise, error);
  if (!(error instanceof InputError) || !speaksOfTheLibrary(error)) return error;
  const { field, unit, value, accepted: wanted } = error;
  // A law may call what it refuses like a setting: the oil's temperature at the cold end of a day.
  if (unit === '' && field in parameters && !libraryUnits.test(String(value)))
    return new InputError({ field: optionName(field), value, accepted: wanted });
  return inWords(keys.find(([fields]) => fields.test(field)) ?? otherwise, error);
}

/** The refusal of a key; what the law said stays with it, for those who mend the page. */
function inWords([, key, accepted]: (typeof keys)[number], cause: Error): InputError {
  const refusal = new InputError({ field: key, value: 'what the parts file says', accepted });
  return Object.assign(refusal, { cause });
}
