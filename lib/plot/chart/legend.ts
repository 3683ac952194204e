import type { DataRow } from './drawing.js';
import { fontSize, type PlacedText } from './layout.js';
import type { SeriesStyle } from './series-style.js';
import { shortened, textWidth } from './text-width.js';

const rowHeight = 20;
const keyWidth = 30;
const gap = 18;

/** Entry of a legend: a name with the look of its series. */
export interface LegendEntry {
  readonly name: string;
  readonly style: SeriesStyle;
}

/** A legend under the plot: the rows of its keys, its texts, and the room it takes. */
export interface Legend {
  readonly keys: readonly DataRow[];
  readonly texts: readonly PlacedText[];
  readonly room: number;
}

/**
 * Sets the entries in rows like words in a line.
 *
 * @param entries - in the order of the series
 * @param left - left edge [px from the left edge of the plot]
 * @param top - upper edge [px from the upper edge of the plot]
 * @param width - room for a row [px]
 */
export function legend(entries: readonly LegendEntry[], left: number, top: number, width: number): Legend {
  const keys: DataRow[] = [];
  const texts: PlacedText[] = [];
  let x = 0;
  let row = 0;
  for (const { name, style } of entries) {
    const text = shortened(name, fontSize, width - keyWidth);
    const entryWidth = keyWidth + textWidth(text, fontSize);
    if (x > 0 && x + entryWidth > width) {
      x = 0;
      row += 1;
    }
    const middle = top + (row + 0.5) * rowHeight;
    keys.push({
      left: left + x,
      right: left + x + keyWidth - 6,
      centre: left + x + 12,
      top: middle,
      ...style,
    });
    texts.push({ left: left + x + keyWidth, top: middle, text });
    x += entryWidth + gap;
  }
  return { keys, texts, room: entries.length === 0 ? 0 : (row + 1) * rowHeight + 4 };
}
