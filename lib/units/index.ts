export {
  describeDimension,
  formatQuantity,
  fromSi,
  parseQuantity,
  QuantityError,
  quantityPattern,
  roundedText,
  toSi,
} from './quantity-text.js';
export { type Dimension, findUnit, type Unit, unitTable } from './unit-table.js';
