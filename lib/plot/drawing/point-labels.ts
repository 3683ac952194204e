import { fontSize, type PlacedText, type Plot } from '../chart/layout.js';
import { inkColours } from '../chart/palette.js';
import { shortened, textWidth } from '../chart/text-width.js';
import { boxAt, boxOfText, isInside, lineHeight, overlap } from './text-box.js';

/** A label with the place of its point in the plot [px]. */
export interface LabelledPoint {
  readonly label: string;
  readonly left: number;
  readonly top: number;
}

const ring = 6;
/** Room between labels in a row, so that two do not read as one. */
const apart = 6;

/**
 * Labels beside their points: each takes the first free place of above (right, left, about the middle), below, and rows
 * further off, where it meets no other label and no point and stays in the plot. An empty label takes no place.
 */
export function pointLabels(
  points: readonly LabelledPoint[],
  taken: readonly PlacedText[],
  plot: Plot,
): readonly PlacedText[] {
  const rings = points.map(({ left, top }) => boxAt(left - ring, top, 2 * ring, 2 * ring));
  const boxes = [...rings, ...taken.map(boxOfText)];
  return points.flatMap(({ label, left, top }) => {
    if (label === '') return [];
    const text = shortened(label, fontSize, plot.width - 2 * ring);
    const width = textWidth(text, fontSize);
    const columns = [left + ring + 1, left - ring - 1 - width, clamped(left - width / 2, plot.width - width)];
    const places = [1, 2, 3, 4, 5, 6, 7, 8].flatMap((rows) =>
      [-rows, rows].flatMap((row) =>
        columns.map((at) => boxAt(at, top + row * (lineHeight - 3), width, lineHeight)),
      ),
    );
    const inside = places.filter((box) => isInside(box, plot));
    const place =
      inside.find((box) => boxes.every((other) => !overlap(box, other))) ?? inside[0] ?? places[0];
    if (place === undefined) return [{ left, top, text }];
    boxes.push({ ...place, left: place.left - apart, right: place.right + apart });
    return [{ left: place.left, top: (place.top + place.bottom) / 2, text, colour: inkColours.muted }];
  });
}

function clamped(value: number, high: number): number {
  return Math.max(0, Math.min(value, high));
}
