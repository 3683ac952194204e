import { isMap, isScalar, isSeq, type Range } from 'yaml';
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
      for (const { key, value } of node.items) {
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
