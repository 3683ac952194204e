import type { InputError } from '../../base/input-error.js';
import { shaftArea } from '../../damper/damper.js';
import { fluidRoom } from '../../fill/chamber/chamber.js';
import { formatQuantity } from '../../units/index.js';
import type { Build } from '../parts.js';
import type { ShockPart } from '../shock-part.js';
import { measuredInside } from './chamber-of.js';
import { closingHabit } from './closing-habit.js';
import { ShockFault } from './shock-fault.js';
import { millilitres, millimetres, placeWords } from './words.js';

/** What is wrong with a build: keys below its shock, its piston or the build itself, and a sentence. */
export interface BuildFault {
  readonly of: 'shock' | 'piston' | 'build';
  readonly path: readonly string[];
  readonly message: string;
}

/** A build whose parts were found. */
export type FoundBuild = Pick<Build, 'shock' | 'piston' | 'oil' | 'closeAt'>;

/** Says in the units and keys of a parts file what the core refused of a build. */
export function faultWords(error: InputError, build: FoundBuild): BuildFault {
  if (error instanceof ShockFault) return { of: 'shock', path: error.path, message: error.sentence };
  const { shock, piston } = build;
  const value = typeof error.value === 'number' ? error.value : Number.NaN;
  const ofShock = (path: readonly string[], message: string): BuildFault => ({ of: 'shock', path, message });
  switch (error.field) {
    case 'gas.rooms':
      return tooLittleGas(build, value);
    case 'compensator':
      return ofShock(gasPath(shock), tooMuchGas(build, value));
    case 'chamber.length':
      return ofShock(
        ['inside', 'length'],
        `must be at least the stroke and the droop spacers, ${millimetres(shock.stroke + (shock.lengths?.innerSpacers ?? 0))}, got ${millimetres(value)}`,
      );
    case 'chamber.solidVolume':
      return ofShock(
        shock.inside?.solidVolume === undefined ? ['inside'] : ['inside', 'solid-volume'],
        `must leave room inside: what is solid takes ${millilitres(value)}, more than there is with the shaft fully in`,
      );
    case 'chamber.shaftDiameter':
      return ofShock(
        ['shaft'],
        `must be thinner than the bore of ${millimetres(shock.bore)}, got ${millimetres(value)}`,
      );
    case 'position':
      return pastStroke(build, value);
    case 'compensator.stiffness':
      return ofShock(
        ['compensator', 'stiffness'],
        `must be greater than 0 kPa/ml for a vented bladder, got ${formatQuantity(value, 'volumeStiffness', 'kPa/ml', 4)}`,
      );
    case 'seal.breakawayForce':
      return ofShock(
        ['seal', 'breakaway-friction'],
        `must be at least the moving friction of ${newtons(shock.seal.typical.kineticForce)}, got ${newtons(value)}`,
      );
    default:
      return {
        of: 'piston',
        path: [],
        message: pistonWords(error, build) ?? `of ${JSON.stringify(piston.name)}: ${error.message}`,
      };
  }
}

const newtons = (force: number): string => formatQuantity(force, 'force', 'N', 4);

/** The key that says how much gas there is, or the shock itself. */
function gasPath({ compensator, closing, oilVolume }: ShockPart): readonly string[] {
  if (compensator?.volume !== undefined) return ['compensator', 'volume'];
  if (compensator?.gasFraction !== undefined && compensator.kind === 'emulsion')
    return ['compensator', 'gas-fraction'];
  if (closing?.drawnOff !== undefined) return ['closing', 'drawn-off'];
  if (oilVolume !== undefined) return ['oil-volume'];
  if (closing?.poured !== undefined) return ['closing', 'poured'];
  return compensator === undefined ? [] : ['compensator'];
}

function habitOf({ shock, closeAt }: FoundBuild) {
  return closingHabit(shock, shock.compensator?.kind ?? 'air-pocket', closeAt);
}

function tooLittleGas(build: FoundBuild, gas: number): BuildFault {
  const { shock, closeAt } = build;
  const { position } = habitOf(build);
  const cubic = (volume: number): string => formatQuantity(volume, 'volume', 'mm³', 4);
  const area = shaftArea(shock);
  const message =
    `must leave more gas than the ${cubic(area * (shock.stroke - position))} that the ${millimetres(shock.shaftDiameter)} shaft takes from where the shock ` +
    `is closed, ${placeWords(position, shock.stroke)}, to the end of its stroke of ${millimetres(shock.stroke)}, got ${cubic(gas)}: the shock locks with the shaft ` +
    `${millimetres(position + gas / area)} in`;
  if (closeAt !== undefined) return { of: 'build', path: ['close-at'], message };
  return { of: 'shock', path: gasPath(shock), message };
}

function tooMuchGas(build: FoundBuild, taken: number): string {
  const inside = measuredInside(build.shock, build.piston);
  const room = inside === undefined ? 0 : fluidRoom(inside.chamber, habitOf(build).position);
  return `leaves no room for oil: with the free air it takes ${millilitres(taken)} of the ${millilitres(room)} inside`;
}

function pastStroke({ shock, closeAt }: FoundBuild, position: number): BuildFault {
  const message = `must be at most the stroke of ${millimetres(shock.stroke)} of ${JSON.stringify(shock.name)}, got ${millimetres(position)}`;
  if (closeAt !== undefined) return { of: 'build', path: ['close-at'], message };
  return { of: 'shock', path: ['closing', 'shaft'], message };
}

/** What does not fit between piston and shock, in words, where these are known. */
function pistonWords(error: InputError, { shock, piston }: FoundBuild): string | undefined {
  const name = JSON.stringify(piston.name);
  const size = formatQuantity(piston.piston.diameter, 'length', 'mm', 5);
  const bore = `the bore of ${formatQuantity(shock.bore, 'length', 'mm', 5)} of ${JSON.stringify(shock.name)}`;
  if (error.field === 'pistonDiameter') return `the piston ${name} of ${size} must be smaller than ${bore}`;
  if (error.field === 'shaftDiameter')
    return `the piston ${name} of ${size} must be larger than the shaft of ${formatQuantity(shock.shaftDiameter, 'length', 'mm', 5)} of ${JSON.stringify(shock.name)}`;
  const valve = /^piston\.valves\[(\d+)\]\.outerDiameter$/u.exec(error.field)?.[1];
  if (valve === undefined || typeof error.value !== 'number') return undefined;
  return `valve ${Number(valve) + 1} of ${name} of ${millimetres(error.value)} must not be larger than ${bore}: ${millimetres(error.value - shock.bore)} too large`;
}
