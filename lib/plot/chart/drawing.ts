/**
 * Two fixed widths for each figure, so that text keeps its size on paper and on a phone.
 *
 * @public
 */
export type LayoutName = 'wide' | 'narrow';

/**
 * One row of a named data set: numbers are rounded and in the unit shown.
 *
 * @public
 */
export type DataRow = Readonly<Record<string, string | number | readonly number[]>>;

/**
 * A figure at one width. The specification is constant for the kind of chart; whatever changes with the data is in
 * `data`, `signals` and the sizes, so that a page can compile the specification once and only push numbers.
 *
 * @public
 */
export interface Drawing {
  /** Named data sets of the specification. */
  readonly data: Readonly<Record<string, readonly DataRow[]>>;
  /** Axis domains, by signal name. */
  readonly signals: Readonly<Record<string, number>>;
  /** Outer size and the room kept around the plot [CSS px]. */
  readonly width: number;
  readonly height: number;
  readonly padding: Padding;
}

/**
 * Room between the plot and the edge of the picture [CSS px].
 *
 * @public
 */
export interface Padding {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
