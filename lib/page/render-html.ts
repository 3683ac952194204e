import { blockHtml, type Pictures } from './block-html.js';
import { sha256Base64 } from './digest.js';
import { type Html, html, trusted } from './html.js';
import { type Page, requirePageIds } from './page.js';
import { type Provenance, pageFooter } from './page-footer.js';
import type { ParameterText } from './parameter-text.js';
import { prose } from './prose.js';
import { styleSheet } from './style.js';

/**
 * A font put into the page.
 *
 * @public
 */
export interface EmbeddedFont {
  readonly weight: 400 | 600;
  /** The font as WOFF2 in base 64. */
  readonly woff2: string;
}

/**
 * All that a page is made of.
 *
 * @public
 */
export interface PageContent {
  readonly title: string;
  readonly question: string;
  readonly page: Page;
  /** What the parts file says of itself. */
  readonly about: string;
  readonly parameters: readonly ParameterText[];
  readonly pictures: Pictures;
  readonly fonts: readonly EmbeddedFont[];
  readonly provenance: Provenance;
}

/**
 * One self-contained HTML file: it asks the network for nothing, runs no script, and reads the same on paper. The
 * same content gives the same bytes.
 *
 * @param content - the page with its pictures, fonts and provenance
 * @returns HTML text
 * @throws InputError for an id that is no file name or that two blocks have; TypeError where a figure has no picture
 *
 * @public
 */
export async function renderHtml(content: PageContent): Promise<string> {
  requirePageIds(content.page);
  const style = content.fonts.map(fontFace).join('') + styleSheet;
  const policy = await securityPolicy(style);
  return `${
    html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${content.title}</title>
<style>${trusted(style)}</style>
</head>
<body>
<header>
<h1>${content.title}</h1>
<p class="question">${prose(content.question)}</p>
</header>
<main>
<p class="answer">${prose(content.page.answer)}</p>
${failedChecks(content.page)}${settings(content)}
${blocks(content)}
${sources(content.page)}
</main>
${pageFooter(content.provenance)}
</body>
</html>`.markup
  }\n`;
}

/** Nothing may be loaded or run; of styles only the one of this page, by its hash (W3C CSP level 3). */
async function securityPolicy(style: string): Promise<string> {
  return `default-src 'none'; style-src 'sha256-${await sha256Base64(style)}'; font-src data:; base-uri 'none'; form-action 'none'`;
}

function fontFace({ weight, woff2 }: EmbeddedFont): string {
  return `@font-face{font-family:Inter;font-weight:${weight};src:url(data:font/woff2;base64,${woff2}) format("woff2")}\n`;
}

function settings({ about, parameters }: PageContent): Html {
  return html`<dl class="settings">
<dt>Parts</dt><dd>${prose(about)}</dd>
${parameters.map(
  ({ label, text }) => html`<dt>${label}</dt><dd>${prose(text)}</dd>
`,
)}</dl>`;
}

function failedChecks({ blocks }: Page): Html {
  const checks = blocks.filter((block) => block.kind === 'check');
  const failed = checks.filter(({ passed }) => !passed).length;
  if (failed === 0) return html``;
  return html`<p class="check failed"><strong>✗ ${failed} of ${checks.length} checks failed.</strong> Do not rely on this page before you know why; see below.</p>
`;
}

function blocks({ page, pictures }: PageContent): readonly Html[] {
  let figures = 0;
  return page.blocks.map((block) => {
    if (block.kind === 'figure') figures += 1;
    return html`${blockHtml(block, figures, pictures)}
`;
  });
}

function sources({ sources }: Page): Html {
  if (sources.length === 0) return html``;
  return html`<section><h2>Sources</h2><ul>${sources.map((source) => html`<li>${source}</li>`)}</ul></section>`;
}
