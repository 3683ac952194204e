import fc from 'fast-check';
import { bottle, oil, siliconeViscosity } from './any-oil.js';
import { piston } from './any-piston.js';
import { shock } from './any-shock.js';
import { number, size, temperature } from './any-size.js';

const named = <Part extends object>(words: string, part: fc.Arbitrary<Part>, atMost: number) =>
  fc
    .array(part, { minLength: 1, maxLength: atMost })
    .map((list) => list.map((one, place) => ({ name: `${words} ${place + 1}`, ...one })));

const tolerances = fc.record(
  {
    'hole-diameter': size('mm', [0.01, 0.05], [0, 1]),
    'hole-taper': size('mm', [0.01, 0.05], [0, 1]),
    thickness: size('mm', [0.02, 0.1], [0, 1]),
    bore: size('mm', [0.01, 0.04], [0, 1]),
    gap: size('mm', [0.005, 0.02], [0, 1]),
    viscosity: size('%', [2, 15], [0, 30]),
    temperature: size('K', [1, 5], [0, 20]),
    'gas-volume': size('ml', [0.05, 0.2], [0, 20]),
  },
  { requiredKeys: [] },
);

const day = fc
  .array(temperature, { minLength: 1, maxLength: 4 })
  .map((list) =>
    list.map((one, place) => ({ time: `${String(8 + 2 * place).padStart(2, '0')}:00`, temperature: one })),
  );

const times = fc.array(size('s', [0.8, 4], [0.2, 600]), { minLength: 1, maxLength: 5 });

/**
 * Files that are often accepted: mostly usual values, with extremes of what a key accepts among them. What does not go together is left to the reader of parts files to
 * refuse.
 */
export const extremeFile = fc
  .tuple(fc.constantFrom(10, 12, 13, 16), fc.constantFrom(12, 16, 20))
  .chain(([first, second]) =>
    fc
      .record(
        {
          dashpot: fc.constant(1),
          oils: named('oil', oil, 3),
          pistons: fc
            .tuple(named('piston', piston(first), 2), named('other', piston(second), 1))
            .map(([one, other]) => [...one, ...other]),
          shocks: fc
            .tuple(named('shock', shock(first), 1), named('long', shock(second), 1))
            .map(([one, other]) => [...one, ...other]),
          springs: named(
            'spring',
            fc.record({
              rate: size('N/mm', [0.3, 1.2], [0.01, 20]),
              'free-length': size('mm', [35, 70], [5, 300]),
            }),
            2,
          ),
          shop: fc.option(
            named(
              'shop',
              fc.record({ base: fc.constant('silicone'), viscosity: siliconeViscosity, bottle }),
              3,
            ),
            { nil: undefined },
          ),
          day,
          tolerances,
        },
        { requiredKeys: ['dashpot', 'oils', 'pistons', 'shocks', 'springs'] },
      )
      .chain((parts) => {
        const builds = fc.record(
          {
            quantity: fc.integer({ min: 1, max: 4 }),
            spring: fc.constantFrom(...parts.springs.map(({ name }) => name)),
            corner: fc.record({
              mass: size('g', [250, 900], [20, 10_000]),
              'motion-ratio': number({ usual: [0.55, 0.9], accepted: [0.2, 1.5] }),
            }),
            oil: fc.constantFrom(...parts.oils.map(({ name }) => name)),
            wanted: fc.constant({ oil: parts.oils[0]?.name, at: '20 °C' }),
            'close-at': fc.constantFrom('fully out', 'fully in', '3 mm'),
          },
          { requiredKeys: ['oil'] },
        );
        return fc
          .tuple(builds, builds, fc.boolean(), fc.option(times, { nil: undefined }), times)
          .map(([one, other, two, timedFirst, timedSecond]) => ({
            ...parts,
            builds: [
              { name: 'front', shock: 'shock 1', piston: 'piston 1', ...one },
              ...(two ? [{ name: 'rear', shock: 'long 1', piston: 'other 1', ...other }] : []),
            ],
            ...(timedFirst === undefined
              ? {}
              : {
                  timed: [
                    { name: 'left', build: 'front', times: timedFirst },
                    { name: 'right', build: 'front', times: timedSecond },
                  ],
                }),
          }));
      }),
  );
