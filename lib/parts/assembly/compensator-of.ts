import type { Compensator } from '../../gas/compensator.js';
import { formatQuantity } from '../../units/index.js';
import type { CompensatorKind, ShockPart } from '../shock-part.js';
import { gasFractionOf } from './gas-statement.js';

/** Stiffness of a vented bladder where nothing says so [Pa/m³]: a guess, a soft rubber cup. */
const guessedStiffness = 40e9;

/** What makes room, and what was taken for granted about it besides its volume. */
interface Made {
  readonly compensator: Compensator;
  readonly assumptions: readonly string[];
}

/**
 * The compensator of a shock whose volume is known.
 *
 * @param volume - what it takes from the oil at closing, gas and walls [m³]
 * @param room - for oil and gas at closing [m³]
 */
export function compensatorOf(shock: ShockPart, kind: CompensatorKind, volume: number, room: number): Made {
  const { stiffness = 0, side } = shock.compensator ?? {};
  const seat = side === undefined ? {} : { side };
  switch (kind) {
    case 'none':
      return { compensator: { kind }, assumptions: [] };
    case 'air-pocket':
      return { compensator: { kind, volume, ...seat }, assumptions: [] };
    case 'bladder':
      return {
        compensator: { kind, volume, stiffness, vented: false, ...seat },
        assumptions: unstiffened(shock),
      };
    case 'vented-bladder':
      return ventedBladder(shock, volume);
    case 'foam': {
      const gasFraction = gasFractionOf(shock, kind);
      const guess = shock.compensator?.gasFraction === undefined;
      const sentence = `How much of the foam is gas is not given: ${Math.round(100 * gasFraction)} % is a guess.`;
      return {
        compensator: { kind, volume, gasFraction, stiffness, ...seat },
        assumptions: [...(guess ? [sentence] : []), ...unstiffened(shock)],
      };
    }
    case 'emulsion':
      return { compensator: { kind, gasFraction: volume / room }, assumptions: [] };
  }
}

function ventedBladder({ compensator }: ShockPart, volume: number): Made {
  const stiffness = compensator?.stiffness ?? guessedStiffness;
  const side = compensator?.side;
  const written = formatQuantity(guessedStiffness, 'volumeStiffness', 'kPa/ml', 3);
  return {
    compensator: {
      kind: 'bladder',
      volume,
      stiffness,
      vented: true,
      ...(side === undefined ? {} : { side }),
    },
    assumptions:
      compensator?.stiffness === undefined
        ? [`The stiffness of the bladder is not given: ${written} is a guess.`]
        : [],
  };
}

function unstiffened({ compensator }: ShockPart): readonly string[] {
  if (compensator?.stiffness !== undefined) return [];
  return ['How stiff its walls are is not given: they are taken to add nothing, as soft rubber nearly does.'];
}
