import {
  refuse,
  requireEach,
  requireFinite,
  requireKind,
  requireNumbers,
  requireRecord,
  requireWord,
} from './checks.js';

/**
 * The form of an argument: a text is a finite number in that unit, a function is a check of its own, and an object names the fields of an object.
 * Ranges are checked where the number is used.
 */
export type Shape = string | Check | { readonly [field: string]: Shape };

type Check = (value: unknown, field: string) => void;

/** Throws unless a value has a form; `field` is its path, empty for the arguments of a function. */
export function requireShape(value: unknown, shape: Shape, field = ''): void {
  if (typeof shape === 'string') requireFinite(value as number, field, shape);
  else if (typeof shape === 'function') shape(value, field);
  else {
    requireRecord(value, field);
    const fields = value as Readonly<Record<string, unknown>>;
    for (const [name, inner] of Object.entries(shape))
      requireShape(fields[name], inner, field === '' ? name : `${field}.${name}`);
  }
}

/** What may be left out. */
export function optional(shape: Shape): Check {
  return (value, field) => {
    if (value !== undefined) requireShape(value, shape, field);
  };
}

/** A list of things of one form, of any length. */
export function listOf(shape: Shape): Check {
  return (value, field) => {
    requireEach(value as readonly unknown[], field, (one, inner) => requireShape(one, shape, inner));
  };
}

/** A list of finite numbers, plain or typed. */
export const numbers: Check = (value, field) => {
  requireNumbers(value, field);
  for (const [index, one] of (value as readonly number[]).entries())
    requireFinite(one, `${field}[${index}]`, '');
};

/** One of a few words. */
export function oneOf(...words: readonly string[]): Check {
  return (value, field) => requireWord(value, words, field);
}

/** One of a few forms, told by the word in `kind`. */
export function byKind(shapes: Readonly<Record<string, Shape>>): Check {
  return (value, field) => {
    requireRecord(value, field);
    const { kind } = value as { readonly kind: string };
    requireWord(kind, Object.keys(shapes), field === '' ? 'kind' : `${field}.kind`);
    requireShape(value, shapes[kind]!, field);
  };
}

/** What a function of this library made: it is told by one of its fields, and its insides are not looked at. */
export function madeWith(sign: string): Check {
  return (value, field) => {
    requireRecord(value, field);
    if (!(sign in (value as object))) requireRecord(undefined, `${field}.${sign}`);
  };
}

/** An object that the language itself has a name for, such as a `Map`. */
export function built(name: string): Check {
  return (value, field) => {
    if ({}.toString.call(value) !== `[object ${name}]`) refuse(value, field, '', `a ${name}`);
  };
}

export const someText: Check = (value, field) => requireKind(value, 'string', field);
export const flag: Check = (value, field) => requireKind(value, 'boolean', field);
export const call: Check = (value, field) => requireKind(value, 'function', field);
/** For what may lack all fields that would tell it apart. */
export const record: Check = requireRecord;
export const anything: Check = (value, field) => {
  if (value === undefined) refuse(value, field, '', 'given');
};
