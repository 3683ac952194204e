import { madeWith, optional, requireShape } from '../../base/shape.js';
import { type Damper, requireDamper, shaftArea } from '../../damper/damper.js';
import { fluidRoom } from '../../fill/chamber/chamber.js';
import { type ClosedShock, closeShock } from '../../fill/chamber/closed-shock.js';
import { createOil } from '../../fluid/oil/oil.js';
import { compensatorVolume } from '../../gas/compensator.js';
import { formatQuantity } from '../../units/index.js';
import type { Build } from '../parts.js';
import type { CompensatorKind, SealInterval, ShockPart } from '../shock-part.js';
import { assumedInside, guessedRoom, measuredInside } from './chamber-of.js';
import { type ClosingHabit, closingHabit } from './closing-habit.js';
import { bubblesIn, closingOf, type FillChoices, fillChoicesShape, warmthAssumed } from './closing-of.js';
import { compensatorOf } from './compensator-of.js';
import { gasStatement } from './gas-statement.js';
import { oilStated, roomFor } from './stated-oil.js';
import { valveRemarks } from './valve-remarks.js';
import { millilitres } from './words.js';

/**
 * What the parts file says of a shock, as against what was taken for granted.
 *
 * @public
 */
export interface KnownOfShock {
  /** How much gas makes room. */
  readonly gas: boolean;
  /** The sizes inside the body. */
  readonly inside: boolean;
  /** The oil that stays. */
  readonly oilVolume: boolean;
  /** Where it was closed. */
  readonly closing: boolean;
  /** Friction of the seals. */
  readonly seal: boolean;
}

/**
 * A build filled and closed: one damper and one fill with one gas.
 *
 * @public
 */
export interface AssembledShock {
  /** The damper; its gas is that of `closed`, its seals are the typical ones. */
  readonly damper: Damper;
  /** The fill. */
  readonly closed: ClosedShock;
  readonly seal: SealInterval;
  /** Where it was closed, and whether that is a habit. */
  readonly habit: ClosingHabit;
  readonly known: KnownOfShock;
  /** What was taken for granted, sentences with numbers for a person to read. */
  readonly assumptions: readonly string[];
  /** What is odd about the build and yet possible, sentences for a person to read. */
  readonly remarks: readonly string[];
}

/**
 * Fills and closes a build of a parts file: everything that force, cavitation, filling, static push and heat ask, from one gas.
 *
 * Where the file does not say how much gas, oil and friction there are, stated assumptions stand in; see {@link AssembledShock.known}.
 *
 * @param build - shock, piston, oil and closing position of the parts file, in SI
 * @param choices - temperature [K], closing position [m] and free air [m³] that go before those of the file
 * @throws ShockFault where statements of the file contradict each other; InputError where the parts do not fit, the gas makes no room for the
 * shaft, or a choice is outside its range
 * @public
 */
export function assembleShock(
  build: Pick<Build, 'shock' | 'piston' | 'oil' | 'closeAt'>,
  choices: FillChoices = {},
): AssembledShock {
  requireShape(
    { build, choices },
    {
      build: {
        shock: madeWith('seal'),
        piston: madeWith('piston'),
        oil: madeWith('definition'),
        closeAt: optional('m'),
      },
      choices: fillChoicesShape,
    },
  );
  const { shock, piston } = build;
  const oil = createOil(build.oil.definition);
  const kind = shock.compensator?.kind ?? 'air-pocket';
  const habit = closingHabit(shock, kind, choices.closeAt ?? build.closeAt);
  const { position } = habit;
  const measured = measuredInside(shock, piston);
  const room = measured === undefined ? undefined : fluidRoom(measured.chamber, position);
  const oilSaid = oilStated(shock);
  const likelyRoom = room ?? roomFor(oilSaid, shock, kind) ?? guessedRoom(shock, piston, position);
  const air = bubblesIn(shock, kind, choices, oilSaid ?? likelyRoom - (shock.compensator?.volume ?? 0));
  const facts = { shock, kind, shaftArea: shaftArea(shock), position, room, likelyRoom, oil: oilSaid };
  const gas = gasStatement({ ...facts, freeAir: air.volume });
  const inside =
    measured ??
    assumedInside(shock, piston, {
      position,
      oil: oilSaid,
      gas: gas.volume,
      freeAir: air.volume,
      underCap: underCap(shock, kind, gas.volume, air.volume + facts.shaftArea * position),
    });
  const finalRoom = fluidRoom(inside.chamber, position);
  const { compensator, assumptions: made } = compensatorOf(shock, kind, gas.volume, finalRoom);
  const oilVolume = finalRoom - compensatorVolume(compensator, finalRoom) - air.volume;
  const closing = closingOf(shock, choices, { position, freeAir: air.volume }, oil, Math.max(oilVolume, 0));
  const closed = closeShock(inside.chamber, compensator, closing);
  const damper = damperWith(build, closed);
  requireDamper(damper);
  return {
    damper,
    closed,
    seal: shock.seal,
    habit,
    known: {
      // Where nothing makes room but bubbles, they are the gas.
      gas: gas.known && (kind !== 'none' || air.assumptions.length === 0),
      inside: measured !== undefined,
      oilVolume: oilSaid !== undefined || (measured !== undefined && gas.known),
      closing: !habit.assumed,
      seal: shock.seal.measured,
    },
    assumptions: [
      ...(build.oil.assumptions ?? []),
      ...(shock.compensator === undefined
        ? ['What makes room for the shaft is not given: an air pocket under the cap is assumed.']
        : []),
      ...gas.assumptions,
      ...made,
      ...inside.assumptions,
      ...(habit.assumed ? [`How it was closed is not given: ${habit.words} is assumed.`] : []),
      ...warmthAssumed(shock, choices),
      ...air.assumptions,
      `The oil holds ${millilitres(closing.dissolvedAir ?? 0)} of air dissolved, as after standing open (data sheets, from memory); it comes out only while a shock stands.`,
      ...sealAssumed(shock.seal),
    ],
    remarks: valveRemarks(damper),
  };
}

/** What of the gas is above the rim in a body that was full with the shaft fully out [m³]: what was drawn off makes the rest of it. */
function underCap({ closing }: ShockPart, kind: CompensatorKind, gas: number, besides: number): number {
  if (kind === 'emulsion') return 0;
  return closing?.drawnOff === undefined ? gas : Math.max(gas + besides - closing.drawnOff, 0);
}

function damperWith({ shock, piston }: Pick<Build, 'shock' | 'piston'>, { gas }: ClosedShock): Damper {
  const { bore, shaftDiameter, stroke, seal } = shock;
  return { bore, shaftDiameter, stroke, piston: piston.piston, gas, seal: seal.typical };
}

function sealAssumed({ low, high, typical, measured }: SealInterval): readonly string[] {
  if (measured) return [];
  const newtons = (force: number) => formatQuantity(force, 'force', 'N', 2);
  return [
    `Friction of the seals is not given: ${newtons(low.kineticForce)} to ${newtons(high.kineticForce)}, typically ${newtons(typical.kineticForce)}, while moving, and half as much again after rest, is a guess (common practice, no source).`,
  ];
}
