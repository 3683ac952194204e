import type { DayTemperature } from '../decisions/day/day-plan.js';
import type { RecordedCourse } from '../measure/dyno/read-course.js';
import type { BuildFault } from './assembly/fault-words.js';
import { buildFault, shockFault } from './build-fit.js';
import { buildsAsMeasured } from './builds-as-measured.js';
import { madeBuilds } from './made-builds.js';
import { measuredParts, timedShocks } from './measured-parts.js';
import { type PartList, unknownReference } from './part-list.js';
import type {
  Build,
  OilPart,
  Parts,
  PartTolerances,
  PistonPart,
  RecordedStroke,
  ShopOil,
  SpringPart,
} from './parts.js';
import type { BuildEntry } from './schema/build-schema.js';
import { placeInStroke } from './schema/closing-schema.js';
import type { MeasurementEntry } from './schema/measurement-schema.js';
import type { TimedEntry } from './schema/plan-schema.js';
import type { ShockPart } from './shock-part.js';
import { type FieldPath, type Finding, pathText } from './source/finding.js';
import { literal } from './source/literal.js';

/** The lists of a file. */
export interface PartLists {
  readonly oils: PartList<OilPart>;
  readonly pistons: PartList<PistonPart>;
  readonly shocks: PartList<ShockPart>;
  readonly springs: PartList<SpringPart>;
  readonly builds: PartList<BuildEntry>;
  readonly shop: PartList<ShopOil>;
  readonly timed: PartList<TimedEntry>;
  readonly measurements: PartList<MeasurementEntry>;
}

/** What a file says beside its lists of parts. */
export interface Remarks {
  readonly about: string;
  readonly day?: readonly DayTemperature[];
  readonly tolerances?: PartTolerances;
  readonly recordedStroke?: RecordedStroke;
  readonly recordedGround?: RecordedCourse;
}

/** Puts the builds together and says what does not exist, exists twice or does not fit. */
export function assemble(
  remarks: Remarks,
  lists: PartLists,
): { readonly parts: Parts; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  for (const list of Object.values(lists) as PartList<unknown>[]) findings.push(...repeatedNames(list));
  const named = lists.builds.entries.map((entry, index): Build | undefined =>
    entry === undefined ? undefined : assembled(entry, lists, ['builds', index], findings),
  );
  findings.push(...unbuiltFindings(lists, named));
  const loose = { oils: good(lists.oils), pistons: good(lists.pistons), shocks: good(lists.shocks) };
  const made = lists.builds.entries.length === 0 ? madeBuilds(loose) : undefined;
  const stated = made?.builds ?? named.filter((build) => build !== undefined);
  // What was measured was measured on the shock as it is; what it came out as is fitted about the one as stated.
  const measurements = measuredParts(lists, stated, findings);
  const entries = made === undefined ? lists.builds.entries : [];
  const { builds, ...replaced } = buildsAsMeasured(entries, named, stated, findings);
  const timed = timedShocks(lists, builds, findings);
  const parts = {
    ...remarks,
    assumptions: made?.assumptions ?? [],
    oils: [...loose.oils, ...replaced.oils],
    pistons: [...loose.pistons, ...replaced.pistons],
    shocks: [...loose.shocks, ...replaced.shocks],
    springs: good(lists.springs),
    builds,
    ...(lists.shop.entries.length === 0 ? {} : { shop: good(lists.shop) }),
    ...(timed.length === 0 ? {} : { timed }),
    ...(measurements.length === 0 ? {} : { measurements }),
  };
  return { parts, findings: [...distinct(findings), ...dayFindings(remarks.day ?? [])] };
}

/** Faults of shocks that no build has asked for. */
function unbuiltFindings(lists: PartLists, builds: readonly (Build | undefined)[]): readonly Finding[] {
  const built = new Set(builds.map((build) => build?.shock));
  return lists.shocks.entries.flatMap((shock, index): Finding[] => {
    if (shock === undefined || built.has(shock)) return [];
    const fault = shockFault(shock);
    return fault === undefined ? [] : [{ path: ['shocks', index, ...fault.path], message: fault.message }];
  });
}

/** Two builds of one shock may find the same fault of it. */
function distinct(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Map(findings.map((finding) => [`${pathText(finding.path)} ${finding.message}`, finding]));
  return [...seen.values()];
}

/** Times of a day must rise, since a plan goes through them in order. */
function dayFindings(day: readonly DayTemperature[]): readonly Finding[] {
  return day.flatMap(({ time }, index): Finding[] => {
    const before = day[index - 1];
    if (before === undefined || time > before.time) return [];
    return [{ path: ['day', index, 'time'], message: 'must be later than the time before it' }];
  });
}

function good<Part>(list: PartList<Part>): readonly Part[] {
  return list.entries.filter((entry) => entry !== undefined);
}

function repeatedNames(list: PartList<unknown>): readonly Finding[] {
  const first = new Map<string, number>();
  return list.names.flatMap((name, index): Finding[] => {
    if (name === undefined) return [];
    const earlier = first.get(name);
    if (earlier === undefined) {
      first.set(name, index);
      return [];
    }
    const message = `must be a name of its own, got ${literal(name)}, the name of ${pathText([list.key, earlier])}`;
    return [{ path: [list.key, index, 'name'], message }];
  });
}

function assembled(
  entry: BuildEntry,
  lists: PartLists,
  path: readonly PropertyKey[],
  findings: Finding[],
): Build | undefined {
  const find = <Part>(
    key: 'shock' | 'piston' | 'oil' | 'spring' | 'wanted',
    name: string,
    list: PartList<Part>,
  ) => {
    const index = list.names.indexOf(name.normalize());
    if (index < 0) {
      const [place, what] = key === 'wanted' ? [['wanted', 'oil'], 'oil'] : [[key], key];
      const message = unknownReference(what, name, list, findings.length);
      findings.push({ path: [...path, ...place], message });
    }
    return list.entries[index];
  };
  const shock = find('shock', entry.shock, lists.shocks);
  const piston = find('piston', entry.piston, lists.pistons);
  const oil = find('oil', entry.oil, lists.oils);
  const spring = entry.spring === undefined ? undefined : find('spring', entry.spring, lists.springs);
  if (shock === undefined || piston === undefined || oil === undefined) return undefined;
  const { name, quantity = 1, 'close-at': closeAt, corner, wanted } = entry;
  const wantedOil = wanted === undefined ? undefined : find('wanted', wanted.oil, lists.oils);
  const build = {
    name,
    shock,
    piston,
    oil,
    ...(spring === undefined ? {} : { spring }),
    quantity,
    ...(closeAt === undefined ? {} : { closeAt: placeInStroke(closeAt, shock.stroke) }),
    ...(corner === undefined ? {} : { corner }),
    ...(wanted === undefined || wantedOil === undefined
      ? {}
      : { wanted: { oil: wantedOil, temperature: wanted.at } }),
  };
  const fault = buildFault(build);
  if (fault !== undefined)
    findings.push(placed(fault, path, ['shocks', lists.shocks.entries.indexOf(shock)]));
  return build;
}

/** A fault of a build where it stands in the file. */
function placed({ of, path, message }: BuildFault, build: FieldPath, shock: FieldPath): Finding {
  if (of === 'shock') return { path: [...shock, ...path], message };
  return { path: [...build, ...(of === 'piston' ? ['piston'] : []), ...path], message };
}
