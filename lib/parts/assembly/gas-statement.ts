import type { CompensatorKind, CompensatorPart, ShockPart } from '../shock-part.js';
import { ShockFault } from './shock-fault.js';
import { millilitres } from './words.js';

/** A volume that something in the parts file says or leads to [m³]. */
interface Statement {
  readonly path: readonly string[];
  readonly volume: number;
  readonly words: string;
}

/** What is known of the fill besides the gas; SI. */
export interface FillFacts {
  readonly shock: ShockPart;
  readonly kind: CompensatorKind;
  readonly shaftArea: number;
  readonly position: number;
  /** Room for oil and gas at closing, where the inside is known. */
  readonly room: number | undefined;
  /** The same, or a guess. */
  readonly likelyRoom: number;
  /** Oil that stays, where it is said. */
  readonly oil: number | undefined;
  readonly freeAir: number;
}

/** What the compensator takes from the oil as the cap is closed [m³], gas and walls, and what is said about it. */
export interface GasStatement {
  readonly volume: number;
  /** Whether it follows from the file, or is a guess. */
  readonly known: boolean;
  readonly assumptions: readonly string[];
}

/** Gas where nothing is known, as multiple of what the shaft displaces: a guess. */
const guessedGas = 2;

/** Part of foam, and of an emulsion, that is gas, where nothing is known: guesses. */
const guessedGasFraction = { foam: 0.85, emulsion: 0.05 } as const;

/** Two statements of one gas contradict each other beyond this, and beyond this part of the oil: what a syringe and a calliper are good for. */
const syringeError = 0.1e-6;
const relativeError = 0.05;

/**
 * Volume of the compensator at closing from all that the file says of it. The first statement counts: its own volume, what was drawn off, what
 * the inside leaves beside the oil. The others must agree.
 *
 * @throws ShockFault where they do not, or leave no gas
 */
export function gasStatement(facts: FillFacts): GasStatement {
  const statements = statementsOf(facts);
  for (const { path, volume, words } of statements) {
    if (facts.kind !== 'none' && !(volume > 0))
      throw new ShockFault(path, volume, `${words}: no room for gas`);
  }
  const [first, ...others] = statements;
  if (first === undefined) return guessed(facts);
  const tolerance = Math.max(syringeError, relativeError * (facts.oil ?? facts.room ?? 0));
  const assumptions = others.flatMap((other): string[] => {
    const off = Math.abs(other.volume - first.volume);
    if (off > tolerance)
      throw new ShockFault(
        first.path,
        first.volume,
        `${first.words}, but ${other.words}: one of them is wrong`,
      );
    if (off < 0.05 * syringeError) return [];
    return [
      `What makes room is said twice, as ${millilitres(first.volume)} and as ${millilitres(other.volume)}: the first counts.`,
    ];
  });
  if (first.path[0] !== 'closing' || first.path[1] !== 'drawn-off' || facts.shock.inside !== undefined)
    return { volume: first.volume, known: true, assumptions };
  const sentence = 'The hollow of the cap is not given: what was drawn off is taken as all that makes room.';
  return { volume: first.volume, known: false, assumptions: [sentence, ...assumptions] };
}

function statementsOf(facts: FillFacts): readonly Statement[] {
  const { shock, kind, shaftArea, position, room, oil, freeAir } = facts;
  const { compensator, inside, closing } = shock;
  const statements: Statement[] = [];
  if (kind === 'none')
    statements.push({
      path: ['compensator', 'kind'],
      volume: 0,
      words: 'says that nothing but oil is inside',
    });
  const own = ownVolume(compensator, facts.likelyRoom);
  if (own !== undefined) statements.push({ ...own, words: `says ${millilitres(own.volume)}` });
  const drawnOff = closing?.drawnOff;
  if (drawnOff !== undefined) {
    const left = drawnOff - shaftArea * position - freeAir;
    // A hollow that nobody measured holds what the compensator says it does.
    const hollow = inside?.capVolume ?? (own === undefined ? 0 : Math.max(own.volume - left, 0));
    const volume = hollow + left;
    statements.push({
      path: ['closing', 'drawn-off'],
      volume,
      words: `${millilitres(drawnOff)} drawn off${hollow > 0 ? ` and the hollow of the cap of ${millilitres(hollow)}` : ''} less the shaft of ${millilitres(shaftArea * position)} that went in and the free air of ${millilitres(freeAir)} leave ${signed(volume)}`,
    });
  }
  if (room !== undefined && oil !== undefined) {
    const volume = room - oil - freeAir;
    statements.push({
      path: [...(shock.oilVolume === undefined ? ['closing', 'poured'] : ['oil-volume'])],
      volume,
      words: `the inside has room for ${millilitres(room)} beside piston and shaft, and oil of ${millilitres(oil)} and free air of ${millilitres(freeAir)} leave ${signed(volume)}`,
    });
  }
  return statements;
}

/** What the compensator itself says. */
function ownVolume(
  compensator: CompensatorPart | undefined,
  room: number,
): Pick<Statement, 'path' | 'volume'> | undefined {
  if (compensator?.volume !== undefined)
    return { path: ['compensator', 'volume'], volume: compensator.volume };
  if (compensator?.kind === 'emulsion' && compensator.gasFraction !== undefined)
    return { path: ['compensator', 'gas-fraction'], volume: compensator.gasFraction * room };
  return undefined;
}

function guessed({ shock, kind, shaftArea, likelyRoom }: FillFacts): GasStatement {
  if (kind === 'emulsion') {
    const share = guessedGasFraction.emulsion;
    const sentence = `How much air is beaten into the oil is not given: ${100 * share} % of both together is a guess.`;
    return { volume: share * likelyRoom, known: false, assumptions: [sentence] };
  }
  const gas = guessedGas * shaftArea * shock.stroke;
  const sentence = `How much gas makes room is not given: ${millilitres(gas)} is a guess, twice what the shaft displaces.`;
  const share = kind === 'foam' ? gasFractionOf(shock, 'foam') : 1;
  return { volume: gas / share, known: false, assumptions: [sentence] };
}

/** Part that is gas, given or guessed. */
export function gasFractionOf({ compensator }: ShockPart, kind: 'foam' | 'emulsion'): number {
  return compensator?.gasFraction ?? guessedGasFraction[kind];
}

const signed = (volume: number): string =>
  volume > 0 ? millilitres(volume) : `less than nothing (${millilitres(volume)})`;
