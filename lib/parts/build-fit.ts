import { blindShare, gasPressure } from '../damper/gas.js';
import { discOpeningPressure } from '../flow/valve/disc-valve.js';
import { formatQuantity } from '../units/index.js';
import type { PistonPart, ShockPart } from './parts.js';
import { holesFault } from './schema/piston-schema.js';
import { shown } from './source/shown.js';

/** A piston this much smaller than the bore was taken for another shock: the gap would carry most of the oil. */
const loosest = 0.9;

/** Says why a cap cannot be closed at a position of the shaft, or nothing. */
export function closingFault(shock: ShockPart, closeAt: number): string | undefined {
  if (closeAt <= shock.stroke) return undefined;
  const millimetres = (value: number): string => formatQuantity(value, 'length', 'mm', 4);
  return `must be at most the stroke of ${millimetres(shock.stroke)} of ${shown(shock.name)}, got ${millimetres(closeAt)}`;
}

/** Says why a piston does not go into a shock, or nothing. */
export function fitFault(shock: ShockPart, part: PistonPart): string | undefined {
  const { diameter, holes } = part.piston;
  const millimetres = (value: number): string => formatQuantity(value, 'length', 'mm', 5);
  const piston = `the piston ${shown(part.name)} of ${millimetres(diameter)}`;
  const bore = `the bore of ${millimetres(shock.bore)} of ${shown(shock.name)}`;
  if (diameter >= shock.bore) return `${piston} must be smaller than ${bore}`;
  if (diameter < loosest * shock.bore)
    return `${piston} must be at least ${millimetres(loosest * shock.bore)} for ${bore}`;
  if (shock.shaftDiameter >= diameter)
    return `${piston} must be larger than the shaft of ${millimetres(shock.shaftDiameter)} of ${shown(shock.name)}`;
  const fault = holesFault(holes, diameter, shock.shaftDiameter);
  if (fault !== undefined) return `the holes of ${shown(part.name)} ${fault}`;
  return valvesFault(shock, part, bore);
}

/** Says which disc is too large for the bore, or can never open, or nothing. */
function valvesFault(shock: ShockPart, part: PistonPart, bore: string): string | undefined {
  const { piston } = part;
  const millimetres = (value: number): string => formatQuantity(value, 'length', 'mm', 4);
  const bar = (value: number): string => formatQuantity(value, 'pressure', 'bar', 3);
  for (const [index, valve] of (piston.valves ?? []).entries()) {
    const disc = `valve ${index + 1} of ${shown(part.name)}`;
    if (valve.outerDiameter > shock.bore) {
      return `${disc} of ${millimetres(valve.outerDiameter)} must not be larger than ${bore}: ${millimetres(valve.outerDiameter - shock.bore)} too large`;
    }
    const opening = discOpeningPressure(valve, piston);
    const limit = largestPressureDrop(shock, valve.face === 'shaft-side' ? 1 : -1);
    if (opening >= limit) {
      return (
        `${disc} never opens: its preload of ${millimetres(valve.preload)} holds up to ${bar(opening)}, but the gas of ` +
        `${shown(shock.name)} gives ${bar(limit)} before the oil tears; a preload below ${millimetres((valve.preload * limit) / opening)} opens`
      );
    }
  }
  return undefined;
}

/** Largest pressure drop that the gas allows anywhere in the stroke [Pa]. */
function largestPressureDrop({ gas, shaftDiameter, stroke }: ShockPart, sign: 1 | -1): number {
  const behind = sign > 0 ? blindShare(gas) : 1 - blindShare(gas);
  if (behind === 0) return Number.POSITIVE_INFINITY;
  const pushedIn = (Math.PI / 4) * shaftDiameter ** 2 * stroke;
  return (gasPressure(gas, pushedIn) - (gas.airReleasePressure ?? 0)) / behind;
}
