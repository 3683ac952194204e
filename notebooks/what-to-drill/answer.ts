import { percent, shaftSpeed } from '../base/wording.js';
import { type Found, farOff } from './found.js';
import { type Landings, landingText, lands } from './landings.js';
import { holesText, millimetres } from './naming.js';

/** What to drill and to fill, how near it comes, and how robust it is. */
export function answerOf({ pick, problem }: Found, said: string, errors: string, landing?: Landings): string {
  if (pick === undefined)
    return `No hole of ${millimetres(Math.min(...problem.drills))} to ${millimetres(Math.max(...problem.drills))} leaves enough land on this piston: take a smaller drill.`;
  if (landing !== undefined && !lands(landing, pick))
    return `None of the designs that come nearest to ${said} lands from ${millimetres(landing.drop)}: choose a lower drop, or close the shock with more gas.`;
  const { design, isRobust } = pick;
  const changes = percent(Math.max(design.drillChange, design.temperatureChange));
  const robustness = isRobust
    ? `and ${errors} changes its forces by ${changes} at most`
    : `but none of the nearest is robust, and ${errors} changes its forces by up to ${changes}`;
  const comma = design.taper === 0 ? '' : ',';
  const far = Math.max(design.slowError, landing === undefined ? design.fastError : 0) > farOff;
  const slow = `at ${shaftSpeed(problem.slow.speed)} it is ${howFar(design.slowError)}`;
  const comes =
    landing === undefined
      ? `${slow} and at ${shaftSpeed(problem.fast.speed)} ${howFar(design.fastError)}, in the worse of compression and rebound`
      : `${slow} in the worse of compression and rebound, and ${landingText(landing, pick)}`;
  const advice = far ? `nothing that was tried comes near; nearest is to drill` : 'drill';
  return `For ${said}${far ? '' : ','} ${advice} ${holesText(design)}${comma} into a piston ${millimetres(design.thickness)} thick and fill ${design.oil}: ${comes}, ${robustness}.`;
}

function howFar(error: number): string {
  return percent(error) === percent(0) ? 'right on' : `${percent(error)} off`;
}
