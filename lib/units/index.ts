export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
export { type Dimensions, dimensionsOf } from './dimensions.js';
export { type ForeignUnit, inSi, type Written } from './in-si.js';
export {
  describeDimension,
  formatQuantity,
  parseQuantity,
  QuantityError,
  roundedText,
} from './quantity-text.js';
export { type Dimension, unitsOf } from './unit-table.js';
