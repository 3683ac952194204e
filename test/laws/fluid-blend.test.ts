import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blendFraction, blendViscosity } from '../../lib/fluid/blend/blend.js';
import {
  arrheniusBlend,
  astmBlend,
  type BlendComponent,
  kendallMonroeBlend,
  molarMassBlend,
  polymerBlend,
  refutasBlend,
} from '../../lib/fluid/blend/blend-rules.js';
import { wrightBlend } from '../../lib/fluid/blend/wright-blend.js';
import { viscosityAt } from '../../lib/fluid/viscosity/viscosity-line.js';
import { fitWaltherLine } from '../../lib/fluid/viscosity/walther-line.js';
import { anyPair, anyTemperature, between, decades } from './fluid-arbitraries.js';

const ratio = (value: number, wanted: number): number => Math.abs(value / wanted - 1);

const rules: readonly [string, (components: readonly BlendComponent[]) => number][] = [
  ['astm', astmBlend],
  ['refutas', refutasBlend],
  ['arrhenius', arrheniusBlend],
  ['kendall-monroe', kendallMonroeBlend],
  ['polymer', polymerBlend],
  ['molar mass', molarMassBlend],
];

const anyViscosity = decades(20e-6, 1e-2);

describe.each(rules)('blend by %s', (_, rule) => {
  const two = (first: number, second: number, fraction: number) =>
    rule([
      { fraction: 1 - fraction, kinematicViscosity: first },
      { fraction, kinematicViscosity: second },
    ]);

  test('lies between its oils and rises with the share of the thicker', () => {
    fc.assert(
      fc.property(anyViscosity, between(1.05, 20), between(0.02, 0.9), (thin, factor, fraction) => {
        const blend = two(thin, thin * factor, fraction);
        expect(blend).toBeGreaterThan(thin);
        expect(blend).toBeLessThan(thin * factor);
        expect(two(thin, thin * factor, fraction + 0.05)).toBeGreaterThan(blend);
      }),
    );
  });

  test('of an oil with itself is that oil, and the order does not matter', () => {
    fc.assert(
      fc.property(anyViscosity, anyViscosity, between(0, 1), (first, second, fraction) => {
        expect(ratio(two(first, first, fraction), first)).toBeLessThan(1e-11);
        expect(ratio(two(first, second, fraction), two(second, first, 1 - fraction))).toBeLessThan(1e-11);
      }),
    );
  });

  test('may be mixed in steps', () => {
    fc.assert(
      fc.property(anyViscosity, anyViscosity, anyViscosity, (first, second, third) => {
        const atOnce = rule([
          { fraction: 0.3, kinematicViscosity: first },
          { fraction: 0.2, kinematicViscosity: second },
          { fraction: 0.5, kinematicViscosity: third },
        ]);
        expect(ratio(two(two(first, second, 0.4), third, 0.5), atOnce)).toBeLessThan(1e-10);
      }),
    );
  });
});

test("rules that know no absolute viscosity scale with it: Arrhenius', Kendall and Monroe's, the polymer's", () => {
  fc.assert(
    fc.property(anyViscosity, anyViscosity, between(0, 1), (first, second, fraction) => {
      for (const rule of [arrheniusBlend, kendallMonroeBlend, polymerBlend]) {
        const at = (scale: number) =>
          rule([
            { fraction: 1 - fraction, kinematicViscosity: first * scale },
            { fraction, kinematicViscosity: second * scale },
          ]);
        expect(ratio(at(3), 3 * at(1))).toBeLessThan(1e-11);
      }
    }),
  );
});

test("Wright's blend adds the logarithms of temperature at equal viscosity", () => {
  fc.assert(
    fc.property(decades(20e-6, 2e-4), between(2, 6), between(0, 1), (viscosity, factor, fraction) => {
      const line = (cold: number) =>
        fitWaltherLine([
          { temperature: 313.15, kinematicViscosity: cold },
          { temperature: 373.15, kinematicViscosity: cold / 6 },
        ]).line;
      const [first, second] = [line(viscosity), line(viscosity * factor)];
      const blend = wrightBlend([
        { fraction: 1 - fraction, line: first },
        { fraction, line: second },
      ]);
      const at = ({ intercept, slope }: typeof first) => (intercept - 0.2) / slope;
      expect(at(blend)).toBeCloseTo((1 - fraction) * at(first) + fraction * at(second), 10);
      const temperature = 313.15;
      expect(viscosityAt(blend, temperature)).toBeGreaterThanOrEqual(viscosity * (1 - 1e-9));
      expect(viscosityAt(blend, temperature)).toBeLessThanOrEqual(viscosity * factor * (1 + 1e-9));
    }),
  );
});

describe('blends of oils', () => {
  test('pure ends are the oils themselves by every rule', () => {
    fc.assert(
      fc.property(anyPair, anyTemperature, (pair, temperature) => {
        for (const [fraction, oil] of [
          [0, pair.first],
          [1, pair.second],
        ] as const) {
          const { rules: byRule } = blendViscosity({ pair, temperature }, fraction);
          for (const viscosity of Object.values(byRule)) {
            // The short inverse of ASTM D341 is good to 0.03 % where an oil is thinner than 3 mm²/s.
            expect(ratio(viscosity, viscosityAt(oil.typical, temperature))).toBeLessThan(3e-4);
          }
        }
      }),
    );
  });

  test('the spread holds the default, and each rule', () => {
    fc.assert(
      fc.property(anyPair, anyTemperature, between(0, 1), (pair, temperature, fraction) => {
        const {
          low,
          typical,
          high,
          rules: byRule,
          defaultRule,
        } = blendViscosity({ pair, temperature }, fraction);
        expect(byRule[defaultRule]).toBe(typical);
        for (const viscosity of Object.values(byRule)) {
          expect(viscosity).toBeGreaterThanOrEqual(low);
          expect(viscosity).toBeLessThanOrEqual(high);
        }
      }),
    );
  });

  test('the share for a viscosity and the viscosity of a share return each other', () => {
    fc.assert(
      fc.property(anyPair, anyTemperature, between(0.05, 0.95), (pair, temperature, fraction) => {
        const ends = [pair.first, pair.second].map((oil) => viscosityAt(oil.typical, temperature));
        fc.pre(ratio(ends[0] ?? 1, ends[1] ?? 1) > 0.05);
        const blend = { pair, temperature };
        const { typical } = blendViscosity(blend, fraction);
        expect(blendFraction(blend, typical).typical).toBeCloseTo(fraction, 9);
      }),
    );
  });

  test('a measured blend pins every rule at its share and leaves the ends', () => {
    fc.assert(
      fc.property(
        anyPair,
        anyTemperature,
        between(0.2, 0.8),
        between(0.8, 1.3),
        (pair, temperature, share, off) => {
          const ideal = blendViscosity({ pair, temperature }, share).typical;
          const measured = {
            secondVolumeFraction: share,
            temperature,
            kinematicViscosity: ideal * off,
          };
          const blend = { pair, temperature, measured };
          const pinned = blendViscosity(blend, share);
          for (const viscosity of Object.values(pinned.rules)) {
            expect(ratio(viscosity, measured.kinematicViscosity)).toBeLessThan(1e-11);
          }
          expect(pinned.defaultRule).toBe('arrhenius');
          const end = viscosityAt(pair.second.typical, temperature);
          expect(ratio(blendViscosity(blend, 1).typical, end)).toBeLessThan(1e-11);
        },
      ),
    );
  });
});
