import type { RepeatedStroke } from '../../lib/motion/bench/stroke.js';

/** Sine about the middle of a stroke. */
export function stroke(frequency: number, amplitude: number, cycles = 1): RepeatedStroke {
  return { kind: 'sine', middle: 0.012, amplitude, frequency, cycles };
}
