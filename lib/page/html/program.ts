import { anything, listOf, type Shape, someText } from '../../base/shape.js';
import { sha256Base64 } from '../blocks/digest.js';
import { type Html, html, trusted } from './html.js';
import { unpack } from './packed-text.js';

/**
 * The program that makes a page live, and what it starts from.
 *
 * @public
 */
export interface Program {
  /** Script text; it finds the start with the id `start`. */
  readonly script: string;
  /** The script in pieces, each as raw DEFLATE (RFC 1951) in the characters of `packedText`, the form in which a page carries it. */
  readonly packed: readonly string[];
  /** Plain data for the script. */
  readonly start: unknown;
}

/** Form of {@link Program}. */
export const programShape: Shape = { script: someText, packed: listOf(someText), start: anything };

/**
 * Unpacks the program and runs it. The policy of the page admits this text and the program by their hashes and no other; where a
 * browser guards scripts with trusted types, only the one rule made here can make one, and it is made once. Until the program takes over, a line says that the
 * page shows what it came with; it goes where the program cannot begin.
 */
const loader = `
const unpack = ${unpack};
const { classList } = document.documentElement;
classList.add('starting');
addEventListener('error', () => classList.remove('starting'));
const texts = [...document.querySelectorAll('.program')].map((piece) => {
  return new Response(new Blob([unpack(piece.textContent)]).stream().pipeThrough(new DecompressionStream('deflate-raw'))).text();
});
const rule = globalThis.trustedTypes?.createPolicy('program', { createScript: (text) => text });
Promise.all(texts).then((all) => {
  const text = all.join('');
  const script = document.createElement('script');
  script.textContent = rule === undefined ? text : rule.createScript(text);
  document.body.append(script);
});
`;

/** The part of the content security policy that lets a program run, and nothing else. */
export async function programPolicy({ script }: Program): Promise<string> {
  const hashes = await Promise.all([loader, script].map(sha256Base64));
  const named = hashes.map((hash) => `'sha256-${hash}'`).join(' ');
  return `script-src ${named}; img-src blob:; require-trusted-types-for 'script'; trusted-types program; `;
}

/** The elements of a program, at the end of the body. */
export function programHtml({ packed, start }: Program): Html {
  // Nothing but this sign can end or open an element inside a script; in JSON it may be written as an escape.
  const data = JSON.stringify(start).replaceAll('<', '\\u003c');
  return html`<p class="not-yet" role="status">The page is getting ready; until then it shows what it came with.</p>
<script type="application/json" id="start">${trusted(data)}</script>
${packed.map(
  (piece) => html`<script type="text/plain" class="program">${trusted(piece)}</script>
`,
)}<script>${trusted(loader)}</script>
`;
}
