import { blocksOf, figuresIn, type Page } from '../blocks/page.js';
import type { ParameterText } from '../parameters/parameter-text.js';
import { blockHtml, type Pictures } from './block-html.js';
import { type Html, html, trusted } from './html.js';
import { prose } from './prose.js';

/**
 * What the middle of a page shows; all of it may change with a setting.
 *
 * @public
 */
export interface BodyContent {
  readonly page: Page;
  /** What the parts file says of itself. */
  readonly about: string;
  readonly parameters: readonly ParameterText[];
  readonly pictures: Pictures;
}

/** The middle of a page: the answer, the place of the controls, the settings in words, the blocks and the sources. */
export function pageBody(content: BodyContent): Html {
  return html`
<p class="answer">${prose(content.page.answer)}</p>
${failedChecks(content.page)}<div class="controls" id="controls">${trusted('')}</div>
${settings(content)}
${blocks(content)}
${sources(content.page)}
`;
}

function settings({ about, parameters }: BodyContent): Html {
  return html`<dl class="settings">
<dt>Parts</dt><dd>${prose(about)}</dd>
${parameters.map(
  ({ label, text }) => html`<dt>${label}</dt><dd>${prose(text)}</dd>
`,
)}</dl>`;
}

function failedChecks(page: Page): Html {
  const checks = blocksOf(page).filter((block) => block.kind === 'check');
  const failed = checks.filter(({ passed }) => !passed).length;
  if (failed === 0) return html``;
  return html`<p class="check failed"><strong>✗ ${failed} of ${checks.length} checks failed.</strong> Do not rely on this page before you know why; see below.</p>
`;
}

function blocks({ page, pictures }: BodyContent): readonly Html[] {
  let figures = 0;
  return page.blocks.map((block) => {
    const before = figures;
    figures += figuresIn({ blocks: [block] }).length;
    return html`${blockHtml(block, before, pictures)}
`;
  });
}

function sources({ sources }: Page): Html {
  if (sources.length === 0) return html``;
  return html`<section><h2>Sources</h2><ul>${sources.map((source) => html`<li>${source}</li>`)}</ul></section>`;
}
