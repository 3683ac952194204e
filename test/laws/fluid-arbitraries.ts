import fc from 'fast-check';
import { createOil, type Oil } from '../../lib/fluid/oil/oil.js';
import type { OilBase } from '../../lib/fluid/oil/oil-definition.js';

/** A number of a range, evenly. */
export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A number of a range, evenly in its logarithm. */
export const decades = (min: number, max: number) =>
  between(Math.log(min), Math.log(max)).map((logarithm) => Math.exp(logarithm));

/** Temperatures [K] in and around the use of a damper. */
export const anyTemperature = between(253.15, 353.15);

export const anyOilBase: fc.Arbitrary<OilBase> = fc.constantFrom('silicone', 'petroleum');

/** A silicone of 60 to 12500 mm²/s at 25 °C, its density typical or not. */
export const anySilicone: fc.Arbitrary<Oil> = fc
  .record({ viscosity: decades(60e-6, 12.5e-3), density: between(940, 1000) })
  .map(({ viscosity, density }) =>
    createOil({
      base: 'silicone',
      viscosity: { kind: 'silicone', point: { temperature: 298.15, kinematicViscosity: viscosity } },
      densityAt15Celsius: density,
    }),
  );

/** A petroleum oil of 15 to 400 mm²/s at 40 °C and an index of 50 to 190. */
export const anyPetroleum: fc.Arbitrary<Oil> = fc
  .record({ viscosity: decades(15e-6, 400e-6), index: between(50, 190), density: between(830, 920) })
  .map(({ viscosity, index, density }) =>
    createOil({
      base: 'petroleum',
      viscosity: {
        kind: 'viscosity-index',
        point: { temperature: 313.15, kinematicViscosity: viscosity },
        viscosityIndex: index,
      },
      densityAt15Celsius: density,
    }),
  );

export const anyPair = fc.oneof(
  fc.record({ first: anySilicone, second: anySilicone }),
  fc.record({ first: anyPetroleum, second: anyPetroleum }),
);
