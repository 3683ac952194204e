import fc from 'fast-check';
import { number, size } from './any-size.js';

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

export const piston = (bore: number) =>
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
