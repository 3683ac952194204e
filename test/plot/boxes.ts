import { textWidth } from '../../lib/plot/chart/text-width.js';

/** A rectangle of a picture [px from the upper left corner of the plot]. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

interface Placed {
  readonly left: number;
  readonly top: number;
  readonly text: string;
}

/** What a text covers that begins at its place, is set in 12 px and stands about the height of its place. */
export function boxOf({ left, top, text }: Placed): Box {
  return { left, right: left + textWidth(text, 12), top: top - 6, bottom: top + 6 };
}

/** Whether two rectangles share any of the paper. */
export function meets(a: Box, b: Box): boolean {
  return (
    Math.min(a.right, b.right) > Math.max(a.left, b.left) &&
    Math.min(a.bottom, b.bottom) > Math.max(a.top, b.top)
  );
}

/** All pairs of some things. */
export function pairsOf<Thing>(things: readonly Thing[]): readonly (readonly [Thing, Thing])[] {
  return things.flatMap((one, place) => things.slice(place + 1).map((other) => [one, other] as const));
}
