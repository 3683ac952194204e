import { isMap, isScalar, isSeq, type Range, type YAMLMap } from 'yaml';
import { groupedNumberFault } from '../../units/comma-number.js';
import { type FieldPath, pathText } from './finding.js';
import { literal } from './literal.js';
import type { PartsFileProblem } from './parts-file-error.js';
import { problemAt, type SourceTree } from './source-tree.js';

/** What YAML allows and a parts file does not: keys given twice, keys that are no text, numbers without end. */
export function sourceFaults(tree: SourceTree): readonly PartsFileProblem[] {
  const problems: PartsFileProblem[] = [];
  visit(tree.documents[0]?.contents, []);
  return problems;

  function add(range: Range | null | undefined, path: FieldPath, message: string): void {
    problems.push(problemAt(tree.lines, range?.[0] ?? 0, pathText(path), message));
  }

  function visit(node: unknown, path: FieldPath): void {
    if (isSeq(node)) {
      for (const [index, item] of node.items.entries()) visit(item, [...path, index]);
    } else if (isScalar(node)) {
      if (typeof node.value === 'number' && !Number.isFinite(node.value))
        add(node.range, path, `must be a number of ordinary size, got ${node.source ?? node.value}`);
    } else if (isMap(node)) {
      const seen = new Set<string>();
      const parted = partedNumbers(node);
      for (const { key, value } of node.items) {
        const number = parted.get(key);
        if (number !== undefined) {
          add(number.range, [...path, number.field], number.message);
          continue;
        }
        const name = isScalar(key) ? key.value : undefined;
        const range = isScalar(key) ? key.range : node.range;
        if (typeof name !== 'string') {
          add(
            range,
            path,
            `every key must be text, got ${name === undefined ? 'something else' : literal(name)}`,
          );
          continue;
        }
        if (seen.has(name)) add(range, [...path, name], 'is given twice');
        // JavaScript gives this one key a meaning of its own.
        if (name === '__proto__') add(range, [...path, name], 'unknown key');
        seen.add(name);
        visit(value, [...path, name]);
      }
    }
  }
}

/** A number that a comma parts in braces, where `{ viscosity: 1,000 cSt }` is a viscosity of 1 and a key "000 cSt", by that key. */
function partedNumbers({ flow, items }: YAMLMap): ReadonlyMap<unknown, PartedNumber> {
  if (flow !== true) return new Map();
  return new Map(
    items.flatMap(({ key, value }, index): [unknown, PartedNumber][] => {
      const before = items[index - 1];
      if (!isScalar(key) || !isScalar(before?.key) || !isScalar(before.value)) return [];
      if (isScalar(value) ? value.value !== null : value !== null) return [];
      const [start, rest] = [before.value.source ?? '', key.source ?? ''];
      if (!/^[+\-−]?\d+$/u.test(start) || !/^\d/u.test(rest)) return [];
      const written = `${start},${rest}`;
      const fault = groupedNumberFault(written) ?? 'has a decimal comma where a point is needed';
      const message = `${literal(written)} ${fault}`;
      return [[key, { field: String(before.key.value), range: before.value.range, message }]];
    }),
  );
}

interface PartedNumber {
  readonly field: string;
  readonly range: Range | null | undefined;
  readonly message: string;
}
