import { referredBuild } from './build-reference.js';
import type { PartList } from './part-list.js';
import type { Build, MeasurementPart, TimedShockPart } from './parts.js';
import { measuredDyno } from './schema/measured-dyno.js';
import { MeasurementFault, measuredReadings } from './schema/measured-readings.js';
import type { MeasurementEntry } from './schema/measurement-schema.js';
import type { TimedEntry } from './schema/plan-schema.js';
import type { Finding } from './source/finding.js';

/** The timed shocks, each with its build. */
export function timedShocks(
  { timed, builds: list }: { readonly timed: PartList<TimedEntry>; readonly builds: PartList<unknown> },
  builds: readonly Build[],
  findings: Finding[],
): readonly TimedShockPart[] {
  return timed.entries.flatMap((entry, index): TimedShockPart[] => {
    if (entry === undefined) return [];
    const { build: name, ...shock } = entry;
    const build = referredBuild(name, ['timed', index], list, builds, findings);
    return build === undefined ? [] : [{ ...shock, build }];
  });
}

/** What was measured, each with its build and its readings. */
export function measuredParts(
  {
    measurements,
    builds: list,
  }: { readonly measurements: PartList<MeasurementEntry>; readonly builds: PartList<unknown> },
  builds: readonly Build[],
  findings: Finding[],
): readonly MeasurementPart[] {
  return measurements.entries.flatMap((entry, index): MeasurementPart[] => {
    if (entry === undefined) return [];
    const path = ['measurements', index];
    const build = referredBuild(entry.build, path, list, builds, findings);
    if (build === undefined) return [];
    try {
      const readings = measuredReadings(entry, build.oil);
      const dyno = measuredDyno(entry, build.shock.stroke);
      const { shock } = entry;
      return [
        {
          ...(shock === undefined ? {} : { shock }),
          build,
          readings,
          ...(dyno === undefined ? {} : { dyno }),
        },
      ];
    } catch (error) {
      if (!(error instanceof MeasurementFault)) throw error;
      findings.push({ path: [...path, ...error.path], message: error.message });
      return [];
    }
  });
}
