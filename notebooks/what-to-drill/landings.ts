import { InputError } from '../../lib/base/input-error.js';
import { drilledDamper } from '../../lib/decisions/design/drilled-damper.js';
import type { Block } from '../../lib/page/blocks/block.js';
import type { Build, OilPart } from '../../lib/parts/parts.js';
import type { Cell } from '../../lib/plot/chart/table.js';
import { millimetres } from '../base/bench-wording.js';
import { feelsRight } from '../base/decision-cases.js';
import { type Landed, landed, PastItsOil } from '../base/landed.js';
import { NoRoomForTheShaft } from '../base/moving-build.js';
import { furtherBy, harderBy } from '../base/two-landings.js';
import { celsius, newtons } from '../base/wording.js';
import type { Found, Shown } from './found.js';

/** A landing, or why there is none. */
type Outcome = Landed | 'locks' | 'goes through';

/** The landing of the build as it feels right, and that of designs at the temperature of the page. */
export interface Landings {
  readonly build: Build;
  readonly drop: number;
  readonly temperature: number;
  readonly liked: Landed;
  readonly designs: ReadonlyMap<Shown, Outcome>;
}

/** One part of travel stands for so many parts of force: a fifth more damping takes a twenty-fifth of the travel. */
const forcePerTravel = 5;

const travelOf = ({ outcome }: Landed): number => outcome.largestTravel.value;
const pushOf = ({ outcome }: Landed): number => outcome.largestShockForce.value;

/**
 * Lets the build and some designs land.
 *
 * @throws InputError where the build names no spring or does not land as it is liked
 */
export function landingsOf(
  { build, problem }: Found,
  shown: readonly Shown[],
  oils: readonly OilPart[],
  drop: number,
): Landings {
  const { temperature } = problem;
  const right = feelsRight(build, temperature);
  const land = ({ design }: Shown): Outcome => {
    const { piston } = drilledDamper(problem.damper, design);
    const oil = oils.find(({ name }) => name === design.oil) ?? build.oil;
    try {
      return landed(build, temperature, drop, 'likely', { oil, piston: { name: 'drilled', piston } });
    } catch (error) {
      if (error instanceof NoRoomForTheShaft) return 'locks';
      if (error instanceof PastItsOil) return 'goes through';
      throw error;
    }
  };
  const liked = landed({ ...build, oil: right.oil }, right.temperature, drop);
  return { build, drop, temperature, liked, designs: new Map(shown.map((one) => [one, land(one)])) };
}

/** The same; where nothing lands and no landing is asked for, why. */
export function landingsOrWhy(needed: boolean, ...asked: Parameters<typeof landingsOf>): Landings | string {
  try {
    return landingsOf(...asked);
  } catch (error) {
    if (needed || !(error instanceof InputError)) throw error;
    return error.message;
  }
}

/** Whether a design lands at all. */
export const lands = ({ designs }: Landings, shown: Shown): boolean =>
  typeof (designs.get(shown) ?? 'locks') !== 'string';

/** How far off a design is: its slow force, and its travel in what it stands for of force. */
function off({ liked, designs }: Landings, shown: Shown): number {
  const landing = designs.get(shown);
  if (landing === undefined || typeof landing === 'string') return Number.POSITIVE_INFINITY;
  return Math.max(shown.design.slowError, forcePerTravel * Math.abs(travelOf(landing) / travelOf(liked) - 1));
}

/** The design that comes nearest when slow and as it lands, of the robust ones where there are some. */
export function pickByLanding(landings: Landings, shown: readonly Shown[]): Shown | undefined {
  const landing = shown.filter((one) => lands(landings, one));
  const robust = landing.filter(({ isRobust }) => isRobust);
  return (robust.length > 0 ? robust : landing).toSorted((a, b) => off(landings, a) - off(landings, b))[0];
}

/** `from 100 mm it goes in 0.1 mm further than the 15 mm wanted, and its shock pushes with 48 N at most, 2 % softer than before` */
export function landingText({ drop, liked, designs }: Landings, shown: Shown): string {
  const landing = designs.get(shown);
  if (landing === undefined || typeof landing === 'string')
    return `from ${millimetres(drop)} it does not land`;
  const further = furtherBy(travelOf(landing), travelOf(liked));
  const than = further === 'as far' ? 'as far as wanted' : `${further} than wanted`;
  const push = harderBy(pushOf(landing), pushOf(liked));
  return `from ${millimetres(drop)} it goes in ${millimetres(travelOf(landing))}, ${than}${landing.bottoms ? ' and onto its bump stop' : ''}, its shock pushing with ${newtons(pushOf(landing))} at most, ${push === 'as hard' ? 'as hard as' : `${push} than`} before`;
}

/** The landings side by side. */
export function landingTable({ build, drop, temperature, liked, designs }: Landings): Block {
  const row = (name: string, landing: Outcome): readonly Cell[] =>
    typeof landing === 'string'
      ? [name, null, landing, null]
      : [name, travelOf(landing), landing.bottoms ? 'touched' : 'free', pushOf(landing)];
  const right = feelsRight(build, temperature);
  return {
    kind: 'table',
    id: 'landings',
    title: `How it lands from ${millimetres(drop)}`,
    note: `Designs by their number, on oil at ${celsius(temperature)}. "Pushes out" is the largest force of the shock alone.${build.corner === undefined ? ' What the car weighs and its motion ratio are guesses.' : ''}`,
    table: {
      columns: [
        { label: 'Landing', unit: '' },
        // So fine that a difference of a tenth in the words is seen here too.
        { label: 'Goes in', unit: 'mm', dimension: 'length', digits: 4 },
        { label: 'Stop', unit: '' },
        { label: 'Pushes out', unit: 'N', dimension: 'force', digits: 3 },
      ],
      rows: [
        row(`${build.name} on ${right.oil.name} at ${celsius(right.temperature)}`, liked),
        ...[...designs].map(([{ number }, landing]) => row(`design ${number}`, landing)),
      ],
    },
  };
}
