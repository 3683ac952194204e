import type { Draw } from './draw.js';

/** What is put in one place: its name, and whether a careful reader would call it another type than the good value. */
export interface Odd {
  readonly name: string;
  readonly value: unknown;
  readonly wrongType: boolean;
}

/** Taking the field away altogether, or the entry out of its list. */
export const gone = Symbol('gone');

/** The error of a caller's own getter, which is his and may pass. */
export class OwnError extends Error {}

class Made {
  constructor(fields: object) {
    Object.assign(this, fields);
  }
}

/** Of no type that any argument has, whatever stands there. */
const strangers: readonly (readonly [string, () => unknown])[] = [
  ['null', () => null],
  ['a bigint', () => 3n],
  ['a symbol', () => Symbol('odd')],
  ['a date', () => new Date(0)],
  ['an empty map', () => new Map()],
  ['a map', () => new Map([['speed', 1]])],
  ['a set', () => new Set([1])],
  ['an expression', () => /odd/u],
  ['a promise', () => Promise.resolve(1)],
  ['a boxed number', () => Object(3)],
  ['a boxed text', () => Object('odd')],
  ['a boxed flag', () => Object(false)],
  ['a boxed bigint', () => Object(3n)],
  ['a DataView', () => new DataView(new ArrayBuffer(8))],
  ['a buffer', () => new ArrayBuffer(8)],
  ['a class', () => Made],
  ['an iterator', () => [1, 2].values()],
  ['arguments', () => asArguments(1, 2)],
  ['a typed list of bigints', () => new BigInt64Array(2)],
  ['the global object', () => globalThis],
];

function asArguments(..._values: readonly unknown[]): unknown {
  return (function given() {
    // biome-ignore lint/complexity/noArguments: the very object that is tried
    return arguments;
  })();
}

const plain: readonly (readonly [kind: string, name: string, make: () => unknown])[] = [
  ['boolean', 'true', () => true],
  ['number', 'a number', () => 3],
  ['string', 'a numeric text', () => '0.01'],
  ['string', 'an empty text', () => ''],
  ['string', 'a text', () => 'odd'],
  ['string', 'a text of signs', () => '\u202eodd\u0007\r\n'],
  ['string', 'a name of every object', () => 'constructor'],
  ['string', 'a long text', () => 'odd'.repeat(40_000)],
  ['function', 'a function', () => () => undefined],
  ['function', 'a function to NaN', () => () => Number.NaN],
  ['list', 'an empty list', () => []],
  ['list', 'a list of lists', () => [[1], [2]]],
  ['list', 'a list of nothing', () => [undefined, null]],
  ['list', 'a list of holes', () => new Array(3)],
  ['list', 'a list of texts', () => ['1', '2']],
  ['list', 'an empty typed list', () => new Float64Array(0)],
  ['list', 'a typed list', () => Float64Array.of(0.1, 0.2)],
  ['list', 'a typed list of NaN', () => Float64Array.of(Number.NaN)],
  ['object', 'an empty object', () => ({})],
  ['object', 'an object without prototype', () => Object.create(null)],
  ['object', 'something like a list', () => ({ length: 2, 0: 1, 1: 2 })],
  ['object', 'an object of another kind', () => ({ kind: 'toString' })],
  ['object', 'an object with a value', () => ({ valueOf: () => 3, toString: () => '3' })],
];

const numbers: readonly ((good: number, draw: Draw) => number)[] = [
  () => Number.NaN,
  () => Number.POSITIVE_INFINITY,
  () => Number.NEGATIVE_INFINITY,
  () => 0,
  () => -0,
  () => Number.MAX_VALUE,
  () => -Number.MAX_VALUE,
  () => Number.MIN_VALUE,
  () => Number.MAX_SAFE_INTEGER + 1,
  (good) => -good,
  (good) => good + 0.5,
  (good) => good * (1 + 1e-15),
  (good, draw) => (good || 1) * 10 ** (12 * draw.part() - 6),
  (good, draw) => (good || 1) * 10 ** (2 * draw.part() - 1),
  (_good, draw) => 10 ** (60 * draw.part() - 32),
  (_good, draw) => -(10 ** (60 * draw.part() - 32)),
  (_good, draw) => 10 ** (600 * draw.part() - 300),
];

