import { quantity } from '../../lib/page/parameters/declare-parameters.js';
import { dropHeight } from './drop-height.js';

/** The control of a landing: one declaration for every page. */
export const dropOfWheel = quantity({
  dimension: 'length',
  unit: 'mm',
  label: 'Drop height',
  help: 'How high the wheel is above flat ground; the shaft meets it fully out.',
  default: 1000 * dropHeight,
  min: 5,
  max: 1000,
  step: 5,
});
