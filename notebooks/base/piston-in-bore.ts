import { InputError } from '../../lib/base/input-error.js';
import type { PistonPart } from '../../lib/parts/parts.js';
import type { ShockPart } from '../../lib/parts/shock-part.js';
import { formatQuantity } from '../../lib/units/index.js';

/** A piston smaller than this part of the bore belongs to another shock; the parts file asks the same of a build. */
const loosest = 0.9;

/** Whether a piston belongs to a bore. */
export function runsIn(diameter: number, bore: number): boolean {
  return diameter < bore && diameter >= loosest * bore;
}

/** Refuses a piston that does not belong to the bore, in the words of the parts file. */
export function requireRunsIn({ name, piston }: PistonPart, shock: ShockPart): void {
  if (runsIn(piston.diameter, shock.bore)) return;
  const millimetres = (length: number): string => formatQuantity(length, 'length', 'mm', 4);
  throw new InputError({
    field: 'piston',
    value: `${name}, ${millimetres(piston.diameter)} across`,
    accepted: `one that runs in the bore of ${shock.name}, ${millimetres(shock.bore)}`,
  });
}