export function kindOf(value: unknown): string {
  if (value === null) return 'null';
  return Array.isArray(value) || ArrayBuffer.isView(value) ? 'list' : typeof value;
}

/** One odd value for the place of a good one. */
export function oddValue(good: unknown, draw: Draw): Odd {
  const way = draw.part();
  if (way < 0.08) return { name: 'missing', value: draw.one([undefined, gone]), wrongType: true };
  const own = ownKind(good, draw);
  if (own !== undefined && way < 0.55) return own;
  if (way < 0.75) {
    const [name, make] = draw.one(strangers);
    // A class is a function, and one that throws.
    if (name === 'a class' && typeof good === 'function') return oddValue(good, draw);
    return { name, value: make(), wrongType: true };
  }
  const kind = kindOf(good);
  const [other, name, make] = draw.one(plain);
  // What holds nothing lacks its fields, and a text may be any: whether these are refused is for the other checks to say.
  return { name, value: make(), wrongType: other !== kind };
}

/** Something of the same kind that is odd all the same. */
function ownKind(good: unknown, draw: Draw): Odd | undefined {
  if (typeof good === 'number')
    return { name: 'another number', value: draw.one(numbers)(good, draw), wrongType: false };
  if (Array.isArray(good)) return toldApart(draw.one(listsLike(good, draw)));
  if (typeof good !== 'object' || good === null || ArrayBuffer.isView(good)) return undefined;
  if ({}.toString.call(good) !== '[object Object]') return undefined;
  return toldApart(draw.one(objectsLike(good)));
}

type Like = readonly [name: string, value: unknown, wrongType?: boolean];

function toldApart([name, value, wrongType = false]: Like): Odd {
  return { name, value, wrongType };
}

function listsLike(good: readonly unknown[], draw: Draw): readonly Like[] {
  const ofNumbers = typeof good[0] === 'number';
  const at = Math.floor(good.length * draw.part());
  const holed = [...good];
  delete holed[at];
  return [
    ['empty', []],
    ['without one', good.filter((_, index) => index !== at)],
    ['one twice', [...good, ...good.slice(at, at + 1)]],
    ['turned round', good.toReversed()],
    ['with a hole', holed, good.length > 0],
    ['longer by a hole', Object.assign([...good], { length: good.length + 1 }), true],
    ['frozen', Object.freeze([...good])],
    ['in a list', [good], true],
    ['very long', Object.assign([...good], { length: 2 ** 32 - 1 }), true],
    ['typed and empty', new Float64Array(0), !ofNumbers],
    ['typed', Float64Array.from(good, Number), !ofNumbers],
  ];
}

function objectsLike(good: object): readonly Like[] {
  const throwing = Object.defineProperties(
    {},
    Object.fromEntries(
      Object.keys(good).map((key) => [
        key,
        {
          enumerable: true,
          get: () => {
            throw new OwnError('own');
          },
        },
      ]),
    ),
  );
  const turning = { ...good };
  Object.assign(turning, { self: turning });
  return [
    ['frozen', Object.freeze({ ...good })],
    ['without prototype', Object.assign(Object.create(null), good)],
    ['of a class', new Made(good)],
    ['inherited', Object.create(good)],
    ['behind a proxy', new Proxy(good, {})],
    ['with getters that throw', throwing],
    ['that holds itself', turning],
    ['in a list', [good], true],
    ['of a list with fields', withFields([], good), true],
    ['of a function with fields', withFields(() => undefined, good), true],
    ['of a date with fields', withFields(new Date(0), good)],
    ['of a typed list with fields', withFields(new Float64Array(0), good)],
  ];
}

function withFields(base: object, fields: object): object {
  for (const [key, value] of Object.entries(fields)) {
    try {
      Object.defineProperty(base, key, { value, configurable: true });
    } catch {
      // A field that is fixed stays as it was.
    }
  }
  return base;
}
