import { fontSize, type PlacedText, type Plot } from '../chart/layout.js';
import { textWidth } from '../chart/text-width.js';

/** Room that something takes in a plot [px]. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Height of a line of text [px]. */
export const lineHeight = fontSize + 4;

export function boxAt(left: number, middle: number, width: number, height: number): Box {
  return { left, right: left + width, top: middle - height / 2, bottom: middle + height / 2 };
}

export function boxOfText({ left, top, text }: PlacedText): Box {
  return boxAt(left, top, textWidth(text, fontSize), lineHeight);
}

export function isInside(box: Box, plot: Plot): boolean {
  return box.left >= 0 && box.right <= plot.width && box.top >= 0 && box.bottom <= plot.height;
}

export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
