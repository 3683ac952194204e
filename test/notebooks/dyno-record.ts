import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { assembleShock, type Parts } from '../../lib/parts/index.js';

/** What is true of an invented shock on an invented dyno. */
export interface TrueShock {
  /** Viscosity over that of the label. */
  readonly thicker: number;
  readonly friction: number;
  /** Zero of the sensor [N]. */
  readonly zero: number;
  /** Factor on what is damped going in. */
  readonly inward?: number;
  /** Part that is damped more at the middle of the speeds, and less at both ends. */
  readonly bent?: number;
  readonly noise?: number;
}

/** A small generator of normal numbers, the same on every run: Lehmer's (Park & Miller 1988), twelve summed. */
export function normals(seed: number): () => number {
  let state = seed;
  const uniform = (): number => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  return () => Array.from({ length: 12 }, uniform).reduce((sum, value) => sum + value, -6);
}

/**
 * A record of time, travel and force of a build of a file that strokes 10 mm either way about 14 mm in, at 6 strokes a second, as the damper itself has it.
 *
 * @param name - of the build
 * @param celsius - oil temperature
 */
export function dynoRecord(parts: Parts, name: string, celsius: number, truth: TrueShock): string {
  const build = parts.builds.find((one) => one.name === name);
  if (build === undefined) throw new Error(`no ${name}`);
  const { damper } = assembleShock(build);
  const fluid = fluidAt(createOil(build.oil.definition), celsius + 273.15);
  const model = damperModel(damper, {
    ...fluid,
    kinematicViscosity: truth.thicker * fluid.kinematicViscosity,
  });
  const normal = normals(7);
  const rows = Array.from({ length: 500 }, (_, index) => {
    const time = index / 1000;
    const angle = 2 * Math.PI * 6 * time;
    const [travel, speed] = [0.01 * Math.sin(angle), 0.01 * 2 * Math.PI * 6 * Math.cos(angle)];
    const force = damperForce(model, { speed, position: 0.014 + travel });
    const bend = 1 + (truth.bent ?? 0) * Math.sin(3 * Math.PI * (Math.abs(speed) / 0.377 - 1 / 6));
    const damping = force.dampingForce * bend * (speed > 0 ? (truth.inward ?? 1) : 1);
    const sum = damping + force.gasForce + truth.friction * Math.sign(speed) + truth.zero;
    const read = sum + (truth.noise ?? 0) * normal();
    return `${time};${(1000 * (0.01 + travel)).toFixed(4)};${read.toFixed(4)}`;
  });
  return ['time (s);travel (mm);force (N)', ...rows].join('\n');
}
