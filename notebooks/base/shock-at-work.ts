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

/** The computed motion of a build as a drawing to scale. */
export function shockAtWork(
  { shock, assembled, build }: MovingBuild,
  course: Course,
  words: { readonly id: string; readonly title: string },
  bumpStop?: number,
): MotionBlock {
  const stride = Math.ceil(course.times.length / mostFrames);
  const at = (values: Float64Array, index: number): number => values[index] ?? 0;
  const frames = Array.from(
    { length: Math.floor((course.times.length - 1) / stride) + 1 },
    (_, place): MotionFrame => {
      const index = place * stride;
      return {
        time: at(course.times, index),
        travel: at(course.travels, index),
        speed: at(course.speeds, index),
        force: at(course.forces, index),
        blindPressure: at(course.blindPressures, index),
        shaftPressure: at(course.shaftPressures, index),
        cavity: at(course.cavities, index),
      };
    },
  );
  const extreme = (of: (frame: MotionFrame) => number): number =>
    frames.reduce((best, frame, index) => (of(frame) > of(frames[best] ?? frame) ? index : best), 0);
  const hardest = extreme(({ force }) => force);
  const torn = extreme(({ cavity }) => cavity);
  const deepest = extreme(({ travel }) => travel);
  const fastestOut = extreme(({ speed }) => -speed);
  const frame = (index: number) => frames[index] ?? frames[0];
  const chosen: MotionBlock['stills'] = [
    { frame: hardest, label: 'Where it pushes hardest' },
    ...((frame(torn)?.cavity ?? 0) > 0 ? [{ frame: torn, label: 'The largest cavity' }] : []),
    { frame: deepest, label: 'All the way in' },
    { frame: fastestOut, label: 'As it comes out fastest' },
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
    ...words,
    alt: `A cut along ${build.name}, to scale, its walls and ends only sketched: at most ${millimetres(frame(deepest)?.travel ?? 0)} in, pushing with ${newtons(frame(hardest)?.force ?? 0)} at the hardest. The darker the oil, the higher its pressure.`,
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
    frames,
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
