import { requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { optional, requireShape, type Shape } from '../../base/shape.js';
import {
  type Compensator,
  compensatorGas,
  compensatorLayout,
  compensatorShape,
  compensatorSolidVolume,
  compensatorVolume,
  requireCompensator,
} from '../../gas/compensator.js';
import { type Gas, requireGas } from '../../gas/gas.js';
import type { GasRoom } from '../../gas/gas-room.js';
import { pocketExponent } from '../../gas/polytropic-exponent.js';
import { fluidRoom, type ShockChamber, shaftCrossSection, shockChamberShape } from './chamber.js';

/**
 * How the cap was closed, and what the gas then is like.
 *
 * @public
 */
export interface Closing {
  /** How far the shaft was pushed in [m], 0 to the stroke. */
  readonly position: number;
  /** Temperature of oil and gas [K], above 0. */
  readonly temperature: number;
  /** Absolute pressure outside, which is also the pressure inside as the bleed closes [Pa], above 0. */
  readonly ambientPressure: number;
  /** Air left in the oil as free bubbles [m³], 0 or more. */
  readonly freeAir: number;
  /** Air that the oil holds dissolved [m³ at the pressure outside], 0 or more; 0 where left out. It comes out only while a shock stands. */
  readonly dissolvedAir?: number;
  /** Density of the oil as it was closed [kg/m³], where the growth of the oil shall follow from its density later. */
  readonly oilDensity?: number;
  /** Polytropic exponent of a stroke, 1 to 1.4; that of a pocket of this size by default, 1 for the small bubbles of an emulsion. */
  readonly polytropicExponent?: number;
  /** Absolute pressure at which air comes out of the oil and a cavity opens [Pa], 0 (the default) to 20 000. */
  readonly airReleasePressure?: number;
}

/** Form of {@link Closing}. */
export const closingShape: Shape = {
  position: 'm',
  temperature: 'K',
  ambientPressure: 'Pa',
  freeAir: 'm³',
  dissolvedAir: optional('m³ at the pressure outside'),
  oilDensity: optional('kg/m³'),
  polytropicExponent: optional(''),
  airReleasePressure: optional('Pa'),
};

/**
 * A shock filled and closed.
 *
 * @public
 */
export interface ClosedShock {
  /** The inside of the body. */
  readonly chamber: ShockChamber;
  /** What makes room. */
  readonly compensator: Compensator;
  /** How it was closed. */
  readonly closing: Closing;
  /** Oil in it, at the temperature of closing [m³]. */
  readonly oilVolume: number;
  /** Solid part of the compensator [m³]. */
  readonly compensatorSolid: number;
  /** The gas, which force and cavitation ask too. */
  readonly gas: Gas;
  /** All gas at closing [m³]: the most that the oil can ever take. */
  readonly gasVolume: number;
  /** Cross-section of the shaft [m²]. */
  readonly shaftArea: number;
}

/**
 * Closes a shock: what the compensator and the bubbles leave free at the chosen position is oil.
 *
 * Oil is taken as incompressible: 1 bar squeezes 4 ml of silicone by 0.0005 ml, which is 0.07 mm of a 3 mm shaft. The body
 * does not give way.
 *
 * @param chamber - sizes that fit into each other
 * @param compensator - volumes in m³, stiffness in Pa/m³
 * @param closing - position [m], temperature [K], pressure outside [Pa], free air [m³]
 * @throws InputError for an input outside its range, or a compensator and bubbles that leave no room for oil
 * @public
 */
export function closeShock(chamber: ShockChamber, compensator: Compensator, closing: Closing): ClosedShock {
  requireShape(
    { chamber, compensator, closing },
    { chamber: shockChamberShape, compensator: compensatorShape, closing: closingShape },
  );
  requirePositive(closing.temperature, 'closing.temperature', 'K');
  requirePositive(closing.ambientPressure, 'closing.ambientPressure', 'Pa');
  requireNotNegative(closing.freeAir, 'closing.freeAir', 'm³');
  requireWithin(closing.position, 0, chamber.stroke, 'closing.position', 'm');
  requireCompensator(compensator);
  const room = fluidRoom(chamber, closing.position);
  const oilVolume = room - compensatorVolume(compensator, room) - closing.freeAir;
  if (!(oilVolume > 0)) {
    throw new InputError({
      field: 'compensator',
      value: compensatorVolume(compensator, room) + closing.freeAir,
      unit: 'm³',
      accepted: `less, with the free air, than the room of ${room}`,
    });
  }
  const shaftArea = shaftCrossSection(chamber);
  const rooms = gasRooms(compensator, room, closing);
  const gas = closedGas(compensator, rooms, closing, shaftArea * closing.position, oilVolume);
  requireGas(gas);
  return {
    chamber,
    compensator,
    closing,
    oilVolume,
    compensatorSolid: compensatorSolidVolume(compensator),
    gas,
    gasVolume: rooms.reduce((sum, { volume }) => sum + volume, 0),
    shaftArea,
  };
}

/** The room of the compensator, and that of the bubbles; one room of both where no walls set them apart. */
function gasRooms(
  compensator: Compensator,
  room: number,
  { freeAir, dissolvedAir = 0 }: Pick<Closing, 'freeAir' | 'dissolvedAir'>,
): readonly GasRoom[] {
  const gas = compensatorGas(compensator, room);
  const bubbles: GasRoom = { volume: freeAir, stiffness: 0, vented: false, dissolvedAir };
  if (gas !== undefined && gas.stiffness === 0 && !gas.vented)
    return [{ ...gas, volume: gas.volume + freeAir, dissolvedAir }];
  return [...(gas ? [gas] : []), ...(freeAir > 0 || dissolvedAir > 0 ? [bubbles] : [])];
}

/**
 * The gas of a shock of which only the compensator is known, not the inside of its body.
 *
 * @param compensator - volumes in m³, stiffness in Pa/m³; not an emulsion, whose gas is a part of the whole room
 * @param closing - how it was closed
 * @param shaftArea - cross-section of the shaft [m²], above 0
 * @param oilVolume - oil inside [m³], 0 or more; 0 leaves its growth out
 * @throws InputError for an input outside its range, or an emulsion
 * @public
 */
export function compensatorGasAt(
  compensator: Compensator,
  closing: Closing,
  shaftArea: number,
  oilVolume: number,
): Gas {
  requireShape(
    { compensator, closing, shaftArea, oilVolume },
    { compensator: compensatorShape, closing: closingShape, shaftArea: 'm²', oilVolume: 'm³' },
  );
  requireCompensator(compensator);
  if (compensator.kind === 'emulsion') {
    throw new InputError({
      field: 'compensator.kind',
      value: compensator.kind,
      accepted: 'one whose gas has a volume of its own, or the inside of the body given',
    });
  }
  const gas = closedGas(
    compensator,
    gasRooms(compensator, 0, closing),
    closing,
    shaftArea * closing.position,
    oilVolume,
  );
  requireGas(gas);
  return gas;
}

function closedGas(
  compensator: Compensator,
  rooms: readonly GasRoom[],
  closing: Closing,
  displacedVolume: number,
  oilVolume: number,
): Gas {
  const volume = rooms.reduce((sum, room) => sum + room.volume, 0);
  const { temperature, ambientPressure, oilDensity, airReleasePressure = 0 } = closing;
  // Small bubbles shed their heat to the oil at any speed of a shock.
  const exponent = compensator.kind === 'emulsion' || volume === 0 ? 1 : pocketExponent(volume);
  return {
    layout: compensatorLayout(compensator),
    rooms,
    closing: {
      displacedVolume,
      pressure: ambientPressure,
      temperature,
      oilVolume,
      ...(oilDensity === undefined ? {} : { oilDensity }),
    },
    ambientPressure,
    polytropicExponent: closing.polytropicExponent ?? exponent,
    airReleasePressure,
  };
}
