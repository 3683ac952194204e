import { listOf, requireShape, someText } from '../../base/shape.js';

/** SHA-256 of a text (FIPS 180-4) as bytes; the same function in Node and in a browser. */
async function sha256(text: string): Promise<Uint8Array> {
  return new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)));
}

/** SHA-256 of a text in base 64, as a content security policy names it (CSP level 3, section 2.3.1). */
export async function sha256Base64(text: string): Promise<string> {
  return btoa(String.fromCharCode(...(await sha256(text))));
}

/**
 * Short fingerprint of what a page was made from, 16 hexadecimal digits of its SHA-256.
 *
 * @param partsText - the parts file as it was read
 * @param parameters - the values of the parameters in words
 *
 * @public
 */
export async function contentHash(
  partsText: string,
  parameters: readonly { readonly name: string; readonly text: string }[],
): Promise<string> {
  requireShape(
    { partsText, parameters },
    { partsText: someText, parameters: listOf({ name: someText, text: someText }) },
  );
  const sorted = parameters
    .map(({ name, text }) => [name, text] as const)
    .toSorted(([a], [b]) => (a < b ? -1 : 1));
  const bytes = await sha256(JSON.stringify([partsText, sorted]));
  return [...bytes.slice(0, 8)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
