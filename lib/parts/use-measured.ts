import { isMap, parseDocument } from 'yaml';
import { DashpotError } from '../base/dashpot-error.js';
import { InputError } from '../base/input-error.js';
import { createOil } from '../fluid/oil/oil.js';
import { viscosityAt } from '../fluid/viscosity/viscosity-line.js';
import { dampingAnswers } from '../measure/answer/damping-answer.js';
import { fitShock } from '../measure/fit/fit-shock.js';
import { asMeasured } from './as-measured.js';
import { buildFault } from './build-fit.js';
import type { FittedBuild } from './fitted-builds.js';
import { measuredProblem } from './measured-problem.js';
import type { Build, MeasuredValues, MeasurementPart, Parts } from './parts.js';
import { readParts } from './read-parts.js';

/** Temperature of the viscosity that is handed on [K]. */
const reference = 298.15;
/** Temperature of readings that tell none [K]. */
const bench = 293.15;
/** Shaft speed at which the doubt is stated [m/s], in the middle of what happens to a shock. */
const middleSpeed = 0.3;

/**
 * What the measurements of a build say in place of what was stated: all readings of its shocks fitted as one shock.
 *
 * @param parts - with the tolerances that label and drill are believed within
 * @param build - as stated
 * @param measured - on shocks of this build, 1 or more
 * @throws InputError, FitError for readings that cannot be or do not tell the shock
 */
export function measuredValues(
  parts: Pick<Parts, 'tolerances'>,
  build: Build,
  measured: readonly MeasurementPart[],
): MeasuredValues {
  const { problem, temperature = bench } = measuredProblem(parts, build, measured);
  const fit = fitShock(problem);
  const { state } = fit;
  const { typical } = createOil(build.oil.definition);
  const factorAt = (kelvin: number): number => viscosityAt(typical, kelvin) / viscosityAt(typical, reference);
  // The reader's thermometer stays as wrong as it was, so that its error goes into the oil.
  const warm = temperature + state.thermometerError;
  const viscosity =
    (state.kinematicViscosity * factorAt(warm) ** state.temperatureSlope) / factorAt(temperature);
  const place = { position: build.shock.stroke / 2, temperature };
  const [answer] = dampingAnswers(fit, [middleSpeed], place);
  const [low = 0, high = 0] = answer?.interval ?? [];
  return {
    viscosity,
    holes: state.holeDiameter / problem.known.holeDiameter,
    friction: state.friction,
    doubt: (high - low) / 2 / Math.abs(answer?.dampingForce ?? 1),
  };
}

/** As many digits as are written into a file. */
function rounded({ viscosity, holes, friction, doubt }: MeasuredValues): MeasuredValues {
  return {
    viscosity: Number((1e6 * viscosity).toPrecision(4)) / 1e6,
    holes: Number(holes.toPrecision(5)),
    friction: Number(friction.toPrecision(3)),
    doubt: Number((100 * doubt).toPrecision(2)) / 100,
  };
}

/** The builds of a file that were measured, each with its measurements. */
function measuredBuilds({ measurements = [] }: Parts): ReadonlyMap<Build, readonly MeasurementPart[]> {
  return new Map(measurements.map(({ build }) => [build, measurements.filter((one) => one.build === build)]));
}

/**
 * What the measurements of each build say of it, in the digits of a parts file. A build whose file says already what it was measured as has none, and
 * one whose readings do not tell the shock neither: its own page says why.
 */
export function fittedBuilds(parts: Parts): readonly FittedBuild[] {
  return [...measuredBuilds(parts)].flatMap(([build, own]): readonly FittedBuild[] => {
    // The measurements hold the build as stated, whatever the file says beside it.
    if (parts.builds.some(({ name, measured }) => name === build.name && measured !== undefined)) return [];
    try {
      const measured = rounded(measuredValues(parts, build, own));
      return buildFault(asMeasured(build, measured)) === undefined ? [{ build: build.name, measured }] : [];
    } catch (error) {
      if (error instanceof DashpotError) return [];
      throw error;
    }
  });
}

/**
 * A parts file that says of each measured build what its readings say of it, so that every page takes the shocks as measured. What was written there before is written
 * anew.
 *
 * @param text - the parts file
 * @param name - of it, for errors
 * @throws PartsFileError for a file that cannot be read; InputError for one without measurements or builds
 */
export function useMeasured(text: string, name?: string): string {
  const parts = readParts(text, name);
  const { measurements = [] } = parts;
  const document = parseDocument(text);
  const { contents } = document;
  if (measurements.length === 0) {
    throw new InputError({
      field: 'use',
      value: 'measured',
      accepted: 'stated where the parts file has no "measurements"',
    });
  }
  if (!isMap(contents) || !contents.has('builds')) {
    throw new InputError({
      field: 'use',
      value: 'measured',
      accepted: 'stated where the parts file has no "builds"',
    });
  }
  for (const [build, own] of measuredBuilds(parts)) {
    const index = parts.builds.findIndex(({ name: one }) => one === build.name);
    const { viscosity, holes, friction, doubt } = rounded(measuredValues(parts, build, own));
    document.setIn(['builds', index, 'measured'], {
      viscosity: `${Number((1e6 * viscosity).toPrecision(4))} cSt`,
      holes,
      friction: `${friction} N`,
      doubt: `${Number((100 * doubt).toPrecision(2))} %`,
    });
  }
  return document.toString({ lineWidth: 0 });
}
