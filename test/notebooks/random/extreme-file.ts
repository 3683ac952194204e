import fc from 'fast-check';

/** A range that is usual, and the range that the parts file accepts. */
interface Span {
  readonly usual: readonly [number, number];
  readonly accepted: readonly [number, number];
}

/** Mostly what happens, one in five from the whole range, and its very ends. */
function number({ usual, accepted }: Span): fc.Arbitrary<number> {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const within = ([low, high]: readonly [number, number]) =>
    share.map((part) => {
      const value = low > 0 ? low * (high / low) ** part : low + (high - low) * part;
      return Number(value.toPrecision(4));
    });
  return fc.oneof(
    { weight: 16, arbitrary: within(usual) },
    { weight: 4, arbitrary: within(accepted) },
    { weight: 1, arbitrary: fc.constantFrom(...accepted) },
  );
}

const size = (
  unit: string,
  usual: readonly [number, number],
  accepted: readonly [number, number],
): fc.Arbitrary<string> => number({ usual, accepted }).map((value) => `${value} ${unit}`);

const temperature = size('°C', [5, 35], [-30, 80]);

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

const bottle = fc.record(
  { volume: size('ml', [40, 120], [1, 20_000]), price: fc.constantFrom('7.90 EUR', '0 EUR', '9 USD') },
  { requiredKeys: ['volume'] },
);

const siliconeViscosity = size('cSt', [100, 1000], [1, 100_000]);
const oil = fc.oneof(
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

/** A shape that fits a hole of a diameter in a plate of a thickness, both in millimetres. */
function holeShape(diameter: number, thickness: number): fc.Arbitrary<Readonly<Record<string, unknown>>> {
  const part = (low: number, high: number, of: number) =>
    fc
      .double({ min: low, max: high, noNaN: true })
      .map((share) => `${Number((share * of).toPrecision(3))} mm`);
  const edge = fc.oneof(
    fc.record({ chamfer: part(0.02, 0.4, thickness) }),
    fc.record({ radius: part(0.02, 0.3, Math.min(thickness, diameter)) }),
  );
  return fc.oneof(
    { weight: 5, arbitrary: fc.constant({}) },
    { weight: 2, arbitrary: fc.record({ 'shaft-side-diameter': part(0.6, 1.6, diameter) }) },
    {
      weight: 1,
      arbitrary: fc.record({
        'shaft-side-diameter': part(0.6, 1.6, diameter),
        'shaft-side-length': part(0.1, 0.9, thickness),
      }),
    },
    {
      weight: 2,
      arbitrary: fc.record({ 'blind-edge': edge, 'shaft-edge': edge }, { requiredKeys: [] }),
    },
    { weight: 1, arbitrary: fc.record({ 'slot-travel': part(0.1, 1, diameter) }) },
  );
}

const holes = (bore: number, thickness: number) =>
  fc.array(
    number({ usual: [1, 1.9], accepted: [0.1, Math.max(0.2, bore / 4)] }).chain((diameter) =>
      fc
        .tuple(fc.integer({ min: 1, max: 5 }), holeShape(diameter, thickness))
        .map(([count, shape]) => ({ count, diameter: `${diameter} mm`, ...shape })),
    ),
    { minLength: 0, maxLength: 2 },
  );

/** A disc over one hole size on a circle of its own. */
const valved = (bore: number) =>
  fc
    .record(
      {
        face: fc.constantFrom('shaft-side', 'blind-side'),
        thickness: size('mm', [0.05, 0.3], [0.02, 1]),
        'elastic-modulus': size('GPa', [3, 200], [0.5, 300]),
        preload: size('mm', [0.01, 0.1], [0, 0.3]),
        'largest-lift': size('mm', [0.2, 1], [0.01, 5]),
      },
      { requiredKeys: ['face', 'thickness', 'elastic-modulus'] },
    )
    .map((disc) => ({
      holes: [
        {
          count: 4,
          diameter: `${(0.12 * bore).toFixed(2)} mm`,
          'pitch-circle': `${(0.64 * bore).toFixed(2)} mm`,
        },
        { count: 1, diameter: '1 mm', 'pitch-circle': `${(0.3 * bore + 2).toFixed(2)} mm` },
      ],
      valves: [
        {
          ...disc,
          covers: [1],
          'outer-diameter': `${(0.9 * bore).toFixed(2)} mm`,
          'clamp-diameter': `${(0.42 * bore).toFixed(2)} mm`,
        },
      ],
    }));

const piston = (bore: number) =>
  fc
    .tuple(
      number({ usual: [0.02, 0.1], accepted: [0.002, 0.5] }),
      number({ usual: [2, 3.5], accepted: [0.3, 10] }),
      number({ usual: [0, 0.6], accepted: [0, 0.99] }),
    )
    .chain(([gap, thickness, offCentre]) =>
      fc
        .oneof(
          { weight: 6, arbitrary: holes(bore, thickness).map((list) => ({ holes: list })) },
          { weight: 1, arbitrary: valved(bore) },
        )
        .map((passages) => ({
          diameter: `${Number((bore - 2 * gap).toPrecision(5))} mm`,
          thickness: `${thickness} mm`,
          'off-centre': offCentre,
          ...passages,
        })),
    );

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

const shock = (bore: number) =>
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
