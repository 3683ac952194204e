export { groupedNumberFault } from './comma-number.js';
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
export { type Dimension, findUnit, unitTable } from './unit-table.js';
