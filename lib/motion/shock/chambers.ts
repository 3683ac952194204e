import { ConvergenceError } from '../../numeric/root-finding.js';
import type { GivingGas, MovingShock } from './moving-shock.js';
import { expansionOfOil, oilExpansionSlope, pressureAtExpansion } from './oil-volume.js';

/** Pressures at a place and filling, with their slopes over both; written anew by each evaluation. */
export interface ChamberPressures {
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
  readonly evaluate: (travel: number, room: number, hasCavity: boolean, pressures: ChamberPressures) => void;
  /** Writes the pressures and their slopes. */
  readonly evaluateWithSlopes: (
    travel: number,
    room: number,
    hasCavity: boolean,
    pressures: ChamberPressures,
  ) => void;
  /** Volume of the cavity [m³] were it open; below 0 where the oil is whole. */
  readonly cavity: (travel: number, room: number) => number;
  /** Gas volume that could still be given up [m³]; infinite where mixed. */
  readonly gasRoomLeft: (travel: number, room: number) => number;
  /** Volume by which the smaller chamber is still larger than a thin layer of oil [m³]: below 0 the piston has met its end. */
  readonly oilLeft: (travel: number, room: number) => number;
}

export function emptyPressures(): ChamberPressures {
  return { near: 0, far: 0, nearByRoom: 0, nearByTravel: 0, farByRoom: 0, farByTravel: 0 };
}

/** Least oil of a chamber, over that of the far one at full extension. */
const thinLayer = 0.01;

/** How close to its capacity a gas is asked for its pressure. */
const fullShare = 1 - 1e-12;

/** Binds the chambers of a shock. */
export function bindChambers(shock: MovingShock): Chambers {
  const { oil, gas, layout, pistonArea, shaftArea, farVolume, releasePressure } = shock;
  const blind = layout !== 'shaft-side';
  const farArea = blind ? pistonArea - shaftArea : -pistonArea;
  const releasedExpansion = expansionOfOil(oil, releasePressure);

  function farPressure(travel: number, room: number): number {
    const held = farVolume + farArea * travel - room;
    return held > 0 ? pressureAtExpansion(oil, room / held) : Number.NaN;
  }

  function writeFar(travel: number, room: number, hasCavity: boolean, pressures: ChamberPressures): void {
    pressures.far = hasCavity ? releasePressure : farPressure(travel, room);
  }

  function writeFarSlopes(
    travel: number,
    room: number,
    hasCavity: boolean,
    pressures: ChamberPressures,
  ): void {
    if (hasCavity) {
      pressures.farByRoom = 0;
      pressures.farByTravel = 0;
      return;
    }
    const volume = farVolume + farArea * travel;
    const perExpansion = 1 / oilExpansionSlope(oil, pressures.far) / (volume - room) ** 2;
    pressures.farByRoom = perExpansion * volume;
    pressures.farByTravel = -perExpansion * room * farArea;
  }

  /** Oil of the near chamber at the reference pressure. */
  const nearOil = (travel: number, room: number) => oil.volume - farVolume - farArea * travel + room;

  /** Mixed: the near chamber holds its oil in the room that the piston leaves it. */
  function writeMixed(travel: number, room: number, slopes: boolean, pressures: ChamberPressures): void {
    const volume = oil.volume - farVolume - pistonArea * travel;
    const held = nearOil(travel, room);
    pressures.near = held > 0 && volume > 0 ? pressureAtExpansion(oil, volume / held - 1) : Number.NaN;
    if (!slopes) return;
    const perExpansion = 1 / oilExpansionSlope(oil, pressures.near) / (held * held);
    pressures.nearByRoom = -perExpansion * volume;
    pressures.nearByTravel = perExpansion * (-pistonArea * held + volume * farArea);
  }

  function writeGas(travel: number, room: number, slopes: boolean, pressures: ChamberPressures): void {
    const taken = shaftArea * travel + room;
    const held = nearOil(travel, room);
    if (!(held > 0)) {
      pressures.near = Number.NaN;
      return;
    }
    squeeze(shock, taken, held);
    const { given } = squeezed;
    const full = given >= gas.capacity * fullShare;
    pressures.near = full ? pressureAtExpansion(oil, (gas.capacity - taken) / held) : squeezed.pressure;
    if (!slopes) return;
    const oilSlope = held * oilExpansionSlope(oil, pressures.near);
    const lost = 1 - expansionOfOil(oil, pressures.near);
    const slope = full ? Number.POSITIVE_INFINITY : gasSlope(gas, given, pressures.near);
    const perVolume = full ? -1 / oilSlope : slope / (1 - oilSlope * slope);
    pressures.nearByRoom = perVolume * (1 - lost);
    pressures.nearByTravel = perVolume * (shaftArea + lost * farArea);
  }

  const writeNear = layout === 'mixed' ? writeMixed : writeGas;
  return {
    farArea,
    sense: blind ? 1 : -1,
    evaluate: (travel, room, hasCavity, pressures) => {
      writeFar(travel, room, hasCavity, pressures);
      writeNear(travel, room, false, pressures);
    },
    evaluateWithSlopes: (travel, room, hasCavity, pressures) => {
      writeFar(travel, room, hasCavity, pressures);
      writeFarSlopes(travel, room, hasCavity, pressures);
      writeNear(travel, room, true, pressures);
    },
    cavity: (travel, room) => {
      const volume = farVolume + farArea * travel;
      return releasedExpansion === Number.POSITIVE_INFINITY
        ? Number.NEGATIVE_INFINITY
        : room - (volume - room) * (releasedExpansion - 1);
    },
    oilLeft: (travel, room) =>
      Math.min(farVolume + farArea * travel, nearOil(travel, room)) - thinLayer * farVolume,
    gasRoomLeft: (travel, room) =>
      layout === 'mixed' ? Number.POSITIVE_INFINITY : gas.capacity - shaftArea * travel - room,
  };
}

