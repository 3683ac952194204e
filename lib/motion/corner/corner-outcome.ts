import type { Warning } from '../../base/warning.js';
import type { Course, Recorder } from '../../numeric/integrator/recorder.js';
import type { Peak } from '../bench/bench-stroke.js';
import type { CavityInterval } from '../shock/oil-cavity.js';
import { type LeftOutInertia, leftOutInertia } from '../shock/oil-inertia.js';
import { shockWarnings } from '../shock/shock-warnings.js';
import { type BoundCorner, unknown } from './corner-equation.js';
import type { CornerHistory } from './corner-events.js';
import { cornerRecorded } from './corner-record.js';
import type { CornerTrace } from './corner-trace.js';
import type { Settled } from './settling.js';

/**
 * What a corner did. Heights of body and wheel are 0 at full extension with the wheel just on flat ground.
 *
 * @public
 */
export interface CornerOutcome {
  /** Force of the shock [N], without spring and stops. */
  readonly largestShockForce: Peak;
  readonly smallestShockForce: Peak;
  /** Force on the seat of the spring [N]. */
  readonly largestSpringForce: Peak;
  /** Force of the bump stop [N]. */
  readonly largestBumpStopForce: Peak;
  readonly largestTyreForce: Peak;
  /** Mean of the tyre force and its spread, the root of the mean square of what it differs from the mean [N]. */
  readonly meanTyreForce: number;
  readonly tyreForceSpread: number;
  /** Shaft travel [m]: largest, mean, and at rest on the ground. A mean above that at rest is packing. */
  readonly largestTravel: Peak;
  readonly smallestTravel: Peak;
  readonly meanTravel: number;
  readonly restTravel: number;
  /** Fastest compression and rebound of the shaft [m/s]; the second is below 0. */
  readonly fastestCompression: Peak;
  readonly fastestRebound: Peak;
  readonly lowestBody: Peak;
  /** Largest acceleration of the body, upward [m/s²]. */
  readonly largestBodyAcceleration: Peak;
  /** Absolute pressures [Pa]. */
  readonly largestBlindPressure: Peak;
  readonly largestShaftPressure: Peak;
  readonly largestCavity: Peak;
  /** Travel without resistance until the cavity is full again [m]. */
  readonly lostStroke: number;
  /** What the inertia of the oil in the holes would have added; the forces above lack it. */
  readonly inertia: LeftOutInertia;
  readonly cavities: readonly CavityInterval[];
  /** When the bump stop was touched [s], and the shaft speed then [m/s]. */
  readonly bottomings: CornerHistory['bottomings'];
  /** When the chassis touched flat ground [s], and how fast it fell [m/s]; needs `clearance`. The ground does not push it back. */
  readonly slaps: CornerHistory['slaps'];
  /** When the tyre ceased to push, when the wheel left the ground, and when it was back [s]. */
  readonly tyreUnloads: readonly number[];
  readonly liftOffs: readonly number[];
  readonly touchDowns: readonly number[];
  /** Time without contact of the wheel [s]. */
  readonly airTime: number;
  /** When the travel came within 5 % of that at rest for the last time [s]; not given where it was further off at the end. */
  readonly settlingTime?: number;
  /** How often the travel passed its place at rest until then. */
  readonly swings: number;
  /** Heights at the end [m]. */
  readonly bodyAtEnd: number;
  readonly wheelAtEnd: number;
  /** Energy that went into the shock and where it was lost [J]. */
  readonly work: number;
  readonly lost: {
    readonly holes: number;
    readonly recoil: number;
    readonly rim: number;
    readonly seals: number;
  };
  readonly trace: CornerTrace;
  readonly steps: number;
  readonly warnings: readonly Warning[];
}

/** A finished run. */
interface Finished {
  readonly bound: BoundCorner;
  readonly watch: Recorder;
  readonly history: CornerHistory;
  readonly trace: CornerTrace;
  readonly settled: Settled;
  readonly end: Float64Array;
  readonly duration: number;
  readonly restTravel: number;
  readonly steps: number;
}

