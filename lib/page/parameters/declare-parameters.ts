import { requireShape } from '../../base/shape.js';
import { declaredShapes } from './parameter-shapes.js';
import type {
  ChoiceParameter,
  IntegerParameter,
  PartList,
  PartParameter,
  QuantityParameter,
  SeveralPartsParameter,
} from './parameters.js';

/**
 * Declares a physical quantity.
 *
 * @throws InputError for a field that is missing or of a wrong kind, by its path
 * @public
 */
export function quantity(declared: Omit<QuantityParameter, 'kind'>): QuantityParameter {
  requireShape({ declared }, { declared: declaredShapes.quantity });
  return { kind: 'quantity', ...declared };
}

/**
 * Declares a whole number.
 *
 * @throws InputError for a field that is missing or of a wrong kind, by its path
 * @public
 */
export function integer(declared: Omit<IntegerParameter, 'kind'>): IntegerParameter {
  requireShape({ declared }, { declared: declaredShapes.integer });
  return { kind: 'integer', ...declared };
}

/**
 * Declares a choice between fixed words.
 *
 * @throws InputError for a field that is missing or of a wrong kind, by its path
 * @public
 */
export function choice<const Option extends string>(
  declared: Omit<ChoiceParameter<Option>, 'kind'>,
): ChoiceParameter<Option> {
  requireShape({ declared }, { declared: declaredShapes.choice });
  return { kind: 'choice', ...declared };
}

/**
 * Declares the choice of one part of the parts file.
 *
 * @throws InputError for a field that is missing or of a wrong kind, by its path
 * @public
 */
export function onePart<const List extends PartList>(
  declared: Omit<PartParameter<List>, 'kind'>,
): PartParameter<List> {
  requireShape({ declared }, { declared: declaredShapes.part });
  return { kind: 'part', ...declared };
}

/**
 * Declares the choice of several parts of the parts file.
 *
 * @throws InputError for a field that is missing or of a wrong kind, by its path
 * @public
 */
export function severalParts<const List extends PartList>(
  declared: Omit<SeveralPartsParameter<List>, 'kind'>,
): SeveralPartsParameter<List> {
  requireShape({ declared }, { declared: declaredShapes.parts });
  return { kind: 'parts', ...declared };
}
