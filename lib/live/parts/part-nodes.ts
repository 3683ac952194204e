import { type HtmlNode, html } from '../../page/html/html.js';
import type { PartsFile } from '../../parts/parts-file.js';
import { domNodes } from '../document/patch.js';
import { placeText } from './part-place.js';
import type { PartField } from './parts-text.js';

const lists = [
  ['oils', 'Oil'],
  ['pistons', 'Piston'],
] as const;

/** The parts of a file that can be changed, to choose one of. */
export function optionNodes({ parts }: PartsFile): readonly Node[] {
  // What a build came out with as it was measured stands in no list of the file.
  const made = new Set<unknown>(
    parts.builds.flatMap(({ measured, oil, piston }) => (measured === undefined ? [] : [oil, piston])),
  );
  return lists.flatMap(([list, word]) =>
    parts[list].flatMap((part, index) =>
      made.has(part)
        ? []
        : domNodes(html`<option value="${placeText({ list, index })}">${word} ${part.name}</option>`),
    ),
  );
}

/** The field for one value of a part. */
export function fieldNodes({ path, text }: PartField): readonly HtmlNode[] {
  const id = `part-${path.join('-')}`;
  const steps = path
    .slice(2)
    .map((step) => (typeof step === 'number' ? step + 1 : step.replaceAll('-', ' ')));
  return html`<div class="control text" id="${id}-control"><label for="${id}">${steps.join(' ')}</label><input type="text" id="${id}" value="${text}" data-path="${JSON.stringify(path)}" autocomplete="off" spellcheck="false"></div>`
    .nodes;
}

/** The path of the value that a field holds. */
export function pathOf({ dataset }: HTMLInputElement): PartField['path'] {
  return JSON.parse(dataset['path'] ?? '[]');
}
