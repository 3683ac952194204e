import type { ShockChamber } from '../fill/chamber/chamber.js';
import type { ShockLengths } from '../fill/length/shock-length.js';
import { totalHoleArea } from '../flow/piston/piston.js';
import type { Compensator } from '../gas/compensator.js';
import type { Build, PistonPart, ShockPart } from './parts.js';

/**
 * The inside of a build and what makes room in it.
 *
 * @public
 */
export interface ShockFill {
  readonly chamber: ShockChamber;
  readonly compensator: Compensator;
  /** Where the parts file wants the cap closed [m]; `undefined` where it leaves that open. */
  readonly closeAt: number | undefined;
  /** What was taken for granted because the parts file does not say it. */
  readonly assumptions: readonly string[];
}

/**
 * Inside and compensator of a build of a parts file. Where the file does not measure them, the body is taken as long as oil and
 * gas need at full extension, and the gas as an air pocket.
 *
 * @param build - shock, piston and closing position of the parts file, in SI
 * @public
 */
export function fillOf(build: Pick<Build, 'shock' | 'piston' | 'closeAt'>): ShockFill {
  const { shock, piston } = build;
  const { inside, compensator, lengths } = shock;
  const solidVolume = inside?.solidVolume ?? pistonVolume(piston);
  const shaftInside = lengths?.innerSpacers ?? 0;
  const shaftArea = (Math.PI / 4) * shock.shaftDiameter ** 2;
  const assumptions: string[] = [];
  if (inside === undefined)
    assumptions.push(
      'The parts file has no "inside": the body is taken as long as its oil and its gas need with the shaft fully out.',
    );
  else if (inside.solidVolume === undefined)
    assumptions.push('The parts file has no "solid-volume": only the piston is taken off, not its nut.');
  if (compensator === undefined)
    assumptions.push(
      'The parts file has no "compensator": its gas is taken as an air pocket, closed at the pressure of the air outside.',
    );
  const needed = shock.oilVolume + shock.gas.volume + solidVolume + shaftArea * shaftInside;
  const chamber = {
    bore: shock.bore,
    shaftDiameter: shock.shaftDiameter,
    stroke: shock.stroke,
    length:
      inside?.length ?? Math.max(needed / ((Math.PI / 4) * shock.bore ** 2), shock.stroke + shaftInside),
    capVolume: inside?.capVolume ?? 0,
    solidVolume,
    shaftInside,
  };
  const pocket = shock.gas.volume - shaftArea * (build.closeAt ?? 0);
  return {
    chamber,
    compensator: compensator ?? { kind: 'air-pocket', volume: pocket },
    closeAt: build.closeAt ?? (compensator === undefined ? 0 : undefined),
    assumptions,
  };
}

/** Solid volume of a piston [m³], its straight holes taken off. */
function pistonVolume({ piston }: PistonPart): number {
  return ((Math.PI / 4) * piston.diameter ** 2 - totalHoleArea(piston)) * piston.thickness;
}

/**
 * Lengths of a build of a parts file, where the file has them.
 *
 * @param shock - the shock, in SI
 * @param piston - the piston, in SI; its thickness comes off the travel where the file does not measure that
 * @public
 */
export function lengthsOf(shock: ShockPart, piston: PistonPart): ShockLengths | undefined {
  const { inside, lengths, stroke } = shock;
  if (lengths === undefined) return undefined;
  const measured = inside === undefined ? undefined : inside.length - piston.piston.thickness;
  return { ...lengths, pistonTravel: lengths.pistonTravel ?? measured ?? stroke + lengths.innerSpacers };
}
