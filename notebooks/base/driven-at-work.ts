import { InputError } from '../../lib/base/input-error.js';
import { type BenchResult, benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import type { MotionBlock } from '../../lib/page/blocks/motion.js';
import type { Build } from '../../lib/parts/parts.js';
import { movingBuild } from './moving-build.js';
import { shockAtWork } from './shock-at-work.js';
import { shaftSpeed } from './wording.js';

/** Part of the travel that is driven, about its middle. */
const driven = 0.9;

/** A build driven in and out once. */
export interface DrivenAtWork {
  readonly stroke: BenchResult;
  readonly drawing: MotionBlock;
}

/** The build driven in and out once at a speed, drawn; undefined where the gas has no room for it. */
export function drivenAtWork(build: Build, temperature: number, speed: number): DrivenAtWork | undefined {
  const { stroke } = build.shock;
  const amplitude = (driven * stroke) / 2;
  try {
    const moving = movingBuild(build, temperature);
    const moved = benchStroke(
      moving.shock,
      { kind: 'triangle', middle: stroke / 2, amplitude, frequency: speed / (4 * amplitude), cycles: 1 },
      { parts: 160, tolerance: 1e-4 },
    );
    return {
      stroke: moved,
      drawing: shockAtWork(moving, moved.trace, {
        id: 'at-work',
        title: `Driven in and out once at ${shaftSpeed(speed)}, as a bench would`,
        largestTravel: stroke / 2 + amplitude,
        largestForce: moved.largestForce.value,
      }),
    };
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
