import { expect, it } from 'vitest';
import { orderDemands } from '../../lib/decisions/order/order-coverage.js';
import { packedDemands, unpackedDemands } from '../../lib/decisions/order/packed-demands.js';
import { finish } from '../../lib/decisions/search/search.js';
import { bottles, problem } from './order-case.js';

it('demands come out of their packing as they went in', () => {
  // Thick before thin, so that a blend names its bottles in the other order than its choice.
  const question = problem({ bottles: bottles([600, 9], [200, 7], [350, 5], [100, 3]) });
  const demands = finish(orderDemands(question));
  const fills = demands.flatMap((demand) => demand.fills);
  expect(fills.some(({ bottles: [thinner], choice }) => thinner === choice.second)).toBe(true);
  expect(fills.some(({ choice }) => choice.second === undefined)).toBe(true);
  const packed = question.temperatures.map((temperature) =>
    packedDemands(demands.filter((demand) => demand.temperature === temperature)),
  );
  expect(unpackedDemands(question, packed)).toEqual(demands);
});
