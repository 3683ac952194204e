import type { HtmlElement } from '../../page/html/html.js';

/** An element of the document as plain nodes, so that it can be shown again. */
export function elementNode(element: Element): HtmlElement {
  return {
    tag: element.localName,
    attributes: Object.fromEntries(
      element.getAttributeNames().map((name) => [name, element.getAttribute(name) ?? '']),
    ),
    children: [...element.childNodes].map((child) =>
      child instanceof Element ? elementNode(child) : (child.nodeValue ?? ''),
    ),
  };
}
