import { chamberVolume, fluidRoom, type ShockChamber } from '../../fill/chamber/chamber.js';
import { areaOfHoles } from '../../flow/piston/piston.js';
import type { PistonPart } from '../parts.js';
import type { ShockPart } from '../shock-part.js';
import { ShockFault } from './shock-fault.js';
import { millilitres, millimetres } from './words.js';

/** An inside, and what was taken for granted about it. */
export interface Inside {
  readonly chamber: ShockChamber;
  readonly assumptions: readonly string[];
}

/** Solid volume of a piston [m³], its holes taken off at their narrowest. */
function pistonVolume({ piston }: PistonPart): number {
  return ((Math.PI / 4) * piston.diameter ** 2 - areaOfHoles(piston)) * piston.thickness;
}

/** The inside that the file measures, or `undefined`. */
export function measuredInside(shock: ShockPart, piston: PistonPart): Inside | undefined {
  const { inside } = shock;
  if (inside === undefined) return undefined;
  const solidVolume = inside.solidVolume ?? pistonVolume(piston);
  return {
    chamber: { ...frameOf(shock), length: inside.length, capVolume: inside.capVolume, solidVolume },
    assumptions:
      inside.solidVolume === undefined
        ? [
            `What is solid inside is not given: the piston alone is taken off, ${millilitres(solidVolume)}, not its nut.`,
          ]
        : [],
  };
}

function frameOf({ bore, shaftDiameter, stroke, lengths }: ShockPart) {
  return { bore, shaftDiameter, stroke, shaftInside: lengths?.innerSpacers ?? 0 };
}

/** Room for oil under the rim at a position in a body as short as its stroke and piston allow [m³]: a guess. */
export function guessedRoom(shock: ShockPart, piston: PistonPart, position: number): number {
  return fluidRoom(shortBody(shock, piston), position);
}

function shortBody(shock: ShockPart, piston: PistonPart): ShockChamber {
  const frame = frameOf(shock);
  const length = shock.stroke + frame.shaftInside + piston.piston.thickness;
  return { ...frame, length, capVolume: 0, solidVolume: pistonVolume(piston) };
}

/**
 * An inside for a file that does not measure it: full of oil to the rim with the shaft fully out, with what makes room under the cap.
 *
 * @param fill - position of closing [m]; oil where it is said, gas with walls, and free air [m³]
 * @throws ShockFault where oil and gas fill less than the stroke alone
 */
export function assumedInside(
  shock: ShockPart,
  piston: PistonPart,
  fill: {
    readonly position: number;
    readonly oil: number | undefined;
    readonly gas: number;
    readonly freeAir: number;
    /** What of the gas is under the cap, above the rim [m³]. */
    readonly underCap: number;
  },
): Inside {
  const short = shortBody(shock, piston);
  const { position, oil, gas, freeAir, underCap } = fill;
  const said = (chamber: ShockChamber): Inside => ({
    chamber,
    assumptions: [
      `The inside of the body is not measured: ${millimetres(chamber.length)} long and ${millilitres(fluidRoom(chamber, position) - gas - freeAir)} of oil are ${oil === undefined ? 'a guess, as short as stroke and piston allow' : 'what its oil and gas need'}.`,
    ],
  });
  if (oil === undefined) return said({ ...short, capVolume: underCap });
  const area = (Math.PI / 4) * shock.bore ** 2;
  const needed = oil + gas + freeAir + chamberVolume(short) - fluidRoom(short, position);
  const shortest = shock.stroke + short.shaftInside;
  const length = Math.max((needed - underCap) / area, shortest);
  const capVolume = needed - length * area;
  // What rounding leaves of nothing is nothing.
  if (capVolume > -1e-12 * needed) return said({ ...short, length, capVolume: Math.max(capVolume, 0) });
  throw new ShockFault(
    shock.oilVolume === undefined ? ['closing', 'poured'] : ['oil-volume'],
    oil,
    `of ${millilitres(oil)} with gas of ${millilitres(gas + freeAir)} does not fill a body of this bore that is as long as the stroke, which has room for ${millilitres(oil + gas + freeAir - capVolume)}`,
  );
}
