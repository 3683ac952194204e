import { percent, shaftSpeed } from '../base/wording.js';
import { type Found, farOff } from './found.js';
import { holesText, millimetres } from './naming.js';

/** What to drill and to fill, how near it comes, and how robust it is. */
export function answerOf({ pick, problem }: Found, said: string, errors: string): string {
  if (pick === undefined)
    return `No hole of ${millimetres(Math.min(...problem.drills))} to ${millimetres(Math.max(...problem.drills))} leaves enough land on this piston: take a smaller drill.`;
  const { design, isRobust } = pick;
  const changes = percent(Math.max(design.drillChange, design.temperatureChange));
  const robustness = isRobust
    ? `and ${errors} changes its forces by ${changes} at most`
    : `but none of the nearest is robust, and ${errors} changes its forces by up to ${changes}`;
  const comma = design.taper === 0 ? '' : ',';
  const far = Math.max(design.slowError, design.fastError) > farOff;
  const advice = far ? `nothing that was tried comes near; nearest is to drill` : 'drill';
  return `For ${said}${far ? '' : ','} ${advice} ${holesText(design)}${comma} into a piston ${millimetres(design.thickness)} thick and fill ${design.oil}: at ${shaftSpeed(problem.slow.speed)} it is ${howFar(design.slowError)} and at ${shaftSpeed(problem.fast.speed)} ${howFar(design.fastError)}, in the worse of compression and rebound, ${robustness}.`;
}

function howFar(error: number): string {
  return percent(error) === percent(0) ? 'right on' : `${percent(error)} off`;
}
