import { runInNewContext } from 'node:vm';
import { inflateRawSync } from 'node:zlib';
import { unpack } from '../../lib/page/html/packed-text.js';

/** The pieces of the program that a page carries, unpacked as the page does it. */
export function programPieces(page: string): readonly string[] {
  return [...page.matchAll(/<script type="text\/plain" class="program">([^<]*)</gu)].map(
    ([, packed = '']) => {
      const bytes = runInNewContext(`(${unpack})(${JSON.stringify(packed)})`) as Uint8Array;
      return inflateRawSync(Uint8Array.from(bytes)).toString();
    },
  );
}

/** The whole program. */
export function programOf(page: string): string {
  return programPieces(page).join('');
}