export function cornerOutcome(finished: Finished): CornerOutcome {
  const { bound, watch, history, trace, settled, end, duration, restTravel, steps } = finished;
  const course = (name: keyof typeof cornerRecorded): Course => watch.course(cornerRecorded[name]);
  const highest = (name: keyof typeof cornerRecorded): Peak => {
    const { largest, largestTime } = course(name);
    return { value: largest, time: largestTime };
  };
  const lowest = (name: keyof typeof cornerRecorded): Peak => {
    const { smallest, smallestTime } = course(name);
    return { value: smallest, time: smallestTime };
  };
  const meanTyreForce = course('tyreForce').integral / duration;
  const meanSquare = course('tyreForceSquare').integral / duration;
  const largestCavity = highest('cavity');
  const fastest = (name: keyof typeof cornerRecorded) => Math.max(highest(name).value, -lowest(name).value);
  const inertia = leftOutInertia(
    bound.shock,
    bound.chambers.farArea,
    fastest('shaftSpeed'),
    fastest('shaftAcceleration'),
  );
  const { liftOffs, touchDowns } = history;
  return {
    largestShockForce: highest('shockForce'),
    smallestShockForce: lowest('shockForce'),
    largestSpringForce: highest('springForce'),
    largestBumpStopForce: highest('bumpForce'),
    largestTyreForce: highest('tyreForce'),
    meanTyreForce,
    tyreForceSpread: Math.sqrt(Math.max(0, meanSquare - meanTyreForce ** 2)),
    largestTravel: highest('travel'),
    smallestTravel: lowest('travel'),
    meanTravel: course('travel').integral / duration,
    restTravel,
    fastestCompression: highest('shaftSpeed'),
    fastestRebound: lowest('shaftSpeed'),
    lowestBody: lowest('body'),
    largestBodyAcceleration: highest('bodyAcceleration'),
    largestBlindPressure: highest('blindPressure'),
    largestShaftPressure: highest('shaftPressure'),
    largestCavity,
    lostStroke: largestCavity.value / Math.abs(bound.chambers.farArea),
    inertia,
    cavities: bound.modes.oil.cavities,
    bottomings: history.bottomings,
    slaps: history.slaps,
    tyreUnloads: history.tyreUnloads,
    liftOffs,
    touchDowns,
    airTime: airTime(liftOffs, touchDowns, duration),
    ...settled,
    bodyAtEnd: end[unknown.body] as number,
    wheelAtEnd: end[unknown.wheel] as number,
    work: course('shockPower').integral,
    lost: {
      holes: course('holePower').integral,
      recoil: course('recoilPower').integral,
      rim: course('rimPower').integral,
      seals: course('sealPower').integral,
    },
    trace,
    steps,
    warnings: cornerWarnings(bound, watch, liftOffs, inertia),
  };
}

function airTime(liftOffs: readonly number[], touchDowns: readonly number[], duration: number): number {
  return liftOffs.reduce((sum, left) => {
    const back = touchDowns.find((time) => time > left) ?? duration;
    return sum + back - left;
  }, 0);
}

function cornerWarnings(
  { shock }: BoundCorner,
  watch: Recorder,
  liftOffs: readonly number[],
  inertia: LeftOutInertia,
): readonly Warning[] {
  const of = (name: keyof typeof cornerRecorded): Course => watch.course(cornerRecorded[name]);
  const warnings = [
    ...shockWarnings(shock, {
      largestDrop: Math.max(of('drop').largest, -of('drop').smallest),
      largestCavity: of('cavity').largest,
      largestGasPressure: of(shock.layout === 'shaft-side' ? 'shaftPressure' : 'blindPressure').largest,
      inertia,
    }),
  ];
  if (of('travel').largest > shock.stroke) {
    warnings.push({
      code: 'piston-at-the-cap',
      message: 'the bump stop gives way so far that the piston meets the cap',
      value: of('travel').largest,
      limit: shock.stroke,
    });
  }
  const [firstLift] = liftOffs;
  if (firstLift !== undefined) {
    warnings.push({
      code: 'wheel-off-the-ground',
      message: 'the wheel leaves the ground',
      value: firstLift,
      limit: 0,
    });
  }
  return warnings;
}
