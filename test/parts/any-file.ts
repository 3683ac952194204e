import fc from 'fast-check';

/** A number as text with a unit, from a range that is given in that unit. */
function text(min: number, max: number, unit: string): fc.Arbitrary<string> {
  // What is nothing to the size of the range is refused as neither nothing nor a size.
  const double = fc
    .double({ min, max, noNaN: true })
    .filter((value) => value === 0 || Math.abs(value) > 1e-6 * max);
  return double.map((value) => `${value} ${unit}`);
}

/** The same range in several units. */
function size(minMillimetres: number, maxMillimetres: number): fc.Arbitrary<string> {
  return fc.oneof(
    text(minMillimetres, maxMillimetres, 'mm'),
    text(minMillimetres / 10, maxMillimetres / 10, 'cm'),
    text(minMillimetres * 1000, maxMillimetres * 1000, 'µm'),
    text(minMillimetres / 25.4, maxMillimetres / 25.4, 'in'),
  );
}

const name = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 40 })
  .filter(
    (candidate) =>
      candidate.trim() === candidate && candidate.length <= 80 && !/[\u2028\u2029]/u.test(candidate),
  );

const viscosity = fc.oneof(text(50, 20_000, 'cSt'), text(0.5, 200, 'St'), text(50e-6, 0.02, 'm²/s'));
const temperature = fc.oneof(text(0, 60, '°C'), text(32, 140, '°F'), text(273.15, 333.15, 'K'));
const bottle = fc.record({
  volume: text(10, 1000, 'ml'),
  price: fc.constantFrom('7.90 EUR', '0 USD', '1200 JPY'),
});

const oil = fc.oneof(
  fc.record(
    { base: fc.constant('silicone'), viscosity, at: temperature, bottle },
    { requiredKeys: ['base', 'viscosity', 'at'] },
  ),
  fc.record({
    base: fc.constant('silicone'),
    viscosity,
    at: temperature,
    'viscosity-temperature-coefficient': fc.double({ min: 0.3, max: 0.9, noNaN: true }),
  }),
  fc.record({
    base: fc.constant('silicone'),
    'trade-weight': fc.double({ min: 10, max: 80, noNaN: true }),
    density: text(950, 980, 'kg/m³'),
  }),
  fc.record({ base: fc.constant('petroleum'), 'iso-grade': fc.constantFrom(22, 32, 46, 68, 100) }),
  fc.record({
    base: fc.constant('petroleum'),
    viscosity: text(20, 200, 'cSt'),
    at: fc.constant('40 °C'),
    'viscosity-index': fc.double({ min: 80, max: 160, noNaN: true }),
  }),
  fc.record({
    base: fc.constantFrom('silicone', 'petroleum'),
    points: fc.constant([
      { at: '10 °C', viscosity: '500 cSt' },
      { at: '30 °C', viscosity: '300 cSt' },
    ]),
  }),
);

const piston = fc.record(
  {
    diameter: text(11, 11.99, 'mm'),
    thickness: size(1, 5),
    holes: fc.array(fc.record({ count: fc.integer({ min: 1, max: 4 }), diameter: size(0.5, 1.5) }), {
      maxLength: 2,
    }),
    'off-centre': fc.double({ min: 0, max: 0.99, noNaN: true }),
  },
  { requiredKeys: ['diameter', 'thickness', 'holes'] },
);

