import { html } from '../../page/html/html.js';
import { copyText, saveFile } from '../document/leave.js';
import { domNodes } from '../document/patch.js';
import { pngOf, standaloneSvg } from './picture-files.js';

/** What the buttons under a figure or a table need when they are pressed. */
export interface ToolSource {
  /** Comma-separated values of all its numbers. */
  readonly csv: () => string;
  /** The picture, drawn; none for a table. */
  readonly svg?: () => Promise<SVGElement>;
  /** Says what was done. */
  readonly say: (text: string) => void;
}

/** Puts buttons into their place: copy the numbers, save the picture. */
export function figureTools(place: Element, id: string, { csv, svg, say }: ToolSource): void {
  const name = id.replaceAll('-', ' ');
  const add = (label: string, work: () => Promise<void>): void => {
    const nodes = domNodes(html`<button type="button" aria-label="${label}, ${name}">${label}</button>`);
    for (const node of nodes) node.addEventListener('click', () => void work());
    place.append(...nodes);
  };
  add('Copy numbers', async () => {
    const copied = await copyText(csv());
    if (!copied) saveFile(`${id}.csv`, new Blob([csv()], { type: 'text/csv' }));
    say(copied ? `The numbers of ${name} are copied.` : `The numbers are saved as ${id}.csv.`);
  });
  if (svg === undefined) return;
  const drawn = async (): Promise<string> => standaloneSvg(await svg());
  add('Save SVG', async () => saveFile(`${id}.svg`, new Blob([await drawn()], { type: 'image/svg+xml' })));
  add('Save PNG', async () => saveFile(`${id}.png`, await pngOf(await drawn())));
}
