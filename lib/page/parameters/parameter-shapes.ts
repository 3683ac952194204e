import { byKind, call, flag, listOf, oneOf, optional, type Shape, someText } from '../../base/shape.js';
import { unitTable } from '../../units/unit-table.js';

const words = { label: someText, help: someText, meaning: optional(someText) };
const list = oneOf('oils', 'pistons', 'shocks', 'springs', 'builds');

/** Form of each kind of parameter, without the word that tells the kind. */
export const declaredShapes = {
  quantity: {
    ...words,
    dimension: oneOf(...Object.keys(unitTable)),
    unit: someText,
    default: '',
    min: '',
    max: '',
    step: '',
    inFile: optional(call),
    bareNumber: optional(flag),
  },
  integer: { ...words, default: '', min: '', max: '' },
  choice: { ...words, options: listOf(someText), default: someText },
  part: { ...words, list },
  parts: { ...words, list, atMost: '' },
} as const satisfies Readonly<Record<string, Shape>>;

/** Form of a parameter. */
export const parameterShape: Shape = byKind(declaredShapes);
