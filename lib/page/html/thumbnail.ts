import { type Html, trusted } from './html.js';

/**
 * A picture for the index: without its words, which stand beside it, and with ids of its own, since two pages may have a figure of one name.
 *
 * @param svg - of this library
 * @param name - of the page
 */
export function thumbnail(svg: string, name: string): Html {
  return trusted(
    svg
      .replace(/<title[\s\S]*?<\/desc>/u, '')
      .replace(/ role="img" aria-labelledby="[^"]*" aria-describedby="[^"]*"/u, ' aria-hidden="true"')
      .replaceAll(/( id="|url\(#)/gu, `$1${name}-`),
  );
}
