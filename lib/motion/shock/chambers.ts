import { bracketedRoot } from '../../numeric/root-finding.js';
import type { GivingGas, MovingShock } from './moving-shock.js';
import { oilExpansion, oilExpansionSlope, pressureAtExpansion } from './oil-volume.js';

/** Pressures at a place and filling, with their slopes over both; written anew by each look. */
export interface ChamberLook {
  /** Absolute pressure on the side of the gas [Pa]; of the blind side where the gas is mixed in. */
  near: number;
  /** Absolute pressure of the other side [Pa]. */
  far: number;
  nearByRoom: number;
  nearByTravel: number;
  farByRoom: number;
  farByTravel: number;
}

/** The two chambers of a shock. The state is the room of the far chamber less its oil at the reference pressure [m³]. */
export interface Chambers {
  /** Area by which the far chamber grows with travel [m²]: positive on the shaft side, negative on the blind side. */
  readonly farArea: number;
  /** 1 where a positive flow comes from the near chamber, −1 where it goes there. */
  readonly sense: 1 | -1;
  /** Writes the pressures only. */
  readonly look: (travel: number, room: number, torn: boolean, look: ChamberLook) => void;
  /** Writes the pressures and their slopes. */
  readonly lookWithSlopes: (travel: number, room: number, torn: boolean, look: ChamberLook) => void;
  /** Volume of the cavity [m³] were it open; below 0 where the oil is whole. */
  readonly cavity: (travel: number, room: number) => number;
  /** Gas volume that could still be given up [m³]; infinite where mixed. */
  readonly gasRoomLeft: (travel: number, room: number) => number;
}

export function emptyLook(): ChamberLook {
  return { near: 0, far: 0, nearByRoom: 0, nearByTravel: 0, farByRoom: 0, farByTravel: 0 };
}

/** How close to its capacity a gas is asked for its pressure. */
const fullShare = 1 - 1e-12;

/** Binds the chambers of a shock. */
export function bindChambers(shock: MovingShock): Chambers {
  const { oil, gas, layout, pistonArea, shaftArea, farVolume, releasePressure } = shock;
  const blind = layout !== 'shaft-side';
  const farArea = blind ? pistonArea - shaftArea : -pistonArea;
  const tornExpansion = oilExpansion(oil, releasePressure);

  function farPressure(travel: number, room: number): number {
    const held = farVolume + farArea * travel - room;
    return held > 0 ? pressureAtExpansion(oil, room / held) : Number.NaN;
  }

  function writeFar(travel: number, room: number, torn: boolean, look: ChamberLook): void {
    look.far = torn ? releasePressure : farPressure(travel, room);
  }

  function writeFarSlopes(travel: number, room: number, torn: boolean, look: ChamberLook): void {
    if (torn) {
      look.farByRoom = 0;
      look.farByTravel = 0;
      return;
    }
    const volume = farVolume + farArea * travel;
    const perExpansion = 1 / oilExpansionSlope(oil, look.far) / (volume - room) ** 2;
    look.farByRoom = perExpansion * volume;
    look.farByTravel = -perExpansion * room * farArea;
  }

  /** Oil of the near chamber at the reference pressure. */
  const nearOil = (travel: number, room: number) => oil.volume - farVolume - farArea * travel + room;

  /** Mixed: the near chamber holds its oil in the room that the piston leaves it. */
  function writeMixed(travel: number, room: number, slopes: boolean, look: ChamberLook): void {
    const volume = oil.volume - farVolume - pistonArea * travel;
    const held = nearOil(travel, room);
    look.near = held > 0 && volume > 0 ? pressureAtExpansion(oil, volume / held - 1) : Number.NaN;
    if (!slopes) return;
    const perExpansion = 1 / oilExpansionSlope(oil, look.near) / (held * held);
    look.nearByRoom = -perExpansion * volume;
    look.nearByTravel = perExpansion * (-pistonArea * held + volume * farArea);
  }

  function writeGas(travel: number, room: number, slopes: boolean, look: ChamberLook): void {
    const taken = shaftArea * travel + room;
    const held = nearOil(travel, room);
    if (!(held > 0)) {
      look.near = Number.NaN;
      return;
    }
    const given = gasGivenUp(shock, taken, held);
    const full = given >= gas.capacity * fullShare;
    look.near = full ? pressureAtExpansion(oil, (gas.capacity - taken) / held) : gas.pressure(given);
    if (!slopes) return;
    const oilSlope = held * oilExpansionSlope(oil, look.near);
    const squeezed = 1 - oilExpansion(oil, look.near);
    const slope = full ? Number.POSITIVE_INFINITY : gasSlope(gas, given);
    const perVolume = full ? -1 / oilSlope : slope / (1 - oilSlope * slope);
    look.nearByRoom = perVolume * (1 - squeezed);
    look.nearByTravel = perVolume * (shaftArea + squeezed * farArea);
  }

  const writeNear = layout === 'mixed' ? writeMixed : writeGas;
  return {
    farArea,
    sense: blind ? 1 : -1,
    look: (travel, room, torn, look) => {
      writeFar(travel, room, torn, look);
      writeNear(travel, room, false, look);
    },
    lookWithSlopes: (travel, room, torn, look) => {
      writeFar(travel, room, torn, look);
      writeFarSlopes(travel, room, torn, look);
      writeNear(travel, room, true, look);
    },
    cavity: (travel, room) => {
      const volume = farVolume + farArea * travel;
      return tornExpansion === Number.POSITIVE_INFINITY
        ? Number.NEGATIVE_INFINITY
        : room - (volume - room) * (tornExpansion - 1);
    },
    gasRoomLeft: (travel, room) =>
      layout === 'mixed' ? Number.POSITIVE_INFINITY : gas.capacity - shaftArea * travel - room,
  };
}

/** Slope of the gas pressure by a central difference [Pa/m³]. */
function gasSlope(gas: GivingGas, given: number): number {
  const step = 1e-5 * (gas.capacity - given);
  return (gas.pressure(given + step) - gas.pressure(given - step)) / (2 * step);
}

const stepLimit = 40;

/**
 * Volume that the gas gives up [m³] where gas and oil of its chamber give up a volume together: the oil gives little, so that a secant
 * from the whole volume settles in two or three steps, kept inside a bracket.
 */
function gasGivenUp({ gas, oil }: MovingShock, taken: number, held: number): number {
  const full = gas.capacity * fullShare;
  const excess = (given: number) => given + held * (1 - oilExpansion(oil, gas.pressure(given))) - taken;
  let low = Math.min(0, taken);
  let high = Math.max(0, Math.min(taken, full));
  let before = high;
  if (taken < 0) before = low;
  let valueBefore = excess(before);
  if (high === full && taken > full && valueBefore <= 0) return full;
  const settled = 1e-13 * Math.max(Math.abs(taken), 1e-4 * gas.capacity);
  if (Math.abs(valueBefore) <= settled) return before;
  let given = before - valueBefore;
  for (let step = 0; step < stepLimit; step++) {
    if (!(given > low && given < high)) given = (low + high) / 2;
    const value = excess(given);
    if (value > 0) high = given;
    else low = given;
    const change = (value * (given - before)) / (value - valueBefore);
    if (Math.abs(value) <= settled || Math.abs(change) <= settled) return given - (change || 0);
    before = given;
    valueBefore = value;
    given -= change;
  }
  return bracketedRoot(excess, low, high, 'volume given up by the gas').root;
}
