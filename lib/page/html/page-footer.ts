import { listOf, type Shape, someText } from '../../base/shape.js';
import { type Html, html } from './html.js';

/**
 * Where a page comes from, without a clock, a path or a name of a machine.
 *
 * @public
 */
export interface Provenance {
  /** Version of this library. */
  readonly version: string;
  /** Fingerprint of the parts file and the parameters; see `contentHash`. */
  readonly contentHash: string;
  /** Licence texts that travel with what the page carries. */
  readonly notices: readonly Notice[];
}

/**
 * Licence text of something that the page carries.
 *
 * @public
 */
export interface Notice {
  readonly name: string;
  readonly text: string;
}

/** Form of {@link Notice}. */
export const noticeShape: Shape = { name: someText, text: someText };

/** Form of {@link Provenance}. */
export const provenanceShape: Shape = {
  version: someText,
  contentHash: someText,
  notices: listOf(noticeShape),
};

/** The foot of every page: what it is for, cautions, and where it comes from. */
export function pageFooter({ version, contentHash, notices }: Provenance): Html {
  return html`<footer>
<p><strong>For scale models only, never for a vehicle that carries people.</strong> These are calculations from the numbers in the parts file; measure before you trust them.</p>
<p>Take the load off a spring and let the shock cool before you open it, and let gas pressure out slowly. Wear eye protection, keep oil and solvent off skin and off the ground, and follow the maker's instructions, the safety data sheets and your local rules.</p>
<p>Made by dashpot ${version} from content ${contentHash} (parts file and settings).</p>
${notices.length === 0 ? '' : licences(notices)}</footer>`;
}

function licences(notices: readonly Notice[]): Html {
  const texts = notices.map(
    ({ name, text }) => html`<p><strong>${name}</strong></p><pre>${text}</pre>
`,
  );
  return html`<details><summary>Licences of what this page carries</summary>
${texts}</details>
`;
}
