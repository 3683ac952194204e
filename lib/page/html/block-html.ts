import { built, requireShape, type Shape, someText } from '../../base/shape.js';
import type { LayoutName } from '../../plot/chart/drawing.js';
import type { Figure } from '../../plot/chart/figure.js';
import type { Block } from '../blocks/block.js';
import type { CheckBlock, FigureBlock, TableBlock } from '../blocks/plain-blocks.js';
import type { RevealBlock } from '../blocks/reveal.js';
import { checklistHtml } from './checklist-html.js';
import { type Html, html, trusted } from './html.js';
import { motionHtml } from './motion-html.js';
import { prose } from './prose.js';
import { tableHtml, thinned } from './table-html.js';

/**
 * The pictures of a page: SVG text by figure id and layout, as `renderSvg` draws them.
 *
 * @public
 */
export type Pictures = ReadonlyMap<string, Readonly<Record<LayoutName, string>>>;

/** Form of {@link Pictures}. */
export const picturesShape: Shape = (value, field) => {
  requireShape(value, built('Map'), field);
  for (const [id, picture] of value as Pictures)
    requireShape(picture, { wide: someText, narrow: someText }, `${field}.${id}`);
};

const rowsShown = 25;

/** One block as nodes; figures are numbered in reading order, on from those before the block. */
export function blockHtml(block: Block, figuresBefore: number, pictures: Pictures): Html {
  switch (block.kind) {
    case 'heading':
      return html`<h2>${block.text}</h2>`;
    case 'text':
      return html`<p>${prose(block.text)}</p>`;
    case 'lines':
      return html`<pre class="lines" role="region" aria-label="Lines to copy" tabindex="0">${block.text}</pre>`;
    case 'list':
      return html`<ul>${items(block.items)}</ul>`;
    case 'figure':
      return figureHtml(block, figuresBefore + 1, pictures);
    case 'table':
      return tableBlockHtml(block);
    case 'check':
      return checkHtml(block);
    case 'caution':
      return html`<p class="caution"><strong>Caution.</strong> ${prose(block.text)}</p>`;
    case 'reveal':
      return revealHtml(block, figuresBefore, pictures);
    case 'checklist':
      return checklistHtml(block);
    case 'motion':
      return motionHtml(block);
    case 'assumptions':
      return html`<section class="assumptions"><h2>What this rests on</h2><ul>${items(block.items)}</ul></section>`;
  }
}

function revealHtml(block: RevealBlock, figuresBefore: number, pictures: Pictures): Html {
  const { id, question, choices } = block;
  let figures = figuresBefore;
  const inside = block.blocks.map((one) => {
    const numbered = blockHtml(one, figures, pictures);
    if (one.kind === 'figure') figures += 1;
    return numbered;
  });
  return html`<section class="reveal" id="${id}"><p><strong>Predict.</strong> ${prose(question)}</p>
<ol class="choices">${items(choices)}</ol>
<details><summary>Reveal</summary>
${inside}
</details></section>`;
}

function figureHtml({ figure }: FigureBlock, number: number, pictures: Pictures): Html {
  const picture = pictures.get(figure.id);
  if (picture === undefined) throw new TypeError(`figure ${figure.id} was not drawn`);
  return html`<figure id="${figure.id}">
<div class="wide">${trusted(picture.wide)}</div>
<div class="narrow">${trusted(picture.narrow)}</div>
<figcaption><strong>Figure ${number}.</strong> ${prose(figure.alt)}</figcaption>
<div class="tools">${trusted('')}</div>
<details><summary>Numbers of figure ${number}</summary>
${() => figureNumbers(figure)}
</details>
</figure>`;
}

function figureNumbers({ id, title, table }: Figure): Html {
  const shown = thinned(table, rowsShown);
  const part =
    shown.rows.length < table.rows.length
      ? `${shown.rows.length} of ${table.rows.length} rows are shown; all are in`
      : 'These rows are also in';
  return html`${tableHtml(shown, title)}<p class="file">${part} ${id}.csv beside this page.</p>`;
}

function tableBlockHtml({ id, title, table, note }: TableBlock): Html {
  const line = note === undefined ? '' : html`<p class="note">${prose(note)}</p>`;
  return html`<section id="${id}">${tableHtml(table, title)}${line}<div class="tools">${trusted('')}</div></section>`;
}

function checkHtml({ claim, passed, detail, ifFailed, consistency }: CheckBlock): Html {
  const [good, bad] =
    consistency === true ? ['Consistent.', 'Not consistent.'] : ['Check passed.', 'Check failed.'];
  const verdict = html`<strong>${passed ? `✓ ${good}` : `✗ ${bad}`}</strong>`;
  const numbers = passed ? detail : `${detail}. ${ifFailed}`;
  return html`<p class="check ${passed ? 'passed' : 'failed'}">${verdict} ${prose(claim)} <span class="detail">${prose(numbers)}</span></p>`;
}

function items(texts: readonly string[]): readonly Html[] {
  return texts.map((text) => html`<li>${prose(text)}</li>`);
}
