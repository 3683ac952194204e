import { closingFault, fitFault } from './build-fit.js';
import type {
  Build,
  DayReading,
  OilPart,
  Parts,
  PartTolerances,
  PistonPart,
  ShockPart,
  ShopOil,
  SpringPart,
  TimedShockPart,
} from './parts.js';
import type { BuildEntry } from './schema/build-schema.js';
import { type Finding, pathText } from './source/finding.js';
import { mostReported } from './source/parts-file-error.js';
import { shown } from './source/shown.js';
import { unknownName } from './source/wording.js';

/** One list of the file: each entry where it is good, and every name, also of entries that are not. */
export interface PartList<Part> {
  readonly key: string;
  readonly entries: readonly (Part | undefined)[];
  readonly names: readonly (string | undefined)[];
}

/** The lists of a file. */
export interface PartLists {
  readonly oils: PartList<OilPart>;
  readonly pistons: PartList<PistonPart>;
  readonly shocks: PartList<ShockPart>;
  readonly springs: PartList<SpringPart>;
  readonly builds: PartList<BuildEntry>;
  readonly shop: PartList<ShopOil>;
  readonly timed: PartList<TimedShockPart>;
}

/** What a file says beside its lists of parts. */
export interface Remarks {
  readonly about: string;
  readonly day?: readonly DayReading[];
  readonly tolerances?: PartTolerances;
}

/** Puts the builds together and says what does not exist, exists twice or does not fit. */
export function assemble(
  remarks: Remarks,
  lists: PartLists,
): { readonly parts: Parts; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  for (const list of Object.values(lists) as PartList<unknown>[]) findings.push(...repeatedNames(list));
  const builds = lists.builds.entries.flatMap((entry, index): Build[] => {
    if (entry === undefined) return [];
    const build = assembled(entry, lists, ['builds', index], findings);
    return build === undefined ? [] : [build];
  });
  const parts = {
    ...remarks,
    oils: good(lists.oils),
    pistons: good(lists.pistons),
    shocks: good(lists.shocks),
    springs: good(lists.springs),
    builds,
    ...(lists.shop.entries.length === 0 ? {} : { shop: good(lists.shop) }),
    ...(lists.timed.entries.length === 0 ? {} : { timed: good(lists.timed) }),
  };
  return { parts, findings: [...findings, ...dayFindings(remarks.day ?? [])] };
}

/** Times of a day must rise, since a plan goes through them in order. */
function dayFindings(day: readonly DayReading[]): readonly Finding[] {
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
    const message = `must be a name of its own, got ${shown(name)}, the name of ${pathText([list.key, earlier])}`;
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
  const fault = fitFault(shock, piston);
  if (fault !== undefined) findings.push({ path: [...path, 'piston'], message: fault });
  const { name, quantity = 1, 'close-at': closeAt, corner, wanted } = entry;
  const wantedOil = wanted === undefined ? undefined : find('wanted', wanted.oil, lists.oils);
  const late = closeAt === undefined ? undefined : closingFault(shock, closeAt);
  if (late !== undefined) findings.push({ path: [...path, 'close-at'], message: late });
  return {
    name,
    shock,
    piston,
    oil,
    ...(spring === undefined ? {} : { spring }),
    quantity,
    ...(closeAt === undefined ? {} : { closeAt }),
    ...(corner === undefined ? {} : { corner }),
    ...(wanted === undefined || wantedOil === undefined
      ? {}
      : { wanted: { oil: wantedOil, temperature: wanted.at } }),
  };
}

function unknownReference(key: string, name: string, list: PartList<unknown>, earlier: number): string {
  // Looking for near names takes time, and only so many problems are shown.
  if (earlier >= mostReported) return `no ${key} is named ${shown(name)}`;
  const known = list.names.filter((candidate) => candidate !== undefined);
  if (known.length === 0) return `no ${key} is named ${shown(name)}: there are none under "${list.key}"`;
  return unknownName(`no ${key} is named ${shown(name)}`, name, known, `there are`);
}
