import { dimensionsOf } from '../../lib/units/index.js';
import { free, type GoodCalls, whole } from './good-call.js';

/** Calls of the entry of units. What a thing is made of is for the function that takes it to check. */
export const unitsCalls: GoodCalls = {
  describeDimension: [['length']],
  formatQuantity: [[0.0017, 'length', 'mm', 3]],
  inSi: [
    [{ speed: '0.3 m/s', position: '10 mm' }, whole(dimensionsOf.motion)],
    [{ note: free({}) }, {}],
  ],
  parseQuantity: [['1.7 mm', 'length']],
  roundedText: [[1.2345, 3]],
  unitsOf: [['pressure']],
};
