import { Resvg } from '@resvg/resvg-js';

/**
 * Makes PNG of pictures, on white at twice their size, with the given fonts only: fonts of a machine would change the bytes.
 *
 * @param fontFiles - paths of the shipped font
 */
export function pngMaker(fontFiles: readonly string[]): (svg: string) => Buffer {
  return (svg) =>
    new Resvg(svg, {
      background: '#ffffff',
      fitTo: { mode: 'zoom', value: 2 },
      font: { loadSystemFonts: false, fontFiles: [...fontFiles], defaultFontFamily: 'Inter' },
    })
      .render()
      .asPng();
}
