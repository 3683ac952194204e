import { call, oneOf, optional, record, requireShape, someText } from '../base/shape.js';
import type { CourseKey } from '../parts/course-entry.js';
import type { Parts } from '../parts/parts.js';
import type { Page } from './blocks/page.js';
import type { Parameters, ParameterValues } from './parameters/parameters.js';

/**
 * A question, its parameters, and the pure function that answers it. Nothing of Node may be reachable from it:
 * the same function runs in the page.
 *
 * @public
 */
export interface Notebook<P extends Parameters = Parameters> {
  /** Name on the command line and of the file, `notebooks/<name>.ts`. */
  readonly name: string;
  /** Place among the notebooks; lower comes first. */
  readonly order: number;
  readonly title: string;
  /** The question as a racer would ask it. */
  readonly question: string;
  readonly parameters: P;
  /** Key of the parts file under which a recording that a reader opens on the page goes, where the page takes one. */
  readonly takes?: CourseKey;
  /**
   * Answers the question.
   *
   * @param parts - the parts file, in SI
   * @param values - the values of the parameters, in SI
   * @returns the page as plain data; the same input gives the same page
   */
  run(parts: Parts, values: ParameterValues<P>): Page;
}

/**
 * Declares a notebook, so that the values that `run` gets have the types of its own parameters.
 *
 * @public
 */
export function defineNotebook<const P extends Parameters>(notebook: Notebook<P>): Notebook<P> {
  requireShape(
    { notebook },
    {
      notebook: {
        parameters: record,
        name: someText,
        order: '',
        title: someText,
        question: someText,
        run: call,
        takes: optional(oneOf('recorded-stroke', 'recorded-ground')),
      },
    },
  );
  return notebook;
}
