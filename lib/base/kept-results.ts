/**
 * The last few results of a pure function, kept as long as the object that they belong to: moving a control back and forth, or one that does not
 * reach a result, computes nothing anew.
 *
 * @param most - results kept for each owner
 * @returns a function of the owner, of all else that the result depends on, as plain data, and of what computes it
 */
export function keptResults<Owner extends object, Result>(
  most: number,
): (owner: Owner, input: unknown, compute: () => Result) => Result {
  const store = new WeakMap<Owner, Map<string, { readonly result: Result }>>();
  return (owner, input, compute) => {
    const ofOwner = store.get(owner) ?? new Map<string, { readonly result: Result }>();
    store.set(owner, ofOwner);
    const key = keyOf(input);
    if (key === undefined) return compute();
    const found = ofOwner.get(key) ?? { result: compute() };
    // A map keeps the order in which its keys came: the first is the one that was not asked for the longest.
    ofOwner.delete(key);
    ofOwner.set(key, found);
    const [oldest] = ofOwner.keys();
    if (ofOwner.size > most && oldest !== undefined) ofOwner.delete(oldest);
    return found.result;
  };
}

/** Nothing for what JSON cannot write, such as an object that holds itself among fields that nobody asks for. */
function keyOf(input: unknown): string | undefined {
  try {
    return JSON.stringify(input, withAllNumbers);
  } catch {
    return undefined;
  }
}

/** JSON has no word for infinity. */
function withAllNumbers(_key: string, value: unknown): unknown {
  return typeof value === 'number' && !Number.isFinite(value) ? `${value}` : value;
}
