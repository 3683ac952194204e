import { type Shape, someText } from '../../base/shape.js';
import { sha256Base64 } from '../blocks/digest.js';
import { styleSheet } from '../style/style.js';
import { type Html, html, trusted } from './html.js';
import { htmlText } from './html-text.js';
import { type Program, programHtml, programPolicy } from './program.js';

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

/** Form of {@link EmbeddedFont}. */
export const embeddedFontShape: Shape = { weight: '', woff2: someText };

/** A whole document: its head, what it shows, and the program that makes it live where there is one. */
export async function htmlDocument(
  title: string,
  fonts: readonly EmbeddedFont[],
  body: Html,
  program?: Program,
): Promise<string> {
  const style = fonts.map(fontFace).join('') + styleSheet;
  const policy = await securityPolicy(style, program);
  return `<!doctype html>\n${htmlText(html`<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${trusted(style)}</style>
</head>
<body>
${body}
${program === undefined ? '' : programHtml(program)}</body>
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
