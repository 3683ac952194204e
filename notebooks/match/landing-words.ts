import { millimetres } from '../base/bench-wording.js';
import { cSt, labelOf } from '../base/decision-cases.js';
import { possibleCorners } from '../base/possible-corners.js';
import { furtherBy, harderBy } from '../base/two-landings.js';
import { newtons } from '../base/wording.js';
import { type Asked, type Landings, landingsOrWhy, pushOf, travelOf } from './landings.js';
import type { Match } from './matched.js';
import type { Mix } from './mix.js';
import { type SameLanding, sameLanding } from './same-landing.js';

/** Which oil brings the landing back, how hard the shock then pushes, and the nearest bottle. */
export function landingAnswer(
  { build, singles: [nearest] }: Match,
  setting: string,
  { landings, same }: { readonly landings: Landings; readonly same: SameLanding },
  label: number,
  mix: Mix | undefined,
  guess: string,
): string {
  const { drop, liked } = landings;
  const wanted = `${millimetres(travelOf(liked))} in`;
  if (!same.found) return noneAnswer(build.name, setting, same, drop, wanted);
  const push = harderBy(pushOf(same.landed), pushOf(liked));
  const pushes = `its shock pushes with ${newtons(pushOf(same.landed))} at most${push === 'as hard' ? ', as hard as before' : `, ${push} than the ${newtons(pushOf(liked))} before`}`;
  const stop = same.landed.bottoms ? ', onto its bump stop' : '';
  const blend = mix === undefined ? '; no two bottles of one kind mix to it' : `; ${mix.recipe} is that oil`;
  return `For ${setting}, ${build.name} lands the same from ${millimetres(drop)}, ${wanted}${stop}, on a ${cSt(label)} silicone; ${pushes}${blend}.${bottleSentence(nearest, landings)}${guess}`;
}

function bottleSentence(nearest: Match['singles'][number] | undefined, { liked }: Landings): string {
  if (nearest === undefined) return '';
  const { name, landing } = nearest;
  if (landing === undefined) return '';
  if (typeof landing === 'string') return ' On no bottle near it does the new shock land.';
  const stop = landing.bottoms && !liked.bottoms ? ' and touches its bump stop' : '';
  return ` On the nearest bottle, ${name}, it goes in ${furtherBy(travelOf(landing), travelOf(liked))}${stop}.`;
}

/** What another car than the guessed one would ask for; nothing where the file says what the corner carries. */
export function guessSentence(
  asked: Asked,
  { liked }: Landings,
  { found, kinematicViscosity }: SameLanding,
): string {
  if (asked.build.corner !== undefined || !found) return '';
  const { deep, high } = possibleCorners(asked.build);
  const ends = [deep, high].flatMap((corner) => {
    const landings = landingsOrWhy({ ...asked, corner }, false);
    if (typeof landings === 'string') return [];
    const same = sameLanding(landings, asked.now, kinematicViscosity);
    return same.found ? [same.kinematicViscosity] : [];
  });
  const labels = [kinematicViscosity, ...ends].map((one) => labelOf(one, asked.now));
  const [low, most] = [cSt(Math.min(...labels)), cSt(Math.max(...labels))];
  const range = low === most ? '' : `; the ends of the guess ask for ${low} to ${most}`;
  return ` What the car weighs and its motion ratio are guesses: ${liked.moving.build.name} has no "corner"${range}.`;
}

/** Why no oil does it. */
function noneAnswer(
  name: string,
  setting: string,
  { why, landed, kinematicViscosity }: SameLanding & { readonly found: false },
  drop: number,
  wanted: string,
): string {
  const open = `No oil lets ${setting} land like ${name} from ${millimetres(drop)}, ${wanted}`;
  const reached = landed === undefined ? '' : `${millimetres(travelOf(landed))} in`;
  switch (why) {
    case 'goes in less':
      return `${open}: even on the thinnest it stops ${reached}. Another piston is needed, with more or wider holes.`;
    case 'goes in further':
      return `${open}: on the thickest that lets it land, ${cSt(kinematicViscosity)} as warm as it is, it still goes ${reached}. Another piston is needed, with fewer or narrower holes.`;
    case 'locks':
      return `${open}: its gas has no room for shaft and cavity on the way. Close it with less oil, or choose a body with more gas.`;
    case 'goes through':
      return `${open}: its stops do not catch it before the piston comes to the end of its oil. Choose a lower drop.`;
  }
}
