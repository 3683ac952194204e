import { InputError } from '../../lib/base/input-error.js';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import type { Block } from '../../lib/page/blocks/block.js';
import type { Build } from '../../lib/parts/parts.js';
import { movingBuild } from '../base/moving-build.js';
import { shockAtWork } from '../base/shock-at-work.js';
import { shaftSpeed } from '../base/wording.js';

/** Part of the travel that is driven, about its middle. */
const driven = 0.9;

/** The build driven in and out once at a speed, drawn; nothing where the gas has no room for it. */
export function drivenAtWork(build: Build, temperature: number, speed: number): readonly Block[] {
  const { stroke } = build.shock;
  const amplitude = (driven * stroke) / 2;
  try {
    const moving = movingBuild(build, temperature);
    const { trace, largestForce } = benchStroke(
      moving.shock,
      { kind: 'triangle', middle: stroke / 2, amplitude, frequency: speed / (4 * amplitude), cycles: 1 },
      { parts: 160, tolerance: 1e-4 },
    );
    return [
      shockAtWork(moving, trace, {
        id: 'at-work',
        title: `Driven in and out once at ${shaftSpeed(speed)}, as a bench would`,
        largestTravel: stroke / 2 + amplitude,
        largestForce: largestForce.value,
      }),
    ];
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}
