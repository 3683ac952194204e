import type { Figure } from '../../plot/chart/figure.js';
import type { Table } from '../../plot/chart/table.js';

/**
 * A heading between blocks.
 *
 * @public
 */
export interface HeadingBlock {
  readonly kind: 'heading';
  readonly text: string;
}

/**
 * One paragraph.
 *
 * @public
 */
export interface TextBlock {
  readonly kind: 'text';
  readonly text: string;
}

/**
 * Short items under each other.
 *
 * @public
 */
export interface ListBlock {
  readonly kind: 'list';
  readonly items: readonly string[];
}

/**
 * A figure; its alternative text is its caption, and its table stands behind it.
 *
 * @public
 */
export interface FigureBlock {
  readonly kind: 'figure';
  readonly figure: Figure;
}

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

/**
 * A claim that the page checks on its own numbers.
 *
 * @public
 */
export interface CheckBlock {
  readonly kind: 'check';
  readonly claim: string;
  readonly passed: boolean;
  /** The numbers compared. */
  readonly detail: string;
}

/**
 * What a reader must mind before acting on the page.
 *
 * @public
 */
export interface CautionBlock {
  readonly kind: 'caution';
  readonly text: string;
}

/**
 * What the numbers rest on.
 *
 * @public
 */
export interface AssumptionsBlock {
  readonly kind: 'assumptions';
  readonly items: readonly string[];
}
