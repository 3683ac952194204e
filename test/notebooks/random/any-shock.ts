import fc from 'fast-check';
import { number, size } from './any-size.js';

const gas = size('ml', [0.3, 1.5], [0.05, 20]);
const compensator = fc.oneof(
  fc.record(
    {
      kind: fc.constantFrom('air-pocket', 'bladder', 'vented-bladder'),
      volume: gas,
      side: fc.constantFrom('blind-side', 'shaft-side'),
      exponent: number({ usual: [1, 1.4], accepted: [1, 1.4] }),
      'air-release-pressure': size('bar', [0, 0.1], [0, 0.2]),
    },
    { requiredKeys: ['kind', 'volume'] },
  ),
  fc.record({
    kind: fc.constantFrom('bladder', 'vented-bladder'),
    volume: gas,
    stiffness: size('kPa/ml', [5, 80], [0, 100_000]),
  }),
  fc.record({
    kind: fc.constant('foam'),
    volume: gas,
    'gas-fraction': number({ usual: [0.7, 0.95], accepted: [0.01, 0.99] }),
  }),
  fc.record({
    kind: fc.constant('emulsion'),
    'gas-fraction': number({ usual: [0.08, 0.25], accepted: [0.01, 0.9] }),
  }),
  fc.constant({ kind: 'none' }),
);

const closing = fc.record(
  {
    shaft: fc.constantFrom('fully out', 'fully in', '5 mm'),
    temperature: size('°C', [15, 25], [-30, 80]),
    bleed: fc.constantFrom('never', 'once', 'twice', 'three times'),
    'ambient-pressure': size('bar', [0.9, 1.05], [0.5, 1.2]),
  },
  { requiredKeys: [] },
);

const seal = fc.oneof(
  fc.record({ 'moving-friction': size('N', [0.1, 0.5], [0, 20]) }),
  fc.record({ 'breakaway-friction': size('N', [0.1, 0.7], [0, 20]) }),
);

export const shock = (bore: number) =>
  fc.record(
    {
      bore: fc.constant(`${bore} mm`),
      shaft: size('mm', [2.5, 3.5], [1, Math.min(15, bore / 1.5)]),
      stroke: size('mm', [18, 38], [2, 150]),
      compensator,
      closing,
      seal,
      inside: fc.record(
        { length: size('mm', [35, 60], [10, 200]), 'cap-volume': size('ml', [0.2, 1], [0, 5]) },
        { requiredKeys: ['length'] },
      ),
    },
    { requiredKeys: ['bore', 'shaft', 'stroke'] },
  );
