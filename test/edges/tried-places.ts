import { isFree, isWhole } from './good-call.js';

/** What is put in one place of good arguments. */
export interface Trial {
  /** Where, the number of the argument first. */
  readonly place: readonly (string | number)[];
  readonly what: 'missing' | 'wrong type' | 'not finite' | 'other number' | 'other length' | 'another form';
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
    ...(typeof good === 'function' ? oddCalls.map(trial('another form')) : []),
    ...(Array.isArray(good) ? oddLists(good).map(trial('wrong type')) : []),
    ...(isPlain(good) ? oddObjects(good).map(trial('another form')) : []),
  ];
  return [...own, ...inside(good).flatMap(([key, value]) => trialsAt(value, [...place, key]))];
}

/** In place of a function: one that gives nothing, or no number. */
const oddCalls: readonly unknown[] = [() => undefined, () => Number.NaN, () => 'a text'];

/** In place of a list: what is nearly one. One of typed numbers would make numbers of all that is made of it. */
function oddLists(good: readonly unknown[]): readonly unknown[] {
  const holed = Object.assign([...good], { length: good.length + 1 });
  return [holed, new Float64Array(0), Float64Array.from(good, Number), new DataView(new ArrayBuffer(8))];
}

/** The same fields in an object of another make, which may be taken or refused, and an error of the caller's own that may pass. */
function oddObjects(good: object): readonly unknown[] {
  return [
    Object.freeze({ ...good }),
    Object.assign(Object.create(null), good),
    Object.create(good),
    Object.assign(new Date(0), good),
    holdingItself(good),
  ];
}

function holdingItself(good: object): object {
  const ring: Record<string, unknown> = { ...good };
  ring['self'] = ring;
  return ring;
}

function isPlain(good: unknown): good is object {
  return {}.toString.call(good) === '[object Object]';
}

function wrongTypes(good: unknown): readonly unknown[] {
  const dressed = [
    new Date(0),
    new Map([['a', 1]]),
    Object(3),
    Object('a text'),
    /a text/u,
    Float64Array.of(1),
  ];
  const all = [null, true, 3, 3n, Symbol('odd'), 'a \u202e text \u0007', {}, [], () => undefined];
  const kind = kindOf(good);
  // An empty list is a list, and what holds nothing lacks its fields: both are told by what is missing in them.
  const others = all.filter((value) => kindOf(value) !== kind);
  const strange = [...others, ...dressed];
  if (kind === 'number') return ['3', ...strange];
  return kind === 'list' ? [...others, ...dressed.slice(0, -1)] : strange;
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
