import { isFree, isWhole } from './good-call.js';

/** What is put in one place of good arguments. */
export interface Trial {
  /** Where, the number of the argument first. */
  readonly place: readonly (string | number)[];
  readonly what: 'missing' | 'wrong type' | 'not finite' | 'other number' | 'other length';
  readonly value: unknown;
}

type Place = readonly (string | number)[];

/** All that is tried in good arguments, one place at a time. */
export function trialsOf(args: readonly unknown[]): readonly Trial[] {
  return args.flatMap((arg, index) => trialsAt(arg, [index]));
}

function trialsAt(good: unknown, place: Place): readonly Trial[] {
  if (isFree(good)) return [];
  const trial =
    (what: Trial['what']) =>
    (value: unknown): Trial => ({ place, what, value });
  const own = [
    trial('missing')(undefined),
    ...wrongTypes(good).map(trial('wrong type')),
    ...(typeof good === 'number' ? [Number.NaN, Infinity, -Infinity].map(trial('not finite')) : []),
    ...(typeof good === 'number' ? otherNumbers(good).map(trial('other number')) : []),
    ...(Array.isArray(good) ? [[], good.slice(1)].map(trial('other length')) : []),
    ...(Array.isArray(good) ? [trial('wrong type')(new DataView(new ArrayBuffer(8)))] : []),
  ];
  return [...own, ...inside(good).flatMap(([key, value]) => trialsAt(value, [...place, key]))];
}

function wrongTypes(good: unknown): readonly unknown[] {
  const all = [null, true, 3, 'a text', {}, [], () => undefined];
  const kind = kindOf(good);
  // An empty list is a list, and what holds nothing lacks its fields: both are told by what is missing in them.
  const others = all.filter((value) => kindOf(value) !== kind);
  if (kind === 'number') return ['3', ...others];
  return others;
}

function kindOf(value: unknown): string {
  if (value === null) return 'null';
  return Array.isArray(value) || ArrayBuffer.isView(value) ? 'list' : typeof value;
}

function otherNumbers(good: number): readonly number[] {
  return [-good || -1, 0, 0.5, good * 1e9 || 1e9, good * 1e-9, 1e300, -1e300, 1e-300, 5e-324];
}

function inside(good: unknown): readonly (readonly [string | number, unknown])[] {
  if (Array.isArray(good)) return [...good.entries()].slice(0, 2);
  // A list of typed numbers can hold no other type.
  if (typeof good !== 'object' || good === null || isWhole(good) || ArrayBuffer.isView(good)) return [];
  if (good instanceof Map || good instanceof Error || Symbol.iterator in good) return [];
  return Object.entries(good);
}

/** The arguments with a value in that place. */
export function argumentsWith(args: readonly unknown[], { place, value }: Trial): readonly unknown[] {
  return replaced(args, place, value) as readonly unknown[];
}

function replaced(within: unknown, [key, ...rest]: Place, value: unknown): unknown {
  if (key === undefined) return value;
  if (Array.isArray(within))
    return within.map((one: unknown, index) => (index === key ? replaced(one, rest, value) : one));
  const { [key]: one, ...others } = within as Record<string, unknown>;
  if (rest.length === 0 && value === undefined) return others;
  return { ...others, [key]: replaced(one, rest, value) };
}
