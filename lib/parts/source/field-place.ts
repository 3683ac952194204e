import { type Document, isMap, isNode, isScalar, isSeq } from 'yaml';
import { type FieldPath, type Finding, pathText } from './finding.js';
import type { PartsFileProblem } from './parts-file-error.js';
import { problemAt, type SourceTree } from './source-tree.js';

/** Puts line and column to a finding: those of its field or, where the field is missing, of what should hold it. */
export function located(tree: SourceTree, finding: Finding): PartsFileProblem {
  const offset = fieldOffset(tree.documents[0], finding.path, finding.atKey === true);
  return problemAt(tree.lines, offset, pathText(finding.path), finding.message);
}

function fieldOffset(document: Document.Parsed | undefined, path: FieldPath, atKey: boolean): number {
  let node: unknown = document?.contents;
  let offset = startOf(node) ?? 0;
  for (const [index, step] of path.entries()) {
    if (isMap(node)) {
      const pair = node.items.find(({ key }) => isScalar(key) && key.value === step);
      if (pair === undefined) break;
      offset = startOf(pair.key) ?? offset;
      node = pair.value;
      if (atKey && index === path.length - 1) break;
    } else {
      node = isSeq(node) && typeof step === 'number' ? node.items[step] : undefined;
    }
    offset = startOf(node) ?? offset;
  }
  return offset;
}

/** Where a node begins; a value that is not there has no text to point at. */
function startOf(node: unknown): number | undefined {
  const [start, end] = (isNode(node) ? node.range : undefined) ?? [];
  return start === end ? undefined : start;
}