const gasVolume = text(0.25, 1, 'ml');
const side = fc.constantFrom('blind-side', 'shaft-side');
const exponent = fc.double({ min: 1, max: 1.4, noNaN: true });
/** Kinds with a gas of their own, larger than what the shafts below displace. */
const sprung = fc.oneof(
  fc.record(
    { kind: fc.constantFrom('air-pocket', 'bladder', 'vented-bladder'), volume: gasVolume, side, exponent },
    { requiredKeys: ['kind', 'volume'] },
  ),
  fc.record({
    kind: fc.constantFrom('bladder', 'vented-bladder'),
    volume: gasVolume,
    stiffness: fc.oneof(text(1, 1000, 'kPa/ml'), text(0.1, 10, 'bar/ml')),
    'air-release-pressure': text(0, 0.2, 'bar'),
  }),
  fc.record({
    kind: fc.constant('foam'),
    volume: gasVolume,
    'gas-fraction': fc.double({ min: 0.9, max: 0.98, noNaN: true }),
  }),
);
/** Kinds that are closed with the shaft fully in. */
const bled = fc.oneof(
  fc.record(
    { kind: fc.constant('emulsion'), 'gas-fraction': fc.double({ min: 0.05, max: 0.3, noNaN: true }) },
    { requiredKeys: ['kind'] },
  ),
  fc.constant({ kind: 'none' }),
);
const inside = fc.record(
  { length: size(40, 60), 'cap-volume': text(0, 2, 'ml'), 'solid-volume': text(0.1, 1, 'ml') },
  { requiredKeys: ['length'] },
);
const bench = {
  temperature: text(5, 30, '°C'),
  'ambient-pressure': text(900, 1050, 'mbar'),
  bleed: fc.constantFrom('never', 'once', 'twice', 'three times'),
};
const closing = fc.record(
  { ...bench, shaft: fc.oneof(fc.constantFrom('fully out', 'fully in'), text(0, 10, 'mm')) },
  { requiredKeys: [] },
);
/** Ways to say what makes room, none of which contradicts itself. */
const fill = fc.oneof(
  fc.constant({}),
  fc.record({ compensator: sprung, closing, inside }, { requiredKeys: ['compensator'] }),
  fc.record({ compensator: sprung, 'oil-volume': text(4.5, 8, 'ml') }),
  fc.record(
    { compensator: bled, closing: fc.record(bench, { requiredKeys: [] }), inside },
    { requiredKeys: ['compensator'] },
  ),
  fc.record({
    compensator: fc.constant({ kind: 'air-pocket' }),
    inside,
    closing: fc.record({ 'drawn-off': text(0.3, 1, 'ml'), 'free-air': text(0, 0.04, 'ml') }),
  }),
  fc.record({
    closing: fc.record({ poured: text(5, 8, 'ml'), 'drawn-off': text(0.4, 0.8, 'ml') }),
  }),
);

const shock = fc.record(
  {
    bore: fc.constantFrom('12 mm', '1.2 cm', '0.012 m'),
    shaft: size(2, 3),
    stroke: size(10, 30),
    seal: fc.oneof(
      fc.record({ 'moving-friction': text(0, 2, 'N'), 'breakaway-friction': text(2, 4, 'N') }),
      fc.record({ scale: fc.record({ 'pushing-in': text(0, 2, 'N'), 'letting-out': text(-2, 0, 'N') }) }),
    ),
    lengths: fc.record(
      {
        'body-eyelet': size(30, 60),
        shaft: size(40, 60),
        'seal-stack': size(5, 12),
        'rod-end': size(0, 10),
        'droop-spacers': size(0, 5),
        'bump-stop': size(0, 5),
        'piston-travel': size(10, 30),
      },
      { requiredKeys: ['body-eyelet', 'shaft', 'seal-stack', 'rod-end'] },
    ),
  },
  { requiredKeys: ['bore', 'shaft', 'stroke'] },
);

/** A shock with one way to say what makes room. */
const filledShock = fc.tuple(shock, fill).map(([body, room]) => ({ ...body, ...room }));

const spring = fc.record({
  rate: fc.oneof(text(0.1, 2, 'N/mm'), text(100, 2000, 'N/m'), text(1, 10, 'lbf/in')),
  'free-length': size(20, 80),
});

function named<Part extends object>(part: fc.Arbitrary<Part>): fc.Arbitrary<(Part & { name: string })[]> {
  return fc
    .uniqueArray(name, { minLength: 1, maxLength: 3, selector: (text) => text.normalize() })
    .chain((names) => fc.tuple(...names.map((given) => part.map((rest) => ({ ...rest, name: given })))));
}

/** Any file that readParts must accept, as plain data, with builds of its own parts. */
export const anyFile = fc
  .record({
    dashpot: fc.constant(1),
    about: fc.string({ unit: 'grapheme', maxLength: 60 }),
    oils: named(oil),
    pistons: named(piston),
    shocks: named(filledShock),
    springs: named(spring),
  })
  .chain((parts) => {
    const nameOf = (list: readonly { readonly name: string }[]) =>
      fc.constantFrom(...list.map((part) => part.name));
    const build = fc.record(
      {
        shock: nameOf(parts.shocks),
        piston: nameOf(parts.pistons),
        oil: nameOf(parts.oils),
        spring: nameOf(parts.springs),
        quantity: fc.integer({ min: 1, max: 4 }),
      },
      { requiredKeys: ['shock', 'piston', 'oil'] },
    );
    return named(build).map((builds) => ({ ...parts, builds }));
  });
