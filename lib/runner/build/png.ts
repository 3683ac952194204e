import { Resvg } from '@resvg/resvg-js';
import { fontFiles } from './fonts.js';

/** A picture as PNG on white at twice its size, with the shipped font only: fonts of a machine would change the bytes. */
export function svgToPng(svg: string): Buffer {
  const picture = new Resvg(svg, {
    background: '#ffffff',
    fitTo: { mode: 'zoom', value: 2 },
    font: { loadSystemFonts: false, fontFiles: Object.values(fontFiles), defaultFontFamily: 'Inter' },
  });
  return picture.render().asPng();
}
