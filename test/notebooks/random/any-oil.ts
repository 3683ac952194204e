import fc from 'fast-check';
import { number, size, temperature } from './any-size.js';

const thinning = fc.oneof(
  fc.record({
    law: fc.constant('carreau'),
    time: size('µs', [1, 100], [0.001, 1e6]),
    at: fc.constant('25 °C'),
    exponent: number({ usual: [0.5, 0.95], accepted: [0.05, 1] }),
  }),
  fc.record({
    law: fc.constant('cross'),
    time: size('µs', [1, 100], [0.001, 1e6]),
    at: fc.constant('25 °C'),
    exponent: number({ usual: [0.3, 0.8], accepted: [0, 0.95] }),
    floor: number({ usual: [0.05, 0.5], accepted: [0, 0.99] }),
  }),
);

export const bottle = fc.record(
  { volume: size('ml', [40, 120], [1, 20_000]), price: fc.constantFrom('7.90 EUR', '0 EUR', '9 USD') },
  { requiredKeys: ['volume'] },
);

export const siliconeViscosity = size('cSt', [100, 1000], [1, 100_000]);
export const oil = fc.oneof(
  fc.record(
    { base: fc.constant('silicone'), viscosity: siliconeViscosity, bottle, 'shear-thinning': thinning },
    { requiredKeys: ['base', 'viscosity'] },
  ),
  fc.record(
    {
      base: fc.constant('silicone'),
      viscosity: siliconeViscosity,
      at: temperature,
      'viscosity-temperature-coefficient': number({ usual: [0.55, 0.65], accepted: [0.3, 0.9] }),
      density: size('kg/m³', [940, 980], [600, 1300]),
      bottle,
    },
    { requiredKeys: ['base', 'viscosity', 'at'] },
  ),
  fc.record(
    {
      base: fc.constant('silicone'),
      'trade-weight': number({ usual: [20, 50], accepted: [10, 80] }),
      bottle,
    },
    { requiredKeys: ['base', 'trade-weight'] },
  ),
  fc.record(
    {
      base: fc.constant('petroleum'),
      'iso-grade': fc.constantFrom(2, 5, 15, 32, 100, 460, 3200),
      'viscosity-index': number({ usual: [90, 160], accepted: [-100, 500] }),
      bottle,
    },
    { requiredKeys: ['base', 'iso-grade'] },
  ),
);
