/** Good arguments of one call of an exported function. */
export type GoodCall = readonly unknown[];

/** Good calls of the functions of an entry, by name. */
export type GoodCalls = Readonly<Record<string, readonly GoodCall[]>>;

const bound = new WeakSet<object>();

/**
 * Marks what a function of the library made, such as a damper model: it is passed on whole. Its insides are no input, so that they are not tried,
 * but something else in its place is.
 */
export function whole<Made extends object>(made: Made): Made {
  bound.add(made);
  return made;
}

const anyOf = new WeakSet<object>();

/** Marks what may be anything at all, so that nothing is tried in its place. */
export function free<Made extends object>(made: Made): Made {
  anyOf.add(made);
  return made;
}

export function isFree(value: unknown): boolean {
  return typeof value === 'object' && value !== null && anyOf.has(value);
}

export function isWhole(value: unknown): boolean {
  return typeof value === 'object' && value !== null && bound.has(value);
}
