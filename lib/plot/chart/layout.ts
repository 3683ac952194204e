import type { DataRow, LayoutName } from './drawing.js';
import { inkColours } from './palette.js';
import { textWidth, wrapped } from './text-width.js';

/** Sizes shared by all charts [CSS px]. */
export const sizes = {
  wide: { width: 680, plotHeight: 300, ticks: 6 },
  narrow: { width: 340, plotHeight: 250, ticks: 5 },
} as const satisfies Record<LayoutName, { width: number; plotHeight: number; ticks: number }>;

export const fontSize = 12;
const titleSize = 14;
const titleLine = 20;

/** A text at a place of the plot [px from its upper left corner]. */
export interface PlacedText {
  readonly left: number;
  readonly top: number;
  readonly text: string;
  readonly align?: 'left' | 'center' | 'right';
  readonly colour?: string;
  readonly bold?: boolean;
}

/** Row of the data set `texts` for a placed text. */
export function textRow({ left, top, text, align, colour, bold }: PlacedText): DataRow {
  return {
    left,
    top,
    text,
    align: align ?? 'left',
    colour: colour ?? inkColours.ink,
    weight: bold === true ? 600 : 400,
    size: bold === true ? titleSize : fontSize,
  };
}

/** The lines of a title over the plot, and the room they take with the label of the vertical axis beneath. */
export function titleTexts(
  title: string,
  verticalLabel: string,
  paddingLeft: number,
  layout: LayoutName,
): { readonly texts: readonly PlacedText[]; readonly room: number } {
  const lines = wrapped(title, titleSize, sizes[layout].width - 8);
  const labelRoom = verticalLabel === '' ? 10 : 28;
  const room = lines.length * titleLine + labelRoom;
  const texts: PlacedText[] = lines.map((text, index) => ({
    left: -paddingLeft + 2,
    top: index * titleLine + 12 - room,
    text,
    bold: true,
  }));
  if (verticalLabel !== '')
    texts.push({ left: -paddingLeft + 2, top: -14, text: verticalLabel, colour: inkColours.muted });
  return { texts, room };
}

/** Size of the plot itself [px]. */
export interface Plot {
  readonly width: number;
  readonly height: number;
}

/** The label of the horizontal axis, under the middle of it. */
export function horizontalLabel(label: string, plot: Plot): PlacedText {
  const left = (plot.width - textWidth(label, fontSize)) / 2;
  return { left: Math.max(0, left), top: plot.height + 36, text: label, colour: inkColours.muted };
}
