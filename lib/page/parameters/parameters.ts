import type { Parts } from '../../parts/parts.js';
import type { Dimension } from '../../units/index.js';

/**
 * The lists of a parts file that a parameter can choose from.
 *
 * @public
 */
export type PartList = 'oils' | 'pistons' | 'shocks' | 'springs' | 'builds';

/**
 * How a parameter is named and explained to a user.
 *
 * @public
 */
export interface ParameterWords {
  /** Two or three words, for example `Oil temperature`. */
  readonly label: string;
  /** One sentence: what it does to the page. */
  readonly help: string;
  /**
   * What it is on every page that has a parameter of this name, where the label of this page says it in other words. One name has one
   * meaning: a reader chooses it once for all pages.
   */
  readonly meaning?: string;
}

/**
 * A physical quantity. The four numbers are in `unit`; the value that a notebook gets is in SI.
 *
 * @public
 */
export interface QuantityParameter extends ParameterWords {
  readonly kind: 'quantity';
  readonly dimension: Dimension;
  readonly unit: string;
  readonly default: number;
  readonly min: number;
  readonly max: number;
  /** Step of a slider; other values between min and max are accepted too. */
  readonly step: number;
  /** What the parts file says of it, in SI: it takes the place of `default` where the file says something. */
  readonly inFile?: (parts: Parts) => number | undefined;
  /** True where a number without a unit is taken to be in `unit`. */
  readonly bareNumber?: true;
}

/**
 * A whole number.
 *
 * @public
 */
export interface IntegerParameter extends ParameterWords {
  readonly kind: 'integer';
  readonly default: number;
  readonly min: number;
  readonly max: number;
}

/**
 * One of a few fixed words.
 *
 * @public
 */
export interface ChoiceParameter<Option extends string = string> extends ParameterWords {
  readonly kind: 'choice';
  readonly options: readonly Option[];
  readonly default: Option;
}

/**
 * One part of a list of the parts file; that of the first build unless chosen, without builds the first of the list.
 *
 * @public
 */
export interface PartParameter<List extends PartList = PartList> extends ParameterWords {
  readonly kind: 'part';
  readonly list: List;
}

/**
 * Several parts of a list of the parts file; the first `atMost` of the list unless chosen.
 *
 * @public
 */
export interface SeveralPartsParameter<List extends PartList = PartList> extends ParameterWords {
  readonly kind: 'parts';
  readonly list: List;
  /** Most parts that can be chosen, 1 or more. */
  readonly atMost: number;
}

/**
 * Any parameter.
 *
 * @public
 */
export type Parameter =
  | QuantityParameter
  | IntegerParameter
  | ChoiceParameter
  | PartParameter
  | SeveralPartsParameter;

/**
 * The parameters of a notebook by name. One declaration drives the command line and the controls of the page.
 *
 * @public
 */
export type Parameters = Readonly<Record<string, Parameter>>;

/**
 * The value that a notebook gets for a parameter: SI number, whole number, word, part, or parts.
 *
 * @public
 */
export type ParameterValue<P extends Parameter> = P extends QuantityParameter | IntegerParameter
  ? number
  : P extends ChoiceParameter<infer Option>
    ? Option
    : P extends PartParameter<infer List>
      ? Parts[List][number]
      : P extends SeveralPartsParameter<infer List>
        ? Parts[List]
        : never;

/**
 * The values of all parameters of a declaration.
 *
 * @public
 */
export type ParameterValues<P extends Parameters> = { readonly [Name in keyof P]: ParameterValue<P[Name]> };