/** Slope of the gas pressure [Pa/m³] by a difference, from the pressure at one end of it. */
function gasSlope(gas: GivingGas, given: number, pressure: number): number {
  const step = -1e-6 * (gas.capacity - given);
  return (gas.pressure(given + step) - pressure) / step;
}

const stepLimit = 60;

/** Filled by {@link squeeze} and read by its caller, never handed out. */
const squeezed = { given: 0, pressure: 0 };

/**
 * Volume that the gas gives up [m³], and its pressure, where gas and oil of its chamber give up a volume together. The oil gives little:
 * Newton's method from the whole volume, with the slope taken once, settles in two steps; a bracket keeps it safe.
 */
function squeeze({ gas, oil }: MovingShock, taken: number, held: number): void {
  const full = gas.capacity * fullShare;
  let low = Math.min(0, taken);
  let high = Math.max(0, Math.min(taken, full));
  let given = taken < full ? taken : high;
  let slope = 0;
  let excessSlope = 0;
  let before = Number.POSITIVE_INFINITY;
  const settled = 1e-7 * Math.max(Math.abs(taken), 1e-3 * gas.capacity);
  for (let step = 0; step < stepLimit; step++) {
    const pressure = gas.pressure(given);
    const excess = given + held * (1 - expansionOfOil(oil, pressure)) - taken;
    if (excess > 0) high = given;
    else low = given;
    if (step === 0 && given === full && excess <= 0) {
      squeezed.given = full;
      return;
    }
    // The slope is taken anew where the last one did not halve the distance.
    if (step === 0 || Math.abs(excess) > 0.1 * before) {
      slope = gasSlope(gas, given, pressure);
      excessSlope = 1 - held * oilExpansionSlope(oil, pressure) * slope;
    }
    before = Math.abs(excess);
    const change = excess / excessSlope;
    const next = given - change;
    if (Math.abs(change) <= settled) {
      squeezed.given = next;
      squeezed.pressure = pressure - slope * change;
      return;
    }
    const halve = !(next > low && next < high) || step % 10 === 9;
    given = halve ? (low + high) / 2 : next;
    if (halve) before = 0;
    if (high - low <= 4e-16 * Math.abs(high)) {
      squeezed.given = given;
      squeezed.pressure = gas.pressure(given);
      return;
    }
  }
  throw new ConvergenceError('volume given up by the gas', low, high);
}
