import { listOf, oneOf, optional, type Shape, someText } from '../../base/shape.js';
/**
 * A place to write down what was measured.
 *
 * @public
 */
export interface WriteIn {
  /** What is written there. */
  readonly label: string;
  /** Unit behind the line; empty for a word or a count. */
  readonly unit: string;
}

/** Form of {@link WriteIn}. */
export const writeInShape: Shape = { label: someText, unit: someText };

/**
 * One step of a checklist.
 *
 * @public
 */
export interface ChecklistStep {
  /** What is done, in a few words. */
  readonly title: string;
  /** How it is done. */
  readonly text: string;
  /** The number needed at this step, where there is one. */
  readonly aim?: string;
  /** The fault that the step prevents. */
  readonly prevents: string;
  readonly writeIns: readonly WriteIn[];
}

/** Form of {@link ChecklistStep}. */
export const checklistStepShape: Shape = {
  title: someText,
  text: someText,
  aim: optional(someText),
  prevents: someText,
  writeIns: listOf(writeInShape),
};

/**
 * Steps to tick off in order, with room to write. On paper it begins a sheet of its own.
 *
 * @public
 */
export interface ChecklistBlock {
  readonly kind: 'checklist';
  /** Anchor: small letters, digits and hyphens; differs from the ids of figures and tables. */
  readonly id: string;
  readonly title: string;
  /** What the sheet is about, in a line or two. */
  readonly about: string;
  /** Places to write at the head of the sheet. */
  readonly writeIns: readonly WriteIn[];
  readonly steps: readonly ChecklistStep[];
}

/** Form of {@link ChecklistBlock}. */
export const checklistBlockShape: Shape = {
  kind: oneOf('checklist'),
  id: someText,
  title: someText,
  about: someText,
  writeIns: listOf(writeInShape),
  steps: listOf(checklistStepShape),
};
