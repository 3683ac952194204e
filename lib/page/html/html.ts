import { visibleText } from '../../base/visible-text.js';
import { type Piece, parsedTemplate, type TemplateNode } from './html-template.js';

/** A piece of a page as plain data. Texts are texts: whoever writes markup escapes them, whoever builds nodes need not. */
export type HtmlNode = string | HtmlElement | TrustedMarkup;

/** An element with all its texts. */
export interface HtmlElement {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly HtmlNode[];
}

/** Markup that this library wrote itself: a picture, a style sheet. A live page leaves its place alone. */
export interface TrustedMarkup {
  readonly markup: string;
}

/** Nodes that stand next to each other. */
export interface Html {
  readonly nodes: readonly HtmlNode[];
}

type Part = Html | string | number | readonly Part[] | (() => Html);

/**
 * Nodes from a template: texts put in stay texts, with control and direction signs written out, nodes and lists of nodes go in as they are. Children are made when they are first
 * asked for, and a function put in is called then: what nobody looks at is never made.
 */
export function html(fixed: TemplateStringsArray, ...parts: readonly Part[]): Html {
  return { nodes: parsedTemplate(fixed).flatMap((node) => filled(node, parts)) };
}

/** Markup taken as it is: only for text that this library wrote itself. */
export function trusted(markup: string): Html {
  return { nodes: [{ markup }] };
}

function filled(node: TemplateNode, parts: readonly Part[]): readonly HtmlNode[] {
  if (typeof node === 'string') return [node];
  if ('hole' in node) return nodesOf(parts[node.hole] ?? '');
  const attributes = node.attributes.map(([name, pieces]) => [name, attributeText(pieces, parts)] as const);
  let children: readonly HtmlNode[] | undefined;
  return [
    {
      tag: node.tag,
      attributes: Object.fromEntries(attributes),
      get children() {
        children ??= node.children.flatMap((child) => filled(child, parts));
        return children;
      },
    },
  ];
}

function attributeText(pieces: readonly Piece[], parts: readonly Part[]): string {
  return pieces
    .map((piece) => (typeof piece === 'string' ? piece : visibleText(String(parts[piece.hole]))))
    .join('');
}

function nodesOf(part: Part): readonly HtmlNode[] {
  if (typeof part === 'number') return [String(part)];
  if (typeof part === 'string') return part === '' ? [] : [visibleText(part)];
  if (typeof part === 'function') return part().nodes;
  return 'nodes' in part ? part.nodes : part.flatMap(nodesOf);
}
