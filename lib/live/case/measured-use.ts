import { type FittedBuild, stillFitted, withFittedBuilds } from '../../parts/fitted-builds.js';
import type { PartsFile } from '../../parts/parts-file.js';
import { type Choices, wantsMeasured } from './choices.js';

/** A parts file with its builds as measured. */
export interface MeasuredFile {
  /** The file as it is stated. */
  readonly of: PartsFile;
  readonly file: PartsFile;
}

/** What lies on a bench of a file that was measured. */
export interface MeasuredBench {
  /** The parts that the document came with. */
  readonly origin: PartsFile;
  /** The parts as the reader has changed them. */
  file: PartsFile;
  choices: Choices;
  /** What the measurements of the parts that the document came with say of its builds. */
  readonly fitted: readonly FittedBuild[];
  /** The file with its builds as measured, once that was asked for. */
  measured: MeasuredFile | undefined;
}

/** What there is to say of the measured builds of a file. */
export interface MeasuredUse {
  /** Builds whose fit belongs to the parts as they are. */
  readonly fitted: readonly FittedBuild[];
  /** Names of builds whose parts or measurements were changed after the fit. */
  readonly changed: readonly string[];
  /** Whether the reader wants them as measured. */
  readonly wanted: boolean;
}

/** Which builds of the file on a bench can be taken as measured, and whether they are to be. */
export function measuredUse({ fitted, origin, file, choices }: MeasuredBench): MeasuredUse {
  const still = stillFitted(fitted, origin.parts, file.parts);
  const names = new Set(file.parts.builds.map(({ name }) => name));
  const changed = fitted.flatMap(({ build }) =>
    names.has(build) && still.every((one) => one.build !== build) ? [build] : [],
  );
  return { fitted: still, changed, wanted: wantsMeasured(choices) };
}

/** The file on a bench with its measured builds as these choices want them. */
export function fileInUse(bench: MeasuredBench, choices: Choices): PartsFile {
  const { file, origin, fitted } = bench;
  if (!wantsMeasured(choices)) return file;
  if (bench.measured?.of !== file) {
    const still = stillFitted(fitted, origin.parts, file.parts);
    const parts = withFittedBuilds(file.parts, still);
    bench.measured = { of: file, file: still.length === 0 ? file : { ...file, parts } };
  }
  return bench.measured.file;
}
