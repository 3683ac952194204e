import { isMap, isScalar, isSeq, type Node, parseDocument, type Scalar } from 'yaml';
import type { PartPlace } from './part-place.js';

/** One value of a part in a parts file, as it is written there. */
export interface PartField {
  /** Steps from the top of the file, for example `pistons`, 1, `holes`, 0, `diameter`. */
  readonly path: readonly (string | number)[];
  readonly text: string;
}

/** The values of one part, in the order of the file. */
export function partFields(text: string, { list, index }: PartPlace): readonly PartField[] {
  const part = parseDocument(text).getIn([list, index], true) as Node | undefined;
  return part === undefined ? [] : scalarsUnder(part, [list, index]);
}

/**
 * A parts file with one value written anew. Nothing else changes: comments, order and layout of the file stay.
 *
 * @param text - the file
 * @param path - a path that `partFields` gave
 * @param value - what a reader wrote
 */
export function withField(text: string, path: PartField['path'], value: string): string {
  const node = parseDocument(text).getIn(path, true);
  if (!isScalar(node) || !node.range) throw new TypeError(`no value at ${path.join('.')}`);
  const [start, end] = node.range;
  return text.slice(0, start) + written(value.trim(), node) + text.slice(end);
}

function scalarsUnder(node: Node, path: PartField['path']): readonly PartField[] {
  if (isMap(node))
    return node.items.flatMap(({ key, value }) => scalarsUnder(value as Node, [...path, String(key)]));
  if (isSeq(node)) return node.items.flatMap((item, index) => scalarsUnder(item as Node, [...path, index]));
  const oneLine = isScalar(node) && node.type !== 'BLOCK_FOLDED' && node.type !== 'BLOCK_LITERAL';
  return oneLine ? [{ path, text: node.source ?? String(node.value) }] : [];
}

/** A value as YAML: in quotes where it was in quotes, or where YAML would read something else into it. */
function written(value: string, { type, value: before }: Scalar): string {
  const quoted = type === 'QUOTE_DOUBLE' || type === 'QUOTE_SINGLE';
  const plain = /^[\p{L}\p{N}][\p{L}\p{N} .%°·²³/()+−-]*$/u.test(value);
  const word = /^(?:true|false|null|yes|no|on|off)$/iu.test(value);
  const number = Number.isFinite(Number(value));
  return quoted || !plain || word || (number && typeof before !== 'number') ? JSON.stringify(value) : value;
}
