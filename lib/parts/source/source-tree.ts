import { Composer, CST, type Document, Lexer, LineCounter, Parser } from 'yaml';
import type { PartsFileProblem } from './parts-file-error.js';

/** A parts file as text turned into a tree that still knows its lines, comments and order. */
export interface SourceTree {
  readonly lines: LineCounter;
  /** The YAML documents of the text; a parts file is one. */
  readonly documents: readonly Document.Parsed[];
  /** Parts of YAML that a parts file does not use; where there are some, no document was made. */
  readonly refused: readonly PartsFileProblem[];
}

/** More than the format needs. yaml makes its tree by recursion, so that depth is limited before that. */
const deepestNesting = 24;

/** Where a list is far too long or the text is no YAML at all, reading it to the end only takes time. */
const longestCollection = 2000;
const longestRun = 10_000;
const mostFaults = 20;

const refusedTokens: Readonly<Partial<Record<CST.TokenType, string>>> = {
  alias: 'aliases (*) are not accepted; write the value out',
  anchor: 'anchors (&) are not accepted; write the value out where it is needed',
  tag: 'tags (!) are not accepted; put a text that starts with "!" in quotes',
  'directive-line': 'directives (%) are not accepted; leave the line out',
};

/** Splits a text into YAML documents without judging what they hold. */
export function sourceTree(text: string): SourceTree {
  const lines = new LineCounter();
  lines.addNewLine(0);
  const parser = new Parser(lines.addNewLine);
  const tokens: CST.Token[] = [];
  const refused: PartsFileProblem[] = [];
  const refuse = (offset: number, message: string): void => {
    refused.push(problemAt(lines, offset, '', message));
  };
  let previous = '';
  let faults = 0;
  for (const lexeme of new Lexer().lex(text)) {
    // What follows the scalar mark is the text of a value, whatever it looks like.
    const type = previous === CST.SCALAR ? null : CST.tokenType(lexeme);
    const words = type === null ? undefined : refusedTokens[type];
    if (words !== undefined) refuse(parser.offset, words);
    previous = lexeme;
    for (const token of parser.next(lexeme)) {
      tokens.push(token);
      // A second document is a fault too, and every further one.
      if (token.type === 'error' || token.type === 'document') faults += 1;
    }
    const overflow = overflowFault(parser);
    if (overflow !== undefined) refuse(overflow.offset, overflow.message);
    if (overflow !== undefined || refused.length + faults >= mostFaults) break;
  }
  if (refused.length > 0) return { lines, documents: [], refused };
  tokens.push(...parser.end());
  // uniqueKeys compares every key with every other; source-faults.ts does it in one pass.
  const composer = new Composer({ version: '1.2', uniqueKeys: false, logLevel: 'silent' });
  return { lines, documents: [...composer.compose(tokens, true, text.length)], refused };
}

function overflowFault(parser: Parser): { readonly offset: number; readonly message: string } | undefined {
  if (parser.stack.length > deepestNesting)
    return { offset: parser.offset, message: 'lists and groups are nested too deeply for a parts file' };
  const top = parser.stack.at(-1);
  if (top === undefined) return undefined;
  if ('items' in top && top.items.length > longestCollection)
    return {
      offset: top.offset,
      message: 'this list or group is far too long; a list may have 1000 entries',
    };
  if (longestSideRun(top) > longestRun)
    return {
      offset: top.offset,
      message: 'not readable as YAML: thousands of signs or comments without a value',
    };
  return undefined;
}

/** The most signs, spaces and comments beside one value of a token. */
function longestSideRun(token: CST.Token): number {
  const end = 'end' in token ? (token.end?.length ?? 0) : 0;
  const last = 'items' in token ? token.items.at(-1) : undefined;
  return Math.max(end, last?.start.length ?? 0, last?.sep?.length ?? 0);
}

/** Puts line and column to a place in the text. */
export function problemAt(
  lines: LineCounter,
  offset: number,
  path: string,
  message: string,
): PartsFileProblem {
  const { line, col } = lines.linePos(offset);
  return { line: Math.max(line, 1), column: Math.max(col, 1), path, message };
}
