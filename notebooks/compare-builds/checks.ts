import { moveCorner } from '../../lib/motion/corner/move-corner.js';
import type { CheckBlock } from '../../lib/page/index.js';
import { millimetres } from '../base/bench-wording.js';
import { cornerOf, movingBuild } from '../base/moving-build.js';
import { possibleCorners } from '../base/possible-corners.js';
import { collarFor, pushOf } from '../base/riding.js';
import type { Side } from './sides.js';

/** Both look at one gas; what is left is the squeeze of the oil [m], and of a spring so soft that a little push is a long way, a part of what it holds. */
const allowed = 2e-4;
const allowedPart = 5e-3;

/** Where the program of landings comes to rest with the collar that the page names, for each build where it can be asked. */
export function collarChecks(two: readonly Side[], temperature: number): readonly CheckBlock[] {
  const compared = two.flatMap(({ build, built, riding, place }) => {
    if (build.spring === undefined || riding === undefined) return [];
    const { corner } = cornerOf(build);
    const moving = movingBuild(build, temperature);
    if (moving.shock.layout !== 'blind-side' || place > corner.bumpStop.from) return [];
    // The program moves its gas as fast as a stroke.
    const push = pushOf(built, temperature, built.shock.gas.polytropicExponent).at(place);
    const collar = collarFor(possibleCorners(build).likely, build.spring.rate, place, push);
    if (collar < 0) return [];
    const pressed = { ...corner, springPreload: collar };
    const { restTravel } = moveCorner(
      moving.shock,
      pressed,
      { kind: 'step', height: 0 },
      { duration: 1e-3, parts: 0 },
    );
    const off = Math.abs(restTravel - place);
    const isFar = off > allowed && off > allowedPart * (collar + place);
    return [{ name: build.name, place, restTravel, isFar }];
  });
  if (compared.length === 0) return [];
  return [
    {
      kind: 'check',
      claim:
        'With such a collar the program of landings, which adds up pressures in both chambers, comes to rest at the same place',
      passed: !compared.some(({ isFar }) => isFar),
      detail: `${compared.map(({ name, place, restTravel }) => `${name}: ${millimetres(restTravel)} for ${millimetres(place)}`).join('; ')}`,
      ifFailed: 'Set the collar by the ruler, not by this page',
    },
  ];
}
