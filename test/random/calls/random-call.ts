import { everyExport } from '../../edges/every-export.js';
import { isFree, isWhole } from '../../edges/good-call.js';
import { type Draw, drawOf } from './draw.js';
import { gone, type Odd, oddValue } from './odd-values.js';

type Place = readonly (string | number)[];

/** One odd value in its place. */
export interface Put extends Odd {
  readonly place: Place;
  readonly good: unknown;
}

/** A call of an exported function with one or two odd values in good arguments. */
export interface RandomCall {
  readonly entry: string;
  readonly name: string;
  readonly run: (...args: readonly unknown[]) => unknown;
  readonly args: readonly unknown[];
  readonly puts: readonly Put[];
}

const cases = everyExport.filter(({ calls }) => calls.some((args) => args.length > 0));

/** The call that a seed and a count give. */
export function randomCall(seed: number, count: number, only = ''): RandomCall {
  const draw = drawOf(seed, count);
  const { entry, name, run, calls } = draw.one(
    only === '' ? cases : cases.filter((one) => one.name === only),
  );
  const good = draw.one(calls.filter((args) => args.length > 0));
  const places = good.flatMap((arg, index) => placesIn(arg, [index], 0));
  const first = put(good, places, draw);
  const second = put(good, places, draw);
  const puts = draw.part() < 0.4 && !overlap(first.place, second.place) ? [first, second] : [first];
  // What is taken away goes last, since it moves the entries behind it.
  puts.sort((one, other) => Number(one.value === gone) - Number(other.value === gone));
  const args = puts.reduce<unknown>((now, { place, value }) => replaced(now, place, value), good);
  return { entry, name, run, args: args as readonly unknown[], puts };
}

/** A place is drawn level by level at times, so that the many places of a long list do not take all draws. */
function put(good: readonly unknown[], places: readonly Place[], draw: Draw): Put {
  const depth = Math.min(...[1, 2].map(() => draw.one(places).length));
  const level = draw.part() < 0.5 ? places : places.filter(({ length }) => length === depth);
  const place = draw.one(level);
  const value = place.reduce<unknown>((within, key) => (within as Record<string, unknown>)[key], good);
  return { place, good: value, ...oddValue(value, draw) };
}

function overlap(one: Place, other: Place): boolean {
  return one.every((key, index) => key === other[index]) || other.every((key, index) => key === one[index]);
}

/** What another function made is passed on whole, but a damper is plain data that anyone may write. */
function placesIn(good: unknown, place: Place, depth: number): readonly Place[] {
  if (isFree(good)) return [];
  if (typeof good !== 'object' || good === null || depth > 9 || ArrayBuffer.isView(good)) return [place];
  const isDamper = 'bore' in good && 'piston' in good && 'gas' in good;
  if ((isWhole(good) && !isDamper) || Symbol.iterator in good !== Array.isArray(good)) return [place];
  if (good instanceof Error || 'next' in good) return [place];
  const inner = Array.isArray(good) ? [...good.entries()] : Object.entries(good);
  return [
    place,
    ...inner.flatMap(([key, value]) => placesIn(value, [...place, key as string | number], depth + 1)),
  ];
}

function replaced(within: unknown, [key, ...rest]: Place, value: unknown): unknown {
  if (key === undefined) return value;
  if (Array.isArray(within)) {
    if (rest.length === 0 && value === gone) return within.toSpliced(Number(key), 1);
    return within.map((one: unknown, index) => (index === key ? replaced(one, rest, value) : one));
  }
  const { [key]: one, ...others } = within as Record<string, unknown>;
  return rest.length === 0 && value === gone ? others : { ...others, [key]: replaced(one, rest, value) };
}
