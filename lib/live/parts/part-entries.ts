import { CST, isNode, isSeq, parseDocument } from 'yaml';
import type { PartPlace } from './part-place.js';
import { withField } from './parts-text.js';

/**
 * A parts file with a copy of one part right after it. The copy has the comments that stand in the part; all else stays as written.
 *
 * @param text - the file
 * @param place - the part
 * @param name - the name of the copy, any text
 */
export function withCopy(text: string, place: PartPlace, name: string): string {
  const { start, end, between } = entryAt(text, place);
  const copied = text.slice(0, end) + between + text.slice(start, end) + text.slice(end);
  return withField(copied, [place.list, place.index + 1, 'name'], name);
}

/** A parts file without one part. A comment above the part stays: it may be about those that follow. */
export function withoutPart(text: string, place: PartPlace): string {
  const { start, end, comma } = entryAt(text, place);
  const left = text.slice(0, start) + text.slice(end);
  if (comma === undefined) return left;
  const at = comma < start ? comma : comma - (end - start);
  return left.slice(0, at) + left.slice(at + 1);
}

/** Where a part stands in the text of its file. */
interface Entry {
  readonly start: number;
  readonly end: number;
  /** What stands between a part and its copy. */
  readonly between: string;
  /** The comma that goes with the part; there is none in a list of dashes. */
  readonly comma: number | undefined;
}

function entryAt(text: string, { list, index }: PartPlace): Entry {
  const sequence = parseDocument(text, { keepSourceTokens: true }).get(list);
  const entry = isSeq(sequence) ? sequence.items[index] : undefined;
  const source = isSeq(sequence) ? sequence.srcToken : undefined;
  if (!isNode(entry) || !entry.range || !CST.isCollection(source))
    throw new TypeError(`no ${list}[${index}]`);
  const [start, end] = entry.range;
  const offsetOf = (type: CST.SourceToken['type'], at = index): number | undefined =>
    source.items[at]?.start.find((token) => token.type === type)?.offset;
  const dash = offsetOf('seq-item-ind');
  if (dash !== undefined) return wholeLines(text, dash, end);
  // Space before a part goes with it, unless it ends a comment.
  const space = offsetOf('comment') === undefined ? (/\s*$/u.exec(text.slice(0, start))?.[0].length ?? 0) : 0;
  return {
    start: start - space,
    end,
    between: ',',
    comma: offsetOf('comma') ?? offsetOf('comma', index + 1),
  };
}

/** A part with its dash, to the end of the line in which its last value ends. */
function wholeLines(text: string, dash: number, valueEnd: number): Entry {
  const newline = text.indexOf('\n', valueEnd - 1);
  return {
    start: text.lastIndexOf('\n', dash) + 1,
    end: newline < 0 ? text.length : newline + 1,
    between: newline < 0 ? '\n' : '',
    comma: undefined,
  };
}
