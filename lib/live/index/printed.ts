import type { Html } from '../../page/html/html.js';
import type { Notebook } from '../../page/notebook.js';
import { elementNode } from '../document/element-node.js';

/** What the document came with for a page. */
export interface Printed {
  readonly answer: string;
  readonly picture?: Html;
}

/** The answers and first pictures that the document came with, by the names of the pages. */
export function printedItems(notebooks: readonly Notebook[]): ReadonlyMap<string, Printed> {
  return new Map(
    notebooks.flatMap(({ name }) => {
      const item = document.getElementById(name);
      const answer = item?.querySelector('.said')?.textContent;
      if (answer == null) return [];
      const svg = item?.querySelector('.thumbnail>svg');
      return [[name, { answer, ...(svg && { picture: { nodes: [elementNode(svg)] } }) }] as const];
    }),
  );
}
