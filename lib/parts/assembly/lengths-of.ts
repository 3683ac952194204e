import { madeWith, requireShape } from '../../base/shape.js';
import type { ShockLengths } from '../../fill/length/shock-length.js';
import type { PistonPart } from '../parts.js';
import type { ShockPart } from '../shock-part.js';

/**
 * Lengths of a build of a parts file, where the file has them.
 *
 * @param shock - the shock, in SI
 * @param piston - the piston, in SI; its thickness comes off the travel where the file does not measure that
 * @public
 */
export function lengthsOf(shock: ShockPart, piston: PistonPart): ShockLengths | undefined {
  requireShape({ shock, piston }, { shock: madeWith('seal'), piston: madeWith('piston') });
  const { inside, lengths, stroke } = shock;
  if (lengths === undefined) return undefined;
  const measured = inside === undefined ? undefined : inside.length - piston.piston.thickness;
  return { ...lengths, pistonTravel: lengths.pistonTravel ?? measured ?? stroke + lengths.innerSpacers };
}
