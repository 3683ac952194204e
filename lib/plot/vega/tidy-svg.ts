import { fontFamily } from './chart-config.js';
import { joinedLines } from './joined-lines.js';

const family = `font-family="${fontFamily}"`;

/**
 * Takes out of Vega's SVG what no reader sees, rounds coordinates to 0.01 px (the last bits of a coordinate
 * differ between processors), says the font once and makes its ids unique to the picture.
 */
export function tidySvg(svg: string, name: string): string {
  const tidy = svg
    .replaceAll(/<path class="foreground"[^>]*\/>/gu, '')
    .replaceAll(/<path class="background"[^>]*\/>/gu, '')
    .replaceAll(/ (?:class|role|aria-[a-z]+|pointer-events)="[^"]*"/gu, '')
    .replaceAll(/ (?:opacity="1"|stroke-dasharray=""|xmlns:xlink="[^"]*"|version="1\.1")/gu, '')
    .replaceAll(` ${family}`, '')
    .replaceAll(/ (?:font-size="12px"|font-weight="400"|text-anchor="start")/gu, '')
    .replace('<svg', `<svg ${family} font-size="12px"`)
    .replaceAll(
      / (d|transform|x|y|x2|y2|width|height)="([^"]*)"/gu,
      (_whole, attribute: string, value: string) => {
        return ` ${attribute}="${value.replaceAll(/-?\d+\.\d+(?:e-?\d+)?/gu, (digits) => rounded(digits))}"`;
      },
    )
    .replaceAll(/(id="|url\(#)clip/gu, `$1${name}-clip`)
    .replaceAll(/ (?:[xy]2="0"|transform="translate\(0,0\)"|stroke-width="1")/gu, '')
    .replaceAll(/<g(?: clip-path="[^"]*")?(?:\/>|><\/g>)/gu, '');
  return joinedLines(tidy);
}

function rounded(digits: string): string {
  const value = Math.round(Number(digits) * 100) / 100;
  return Object.is(value, -0) ? '0' : String(value);
}
