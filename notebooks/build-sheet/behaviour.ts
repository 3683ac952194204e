import { oilNeed } from '../../lib/fill/chamber/oil-out.js';
import { restBand } from '../../lib/fill/chamber/rest-band.js';
import { shaftExposed } from '../../lib/fill/length/shock-length.js';
import { millilitres, millimetres } from '../base/bench-wording.js';
import { newtons, shaftSpeed } from '../base/wording.js';
import type { SheetNumbers } from './numbers.js';

/** What the closed shock does when it is left alone, in words. */
export function behaviour(numbers: SheetNumbers, rideHeight: number): readonly string[] {
  const { built, creep, frictionSpeed, rideBand } = numbers;
  const { shock } = built.build;
  const { kineticForce, breakawayForce } = shock.seal.typical;
  return [
    ...restSentences(numbers),
    creep > 0
      ? `Pushed fully in and let go, it first comes out at ${shaftSpeed(creep)}.`
      : `Pushed fully in and let go, it stays: the gas is weaker than the seal friction of ${newtons(kineticForce)}.`,
    ...frictionSentences(frictionSpeed),
    ...(rideBand === undefined
      ? []
      : [
          `Breakaway friction of ${newtons(breakawayForce)} lets the car stop anywhere within ${millimetres(rideBand)} of ride height at the wheel.`,
        ]),
    ...lengthSentences(numbers, rideHeight),
  ];
}

/** Nothing where there is no friction to speak of. */
function frictionSentences(speed: number | undefined): readonly string[] {
  if (speed === 0) return [];
  return speed === undefined
    ? ['Seal friction is larger than damping at every speed.']
    : [`Below ${shaftSpeed(speed)} seal friction is larger than damping.`];
}

function restSentences({ built }: SheetNumbers): readonly string[] {
  if (built.shock.gasVolume === 0)
    return [
      `Nothing makes room for the shaft: it locks at ${millimetres(built.closing.position)} in, where the cap was closed.`,
    ];
  const { fromExtension, fromCompression } = restBand(
    built.shock,
    built.build.shock.seal.typical.kineticForce,
  );
  const { stroke } = built.build.shock;
  if (fromExtension <= 0 && fromCompression >= stroke)
    return ['It is dead: it rests wherever it is put, over the whole stroke.'];
  return [
    `Let go after a push it rests ${millimetres(fromCompression)} in, let go after a pull ${millimetres(fromExtension)} in.`,
  ];
}

function lengthSentences({ built, length }: SheetNumbers, rideHeight: number): readonly string[] {
  if (length === undefined) return [];
  const { stroke } = built.build.shock;
  const unlike = Math.abs(length.usableStroke - stroke) > 0.5e-3;
  const said = unlike
    ? ` The parts file says ${millimetres(stroke)}: measure which is right.`
    : ' The parts file agrees.';
  return [
    `Its lengths leave a stroke of ${millimetres(length.usableStroke)}, ended by the ${length.stoppedBy}.${said}`,
    ...(rideHeight > length.usableStroke
      ? []
      : [
          `At ride height, ${millimetres(rideHeight)} in, ${millimetres(shaftExposed(length, rideHeight))} of shaft show.`,
        ]),
  ];
}

/** Oil of the whole build and of a season, in words. */
export function oilSentence({ built, oil }: SheetNumbers, rebuilds: number): string {
  const { quantity, oil: part } = built.build;
  const need = oilNeed(oil.poured, {
    shocks: quantity,
    rebuilds,
    spilledFraction: 0,
    ...(part.bottle === undefined ? {} : { bottleVolume: part.bottle.volume }),
  });
  const bottles =
    need.bottles === undefined || part.bottle === undefined
      ? ''
      : `, ${need.bottles} ${need.bottles === 1 ? 'bottle' : 'bottles'} of ${millilitres(part.bottle.volume)}`;
  return `${millilitres(oil.poured)} to pour and ${millilitres(oil.kept)} kept in each shock; ${millilitres(need.perBuild)} for all ${quantity}, ${millilitres(need.perSeason)} for ${rebuilds} rebuilds${bottles}. Spills come on top.`;
}
