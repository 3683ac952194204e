import { sha256Base64 } from './digest.js';
import { html, trusted } from './html.js';
import { htmlText } from './html-text.js';
import { requirePageIds } from './page.js';
import { type BodyContent, pageBody } from './page-body.js';
import { type Provenance, pageFooter } from './page-footer.js';
import { type Program, programHtml, programPolicy } from './program.js';
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
export interface PageContent extends BodyContent {
  readonly title: string;
  readonly question: string;
  readonly fonts: readonly EmbeddedFont[];
  readonly provenance: Provenance;
  /** Makes the page live where it is given. */
  readonly program?: Program;
}

/**
 * One self-contained HTML file: it asks the network for nothing, is whole without scripts, and reads the same on
 * paper. The same content gives the same bytes.
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
  const policy = await securityPolicy(style, content.program);
  return `<!doctype html>\n${htmlText(html`<html lang="en">
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
<main>${pageBody(content)}</main>
${pageFooter(content.provenance)}
${content.program === undefined ? '' : programHtml(content.program)}</body>
</html>`)}\n`;
}

/** Nothing may be loaded; of styles and scripts only those of this page, by their hashes (W3C CSP level 3). */
async function securityPolicy(style: string, program: Program | undefined): Promise<string> {
  const scripts = program === undefined ? '' : await programPolicy(program);
  return `default-src 'none'; ${scripts}style-src 'sha256-${await sha256Base64(style)}'; font-src data:; base-uri 'none'; form-action 'none'`;
}

function fontFace({ weight, woff2 }: EmbeddedFont): string {
  return `@font-face{font-family:Inter;font-weight:${weight};src:url(data:font/woff2;base64,${woff2}) format("woff2")}\n`;
}
