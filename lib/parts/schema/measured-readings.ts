import { DashpotError } from '../../base/dashpot-error.js';
import { InputError } from '../../base/input-error.js';
import { fluidAt } from '../../fluid/oil/fluid-at.js';
import { createOil } from '../../fluid/oil/oil.js';
import { fallingBallReading } from '../../measure/oil/falling-ball.js';
import { flowCupViscosity } from '../../measure/oil/flow-cup.js';
import { frameUncertainty, type Reading, usualUncertainty } from '../../measure/reading/reading.js';
import { requireReading } from '../../measure/reading/require-reading.js';
import type { OilPart } from '../parts.js';
import type { FieldPath } from '../source/finding.js';
import { type MeasurementEntry, measurementKinds } from './measurement-schema.js';

/** Temperature that stands for one that does not matter [K]. */
const anyTemperature = 293.15;
/** Frames by which the eye judges start and end, standard uncertainty (common practice, no source). */
const judgedFrames = 2;
/** Usual uncertainties of a falling ball: its diameter [m], the difference of the densities [kg/m³], a time by hand [s] (common practice, no source). */
const ballUncertainties = { ballDiameter: 5e-6, densityDifference: 60, time: 0.1 };

/** What is wrong with a measurement, and where in its entry. */
export class MeasurementFault extends DashpotError {
  override readonly name = 'MeasurementFault';
  readonly path: FieldPath;

  constructor(path: FieldPath, message: string) {
    super(message);
    this.path = path;
  }
}

/** The path that a field of the library is written by. */
function pathOf(field: string): FieldPath {
  return field
    .split('.')
    .flatMap((part) =>
      part
        .split(/[[\]]/u)
        .flatMap((piece): FieldPath => (piece === '' ? [] : [/^\d+$/u.test(piece) ? Number(piece) : piece])),
    );
}

/** What the keys of the file are called in the library, where they differ. */
const fileKeys: Readonly<Record<string, string>> = {
  mass: 'weight',
  ballDiameter: 'diameter',
  ballDensity: 'density',
  tubeDiameter: 'tube',
  'ballDiameter / tubeDiameter': 'tube',
};

function filming(by: string, framesPerSecond: number | undefined): number {
  if (by === 'stopwatch' || framesPerSecond === undefined) return usualUncertainty.stopwatch;
  return frameUncertainty(framesPerSecond, judgedFrames / framesPerSecond);
}

/** The readings of an entry, unchecked. */
function readings(entry: MeasurementEntry, oil: OilPart): readonly Reading[] {
  const { drop, scale, ball, cup, hole, weighed, temperature = anyTemperature } = entry;
  if (drop !== undefined) {
    const { weight: mass, times, from, to, by } = drop;
    const uncertainty = drop.uncertainty ?? filming(by, drop['frames-per-second']);
    const timing = by === 'stopwatch' ? 'hand' : 'frames';
    return [{ kind: 'drop', mass, times, timing, uncertainty, temperature, from, to }];
  }
  if (scale !== undefined) {
    const { at: position, uncertainty = usualUncertainty.scale } = scale;
    const shared = { kind: 'scale', position, temperature, uncertainty } as const;
    return [
      { ...shared, moving: 'in', force: scale['pushing-in'] },
      { ...shared, moving: 'out', force: scale['letting-out'] },
    ];
  }
  if (ball !== undefined) {
    const oilDensity = fluidAt(createOil(oil.definition), temperature).density;
    const { diameter: ballDiameter, density: ballDensity, tube: tubeDiameter, stretch, time } = ball;
    const sizes = { ballDiameter, ballDensity, tubeDiameter, oilDensity, stretch, time };
    return [fallingBallReading(sizes, temperature, ballUncertainties)];
  }
  if (cup !== undefined) {
    const { kinematicViscosity } = flowCupViscosity(cup.cup, cup.time);
    const relativeUncertainty = usualUncertainty.flowCup;
    return [{ kind: 'viscosity', kinematicViscosity, temperature, relativeUncertainty }];
  }
  if (hole !== undefined) {
    const uncertainty = hole.by === 'pin gauge' ? usualUncertainty.pinGauge : usualUncertainty.drillShank;
    return [{ kind: 'hole', diameter: hole.diameter, uncertainty }];
  }
  if (weighed === undefined) return [];
  const density = weighed.mass / weighed.volume;
  return [{ kind: 'density', density, temperature, uncertainty: usualUncertainty.weighedOil * density }];
}

/**
 * The readings that an entry of the file stands for.
 *
 * @param entry - one measurement, in SI
 * @param oil - of the build that was measured
 * @throws MeasurementFault with the place in the entry, where a number cannot be
 */
export function measuredReadings(entry: MeasurementEntry, oil: OilPart): readonly Reading[] {
  const kind = measurementKinds.find((one) => entry[one] !== undefined);
  try {
    const all = readings(entry, oil);
    for (const reading of all) requireReading(reading, '');
    requireScaleOrder(entry);
    return all;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const [first = '', ...rest] = pathOf(error.field);
    const path = [kind ?? '', fileKeys[String(first)] ?? first, ...rest];
    throw new MeasurementFault(path, `must be ${error.accepted}${error.unit === '' ? '' : ` ${error.unit}`}`);
  }
}

/** Pushing in, friction adds to the gas; letting out, it takes from it. */
function requireScaleOrder({ scale }: MeasurementEntry): void {
  if (scale === undefined || scale['letting-out'] <= scale['pushing-in']) return;
  throw new InputError({
    field: 'letting-out',
    value: scale['letting-out'],
    accepted: 'at most the reading while pushing in',
  });
}
