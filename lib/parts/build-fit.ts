import { formatQuantity } from '../units/index.js';
import type { PistonPart, ShockPart } from './parts.js';
import { holesFault } from './piston-schema.js';
import { shown } from './shown.js';

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
  return fault === undefined ? undefined : `the holes of ${shown(part.name)} ${fault}`;
}
