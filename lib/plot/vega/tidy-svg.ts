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
  return sharedInk(joinedLines(neededClips(flatGroups(tidy))));
}

function rounded(digits: string): string {
  const value = Math.round(Number(digits) * 100) / 100;
  return Object.is(value, -0) ? '0' : String(value);
}

/** Without the groups that say nothing of what is in them. */
function flatGroups(svg: string): string {
  const says: boolean[] = [];
  return svg.replaceAll(/<g\b[^>]*>|<\/g>/gu, (tag) => {
    if (tag !== '</g>') says.push(tag !== '<g>');
    const kept = tag === '</g>' ? says.pop() : says.at(-1);
    return kept === true ? tag : '';
  });
}

/** With only the clips that something is clipped by, each shape once. */
function neededClips(svg: string): string {
  const first = new Map<string, string>();
  const same = new Map<string, string>();
  const fewer = svg.replaceAll(
    /<clipPath id="([^"]*)">(.*?)<\/clipPath>/gu,
    (clip, id: string, shape: string) => {
      if (!svg.includes(`url(#${id})`)) return '';
      const known = first.get(shape);
      same.set(id, known ?? id);
      if (known === undefined) first.set(shape, id);
      return known === undefined ? clip : '';
    },
  );
  return fewer.replaceAll(/url\(#([^)]*)\)/gu, (_use, id: string) => `url(#${same.get(id) ?? id})`);
}

/** With what neighbouring texts have in common said once for all of them. */
function sharedInk(svg: string): string {
  const same =
    /(?:<text(?<ink>(?: text-anchor="[^"]*")?) transform="[^"]*" fill="(?<fill>[^"]*)">[^<]*<\/text>)(?:<text\k<ink> transform="[^"]*" fill="\k<fill>">[^<]*<\/text>)+/gu;
  return svg.replaceAll(same, (texts: string, ink: string, fill: string) => {
    const own = texts.replaceAll(`<text${ink} `, '<text ').replaceAll(` fill="${fill}">`, '>');
    return `<g${ink} fill="${fill}">${own}</g>`;
  });
}
