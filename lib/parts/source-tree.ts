import {
  Composer,
  type CST,
  type Document,
  isMap,
  isNode,
  isScalar,
  isSeq,
  Lexer,
  LineCounter,
  Parser,
} from 'yaml';
import { type FieldPath, type Finding, pathText } from './finding.js';
import type { PartsFileProblem } from './parts-file-error.js';

/** A parts file as text turned into a tree that still knows its lines, comments and order. */
export interface SourceTree {
  readonly documents: readonly Document.Parsed[];
  readonly lines: LineCounter;
  /** Where lists and groups were nested too deeply to go on; the rest of the file was not read. */
  readonly tooDeepAt?: number;
}

/** Twice what the format needs; yaml builds its tree by recursion, so that depth must be limited before it. */
const deepestNesting = 24;

/** Splits a text into YAML documents without judging them. */
export function sourceTree(text: string): SourceTree {
  const lines = new LineCounter();
  lines.addNewLine(0);
  const parser = new Parser(lines.addNewLine);
  const tokens: CST.Token[] = [];
  for (const lexeme of new Lexer().lex(text)) {
    tokens.push(...parser.next(lexeme));
    if (parser.stack.length > deepestNesting) return { documents: [], lines, tooDeepAt: parser.offset };
  }
  tokens.push(...parser.end());
  // uniqueKeys compares every key with every other; lib/parts/source-faults.ts does it in one pass.
  const composer = new Composer({ version: '1.2', uniqueKeys: false, logLevel: 'silent' });
  return { documents: [...composer.compose(tokens, true, text.length)], lines };
}

/** Puts line and column to a place in the text. */
export function problemAt(tree: SourceTree, offset: number, path: string, message: string): PartsFileProblem {
  const { line, col } = tree.lines.linePos(offset);
  return { line: Math.max(line, 1), column: Math.max(col, 1), path, message };
}

/** Puts line and column to a finding: those of its field or, where the field is missing, of what should hold it. */
export function located(tree: SourceTree, finding: Finding): PartsFileProblem {
  const offset = fieldOffset(tree, finding.path, finding.atKey === true);
  return problemAt(tree, offset, pathText(finding.path), finding.message);
}

function fieldOffset(tree: SourceTree, path: FieldPath, atKey: boolean): number {
  let node: unknown = tree.documents[0]?.contents;
  let offset = isNode(node) ? (node.range?.[0] ?? 0) : 0;
  path.forEach((step, index) => {
    const last = index === path.length - 1;
    if (isMap(node)) {
      const pair = node.items.find(({ key }) => isScalar(key) && key.value === step);
      if (pair === undefined) {
        node = undefined;
        return;
      }
      if (isScalar(pair.key)) offset = pair.key.range?.[0] ?? offset;
      node = pair.value;
      if (last && atKey) return;
    } else {
      node = isSeq(node) && typeof step === 'number' ? node.items[step] : undefined;
    }
    // An empty value has no text to point at; its key has.
    const empty = isScalar(node) && node.source === '';
    if (isNode(node) && !empty) offset = node.range?.[0] ?? offset;
  });
  return offset;
}
