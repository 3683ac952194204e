import type { Html, HtmlElement, HtmlNode } from '../../page/html/html.js';

/** Elements of nodes; texts become text nodes and can be nothing else. */
export function domNodes({ nodes }: Html, parent?: Element): readonly Node[] {
  return joinedTexts(nodes).map((node) =>
    typeof node === 'string' ? document.createTextNode(node) : createElement(node, parent),
  );
}

/** Namespace of pictures (SVG 2, section 5.1). */
const svgNamespace = 'http://www.w3.org/2000/svg';

/**
 * Brings the children of an element in line with nodes and touches nothing that is as it should be: focus, open disclosures
 * and what a reader typed stay. Elements with an id keep their identity; a place of trusted markup belongs to others.
 */
export function patchChildren(parent: Element, nodes: readonly HtmlNode[]): void {
  if (nodes.some((node) => typeof node !== 'string' && 'markup' in node)) return;
  const named = nodes.some(hasId) ? childrenById(parent) : noChildren;
  let current: ChildNode | null = parent.firstChild;
  for (const node of joinedTexts(nodes)) {
    const kept = keptChild(node, current, named);
    if (kept === undefined) {
      parent.insertBefore(
        typeof node === 'string' ? document.createTextNode(node) : createElement(node, parent),
        current,
      );
      continue;
    }
    if (kept === current) current = current.nextSibling;
    else parent.insertBefore(kept, current);
    if (typeof node === 'string') setText(kept, node);
    else if (kept instanceof Element && 'tag' in node) patchElement(kept, node);
  }
  while (current !== null) {
    const next: ChildNode | null = current.nextSibling;
    current.remove();
    current = next;
  }
}

const noChildren: ReadonlyMap<string, Element> = new Map();

function hasId(node: HtmlNode): boolean {
  return typeof node !== 'string' && 'tag' in node && node.attributes['id'] !== undefined;
}

function childrenById(parent: Element): ReadonlyMap<string, Element> {
  return new Map([...parent.children].filter(({ id }) => id !== '').map((child) => [child.id, child]));
}

/** The contents of closed disclosures are brought in line when they are opened. */
const closed = new WeakMap<Element, HtmlElement>();

/** Listens for disclosures that are opened; called once. */
export function patchWhenOpened(root: Element): void {
  root.addEventListener(
    'toggle',
    ({ target }) => {
      const node = target instanceof Element ? closed.get(target) : undefined;
      if (node === undefined || !(target instanceof Element)) return;
      closed.delete(target);
      patchChildren(target, node.children);
    },
    { capture: true },
  );
}

function patchElement(element: Element, node: HtmlElement): void {
  const { tag, attributes } = node;
  patchAttributes(element, attributes);
  if (tag === 'details' && !element.hasAttribute('open')) closed.set(element, node);
  else patchChildren(element, node.children);
}

/** What elements were given last; asking the document for it takes longer than all the rest. */
const lastAttributes = new WeakMap<Element, HtmlElement['attributes']>();

function patchAttributes(element: Element, attributes: HtmlElement['attributes']): void {
  const before = lastAttributes.get(element);
  if (before !== undefined && sameAttributes(before, attributes)) return;
  lastAttributes.set(element, attributes);
  for (const [name, value] of Object.entries(attributes))
    if (element.getAttribute(name) !== value) element.setAttribute(name, value);
  for (const name of element.getAttributeNames())
    if (!(name in attributes) && name !== 'open') element.removeAttribute(name);
}

function sameAttributes(one: HtmlElement['attributes'], other: HtmlElement['attributes']): boolean {
  const names = Object.keys(one);
  return names.length === Object.keys(other).length && names.every((name) => one[name] === other[name]);
}

function keptChild(
  node: HtmlNode,
  current: ChildNode | null,
  named: ReadonlyMap<string, Element>,
): ChildNode | undefined {
  if (typeof node === 'string') return current instanceof Text ? current : undefined;
  if ('markup' in node) return undefined;
  const id = node.attributes['id'];
  const kept = id === undefined ? current : named.get(id);
  if (!(kept instanceof Element) || kept.localName !== node.tag) return undefined;
  return id === undefined && kept.id !== '' ? undefined : kept;
}

function setText(node: ChildNode, text: string): void {
  if (node.nodeValue !== text) node.nodeValue = text;
}

function createElement(node: Exclude<HtmlNode, string>, parent?: Element): Element {
  if ('markup' in node) throw new TypeError('markup has no place in a live page');
  const isPicture = node.tag === 'svg' || parent?.namespaceURI === svgNamespace;
  const element = isPicture
    ? document.createElementNS(svgNamespace, node.tag)
    : document.createElement(node.tag);
  for (const [name, value] of Object.entries(node.attributes)) element.setAttribute(name, value);
  // Markup in an element: its place is left empty, for whoever fills it.
  if (node.children.every((child) => typeof child === 'string' || !('markup' in child)))
    element.append(...domNodes({ nodes: node.children }, element));
  return element;
}

/** Texts next to each other are one text node in a document that was read. */
function joinedTexts(nodes: readonly HtmlNode[]): readonly HtmlNode[] {
  const joined: HtmlNode[] = [];
  for (const node of nodes) {
    const last = joined.at(-1);
    if (typeof node === 'string' && typeof last === 'string') joined[joined.length - 1] = last + node;
    else joined.push(node);
  }
  return joined;
}
