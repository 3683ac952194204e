/**
 * The first part of an element that a selector finds.
 *
 * @throws TypeError where there is none
 */
export function elementIn<Name extends keyof HTMLElementTagNameMap>(
  element: Element,
  selector: Name | `${Name}#${string}`,
): HTMLElementTagNameMap[Name];
export function elementIn(element: Element, selector: string): Element;
export function elementIn(element: Element, selector: string): Element {
  const part = element.querySelector(selector);
  if (part === null) throw new TypeError(`there is no ${selector}`);
  return part;
}
