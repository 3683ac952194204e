import { flag, listOf, madeWith, oneOf, optional, type Shape, someText } from '../../base/shape.js';
import type { Figure } from '../../plot/chart/figure.js';
import type { Table } from '../../plot/chart/table.js';
import { tableShape } from '../../plot/chart/table.js';

/**
 * A heading between blocks.
 *
 * @public
 */
export interface HeadingBlock {
  readonly kind: 'heading';
  readonly text: string;
}

/** Form of {@link HeadingBlock}. */
export const headingBlockShape: Shape = { kind: oneOf('heading'), text: someText };

/**
 * One paragraph.
 *
 * @public
 */
export interface TextBlock {
  readonly kind: 'text';
  readonly text: string;
}

/** Form of {@link TextBlock}. */
export const textBlockShape: Shape = { kind: oneOf('text'), text: someText };

/**
 * Lines to copy into a file, shown as they stand.
 *
 * @public
 */
export interface LinesBlock {
  readonly kind: 'lines';
  readonly text: string;
}

/** Form of {@link LinesBlock}. */
export const linesBlockShape: Shape = { kind: oneOf('lines'), text: someText };

/**
 * Short items under each other.
 *
 * @public
 */
export interface ListBlock {
  readonly kind: 'list';
  readonly items: readonly string[];
}

/** Form of {@link ListBlock}. */
export const listBlockShape: Shape = { kind: oneOf('list'), items: listOf(someText) };

/**
 * A figure; its alternative text is its caption, and its table stands behind it.
 *
 * @public
 */
export interface FigureBlock {
  readonly kind: 'figure';
  readonly figure: Figure;
}

/** Form of {@link FigureBlock}. */
export const figureBlockShape: Shape = { kind: oneOf('figure'), figure: madeWith('drawings') };

/**
 * A table in full view.
 *
 * @public
 */
export interface TableBlock {
  readonly kind: 'table';
  /** File name and anchor: small letters, digits and hyphens; differs from the ids of the figures. */
  readonly id: string;
  readonly title: string;
  readonly table: Table;
  /** One sentence on how to read it. */
  readonly note?: string;
}

/** Form of {@link TableBlock}. */
export const tableBlockShape: Shape = {
  kind: oneOf('table'),
  id: someText,
  title: someText,
  table: tableShape,
  note: optional(someText),
};

/**
 * A claim that the page checks: against another method or a value from outside, or, called consistency, against itself.
 *
 * @public
 */
export interface CheckBlock {
  readonly kind: 'check';
  readonly claim: string;
  readonly passed: boolean;
  /** The numbers compared. */
  readonly detail: string;
  /** What the reader does where it fails; shown only then. */
  readonly ifFailed: string;
  /** True where the page is compared with itself alone: it is then called consistent, not checked. */
  readonly consistency?: boolean;
}

/** Form of {@link CheckBlock}. */
export const checkBlockShape: Shape = {
  kind: oneOf('check'),
  claim: someText,
  passed: flag,
  detail: someText,
  ifFailed: someText,
  consistency: optional(flag),
};

/**
 * What a reader must mind before acting on the page.
 *
 * @public
 */
export interface CautionBlock {
  readonly kind: 'caution';
  readonly text: string;
}

/** Form of {@link CautionBlock}. */
export const cautionBlockShape: Shape = { kind: oneOf('caution'), text: someText };

/**
 * What the numbers rest on.
 *
 * @public
 */
export interface AssumptionsBlock {
  readonly kind: 'assumptions';
  readonly items: readonly string[];
}

/** Form of {@link AssumptionsBlock}. */
export const assumptionsBlockShape: Shape = { kind: oneOf('assumptions'), items: listOf(someText) };
