import type { MotionBlock, MotionFrame } from '../../lib/page/blocks/motion.js';
import { millimetres } from './bench-wording.js';
import type { MovingBuild } from './moving-build.js';
import { newtons } from './wording.js';

/** What of a trace a drawing needs, at equal times. */
interface Course {
  readonly times: Float64Array;
  readonly travels: Float64Array;
  readonly speeds: Float64Array;
  readonly forces: Float64Array;
  readonly blindPressures: Float64Array;
  readonly shaftPressures: Float64Array;
  readonly cavities: Float64Array;
}

/** Frames of a drawing at most. */
const mostFrames = 200;

/** The computed motion of a build as a drawing to scale; its words take the largest travel and force of the whole motion, not of a frame. */
export function shockAtWork(
  { shock, assembled, build }: MovingBuild,
  course: Course,
  words: {
    readonly id: string;
    readonly title: string;
    readonly largestTravel: number;
    readonly largestForce: number;
  },
  bumpStop?: number,
): MotionBlock {
  const { id, title, largestTravel, largestForce } = words;
  const at = (values: Float64Array, index: number): number => values[index] ?? 0;
  const moments = Array.from(
    course.times,
    (time, index): MotionFrame => ({
      time,
      travel: at(course.travels, index),
      speed: at(course.speeds, index),
      force: at(course.forces, index),
      blindPressure: at(course.blindPressures, index),
      shaftPressure: at(course.shaftPressures, index),
      cavity: at(course.cavities, index),
    }),
  );
  const stride = Math.ceil(moments.length / mostFrames);
  const extreme = (of: (moment: MotionFrame) => number): MotionFrame[] =>
    moments
      .slice(0, 1)
      .map((first) => moments.reduce((best, one) => (of(one) > of(best) ? one : best), first));
  const still = (label: string, of: (moment: MotionFrame) => number) =>
    extreme(of).map((frame) => ({ frame, label }));
  const chosen: MotionBlock['stills'] = [
    ...still('About where it pushes hardest', ({ force }) => force),
    ...still('The largest cavity', ({ cavity }) => cavity).filter(({ frame }) => frame.cavity > 0),
    ...still('All the way in', ({ travel }) => travel),
    ...still('As it comes out fastest', ({ speed }) => -speed),
  ];
  const mixed = shock.layout === 'mixed';
  const { bore, shaftDiameter, piston, stroke } = assembled.damper;
  const annulus = (Math.PI / 4) * (bore ** 2 - shaftDiameter ** 2);
  const onBlindSide = shock.layout === 'shaft-side' ? shock.farVolume : undefined;
  const clearance =
    onBlindSide === undefined
      ? shock.farVolume / annulus
      : Math.max(0, shock.oil.volume - onBlindSide + shock.gas.capacity) / annulus;
  return {
    kind: 'motion',
    id,
    title,
    alt: `A cut along ${build.name}, to scale, its walls and ends only sketched: at most ${millimetres(largestTravel)} in, pushing with ${newtons(largestForce)} at the hardest. The darker the oil, the higher its pressure.`,
    shock: {
      bore,
      shaftDiameter,
      stroke,
      pistonThickness: piston.thickness,
      holes: piston.holes
        .flatMap(({ count, diameter }) => Array.from({ length: count }, () => diameter))
        .slice(0, 2),
      gasAt: shock.layout,
      gasVolume: mixed ? 0 : shock.gas.capacity,
      oilVolume: shock.oil.volume,
      clearance,
      ...(bumpStop === undefined ? {} : { bumpStop }),
    },
    frames: moments.filter((_, index) => index % stride === 0),
    stills: joined(chosen),
  };
}

/** One still for each frame: what two of them show in one is said of it together. */
function joined(chosen: MotionBlock['stills']): MotionBlock['stills'] {
  return chosen.flatMap(({ frame }, place) => {
    const same = chosen.filter((other) => other.frame === frame);
    if (same[0] !== chosen[place]) return [];
    const [first, ...others] = same.map(({ label }) => label);
    const rest = others.map((label) => `, ${label.charAt(0).toLowerCase()}${label.slice(1)}`);
    return [{ frame, label: `${first}${rest.join('')}` }];
  });
}
