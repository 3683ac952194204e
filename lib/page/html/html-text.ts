import type { Html, HtmlNode } from './html.js';
import { voidElements } from './html-template.js';

/** Nodes as markup; every text and every value of an attribute is escaped. */
export function htmlText({ nodes }: Html): string {
  return nodes.map(nodeText).join('');
}

function nodeText(node: HtmlNode): string {
  if (typeof node === 'string') return escapeText(node);
  if ('markup' in node) return node.markup;
  const { tag, attributes, children } = node;
  const named = Object.entries(attributes).map(
    ([name, value]) => ` ${name}="${escapeText(value).replaceAll('"', '&quot;')}"`,
  );
  const start = `<${tag}${named.join('')}>`;
  return voidElements.has(tag) ? start : `${start}${children.map(nodeText).join('')}</${tag}>`;
}

function escapeText(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
