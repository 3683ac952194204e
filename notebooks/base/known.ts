import { createOil, type Oil } from '../../lib/fluid/oil/oil.js';
import { type AssembledShock, assembleShock } from '../../lib/parts/assembly/assembled-shock.js';
import type { OilPart } from '../../lib/parts/parts.js';

/** What is assembled: a build. */
type Assembled = Parameters<typeof assembleShock>[0];

const oils = new WeakMap<OilPart['definition'], Oil>();
const shocks = new WeakMap<Assembled, AssembledShock>();

/** The oil of a definition, fitted once: a page asks for it at every temperature, and again as a slider moves. */
export function knownOil(definition: OilPart['definition']): Oil {
  return known(oils, definition, createOil);
}

/** The shock of a build, assembled once, as {@link knownOil}. */
export function knownShock(build: Assembled): AssembledShock {
  return known(shocks, build, (one) => assembleShock(one));
}

function known<Key extends object, Value>(
  store: WeakMap<Key, Value>,
  key: Key,
  make: (key: Key) => Value,
): Value {
  const before = store.get(key);
  if (before !== undefined) return before;
  const made = make(key);
  store.set(key, made);
  return made;
}
