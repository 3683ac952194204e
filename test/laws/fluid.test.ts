import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { oilDensity, thermalExpansionCoefficient } from '../../lib/fluid/oil/density.js';
import { rouseRelaxationTime } from '../../lib/fluid/shear/shear-thinning.js';
import {
  siliconeMolarMass,
  siliconeViscosityOfMolarMass,
} from '../../lib/fluid/shear/silicone-molar-mass.js';
import {
  barryLine,
  siliconeLineFromCoefficient,
  viscosityTemperatureCoefficient,
} from '../../lib/fluid/viscosity/barry-silicone.js';
import {
  kinematicViscosityOfSayboltUniversal,
  sayboltUniversalSeconds,
} from '../../lib/fluid/viscosity/saybolt.js';
import { viscosityAt40Celsius, viscosityIndex } from '../../lib/fluid/viscosity/viscosity-index.js';
import { waltherLineFromViscosityIndex } from '../../lib/fluid/viscosity/viscosity-index-line.js';
import { temperatureAt, viscosityAt } from '../../lib/fluid/viscosity/viscosity-line.js';
import {
  kinematicViscosityOfZ,
  kinematicViscosityOfZShort,
  waltherZ,
  waltherZShort,
} from '../../lib/fluid/viscosity/walther-function.js';
import { fitWaltherLine } from '../../lib/fluid/viscosity/walther-line.js';
import { anyOilBase, anyTemperature, between, decades } from './fluid-arbitraries.js';

const ratio = (value: number, wanted: number): number => Math.abs(value / wanted - 1);

/** Two points of a real oil: 20 to 80 K apart, thinner when hot. */
const anyPoints = fc
  .record({
    temperature: between(250, 350),
    distance: between(20, 80),
    kinematicViscosity: decades(3e-6, 1e-2),
    drop: between(0.1, 0.9),
  })
  .filter(({ kinematicViscosity, drop }) => kinematicViscosity * drop > 1e-6)
  .map(({ temperature, distance, kinematicViscosity, drop }) => [
    { temperature, kinematicViscosity },
    { temperature: temperature + distance, kinematicViscosity: kinematicViscosity * drop },
  ]);

describe('Walther function', () => {
  test('its full form and inverse return each viscosity of the range to the last digits', () => {
    fc.assert(
      fc.property(decades(0.2101e-6, 19), (viscosity) => {
        expect(ratio(kinematicViscosityOfZ(waltherZ(viscosity)), viscosity)).toBeLessThan(1e-13);
      }),
    );
  });

  test('it rises with the viscosity', () => {
    fc.assert(
      fc.property(decades(0.2101e-6, 10), between(1.001, 2), (viscosity, factor) => {
        expect(waltherZ(viscosity * factor)).toBeGreaterThan(waltherZ(viscosity));
      }),
    );
  });

  test('the short form and its inverse return a viscosity to 0.03 %', () => {
    fc.assert(
      fc.property(decades(0.2101e-6, 1), (viscosity) => {
        expect(ratio(kinematicViscosityOfZShort(waltherZShort(viscosity)), viscosity)).toBeLessThan(3e-4);
      }),
    );
  });

  test('both forms agree to 0.4 %', () => {
    fc.assert(
      fc.property(decades(0.2101e-6, 1), (viscosity) => {
        expect(ratio(waltherZShort(viscosity), waltherZ(viscosity))).toBeLessThan(4e-3);
      }),
    );
  });
});

describe('viscosity lines', () => {
  test('a line through two points passes them and falls with temperature', () => {
    fc.assert(
      fc.property(anyPoints, between(0, 1), (points, part) => {
        const { line, residuals } = fitWaltherLine(points);
        const [cold, hot] = points;
        if (cold === undefined || hot === undefined) throw new Error('two points');
        expect(Math.max(...residuals.map(Math.abs))).toBeLessThan(1e-11);
        const temperature = cold.temperature + part * (hot.temperature - cold.temperature);
        expect(viscosityAt(line, temperature)).toBeGreaterThan(viscosityAt(line, temperature + 1));
      }),
    );
  });

  test('temperature and viscosity of a line return each other', () => {
    fc.assert(
      fc.property(anyPoints, between(0, 1), (points, part) => {
        const { line } = fitWaltherLine(points);
        const [cold, hot] = points;
        if (cold === undefined || hot === undefined) throw new Error('two points');
        const temperature = cold.temperature + part * (hot.temperature - cold.temperature);
        expect(ratio(temperatureAt(line, viscosityAt(line, temperature)), temperature)).toBeLessThan(1e-12);
      }),
    );
  });

  test('points taken from a line give the line again, in any order and number', () => {
    fc.assert(
      fc.property(anyPoints, fc.array(between(0, 1), { minLength: 1, maxLength: 6 }), (points, parts) => {
        const { line } = fitWaltherLine(points);
        const [cold, hot] = points;
        if (cold === undefined || hot === undefined) throw new Error('two points');
        const more = parts.map((part) => {
          const temperature = cold.temperature + part * (hot.temperature - cold.temperature);
          return { temperature, kinematicViscosity: viscosityAt(line, temperature) };
        });
        const again = fitWaltherLine([...more, hot, cold]);
        expect(ratio(again.line.slope, line.slope)).toBeLessThan(1e-9);
        expect(ratio(again.line.intercept, line.intercept)).toBeLessThan(1e-9);
      }),
    );
  });

  test('a silicone line passes its point, keeps its coefficient and returns its temperatures', () => {
    fc.assert(
      fc.property(
        anyTemperature,
        decades(1e-5, 1e-1),
        between(0.3, 0.8),
        (temperature, viscosity, coefficient) => {
          const line = siliconeLineFromCoefficient(
            { temperature, kinematicViscosity: viscosity },
            coefficient,
          );
          expect(ratio(viscosityAt(line, temperature), viscosity)).toBeLessThan(1e-12);
          expect(viscosityTemperatureCoefficient(line)).toBeCloseTo(coefficient, 12);
          expect(ratio(temperatureAt(line, viscosity), temperature)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  test("by Barry's law the change with temperature is the same for every thickness and every given point", () => {
    fc.assert(
      fc.property(anyTemperature, anyTemperature, decades(1e-4, 1e-1), (given, asked, viscosity) => {
        const line = barryLine({ temperature: given, kinematicViscosity: viscosity });
        const other = barryLine({ temperature: asked, kinematicViscosity: viscosityAt(line, asked) });
        expect(ratio(other.viscosityAt25Celsius, line.viscosityAt25Celsius)).toBeLessThan(1e-12);
      }),
    );
  });
});

describe('viscosity index', () => {
  const anyIndex = between(-100, 400);

  test('the viscosity at 40 °C and the index return each other', () => {
    fc.assert(
      fc.property(decades(2.1e-6, 1e-3), anyIndex, (hot, index) => {
        expect(viscosityIndex(viscosityAt40Celsius(index, hot), hot)).toBeCloseTo(index, 8);
      }),
    );
  });

  test('a line from one point anywhere passes the point and has the index', () => {
    const anyHot = decades(2.2e-6, 3e-5);
    fc.assert(
      fc.property(anyHot, between(0, 300), between(263, 400), (hot, index, temperature) => {
        const cold = viscosityAt40Celsius(index, hot);
        const truth = fitWaltherLine([
          { temperature: 313.15, kinematicViscosity: cold },
          { temperature: 373.15, kinematicViscosity: hot },
        ]).line;
        const point = { temperature, kinematicViscosity: viscosityAt(truth, temperature) };
        const line = waltherLineFromViscosityIndex(point, index);
        expect(ratio(viscosityAt(line, temperature), point.kinematicViscosity)).toBeLessThan(1e-9);
        const found = viscosityIndex(viscosityAt(line, 313.15), viscosityAt(line, 373.15));
        expect(found).toBeCloseTo(index, 6);
      }),
    );
  });

  test('a higher index means thinner when cold and thicker when hot', () => {
    fc.assert(
      fc.property(decades(1e-5, 1e-3), between(0, 250), (viscosity, index) => {
        const point = { temperature: 313.15, kinematicViscosity: viscosity };
        const low = waltherLineFromViscosityIndex(point, index);
        const high = waltherLineFromViscosityIndex(point, index + 20);
        expect(viscosityAt(high, 283.15)).toBeLessThan(viscosityAt(low, 283.15));
        expect(viscosityAt(high, 353.15)).toBeGreaterThan(viscosityAt(low, 353.15));
      }),
    );
  });
});

describe('other properties', () => {
  test('Saybolt seconds and viscosity return each other at any temperature', () => {
    fc.assert(
      fc.property(decades(1.9e-6, 0.5), between(280, 400), (viscosity, temperature) => {
        const seconds = sayboltUniversalSeconds(viscosity, temperature);
        expect(ratio(kinematicViscosityOfSayboltUniversal(seconds, temperature), viscosity)).toBeLessThan(
          1e-12,
        );
      }),
    );
  });

  test('molar mass and viscosity return each other', () => {
    fc.assert(
      fc.property(decades(4e-5, 1e-1), (viscosity) => {
        expect(ratio(siliconeViscosityOfMolarMass(siliconeMolarMass(viscosity)), viscosity)).toBeLessThan(
          1e-12,
        );
      }),
    );
  });

  test('the expansion coefficient is the slope of the density, and oil expands', () => {
    fc.assert(
      fc.property(anyOilBase, anyTemperature, between(750, 1050), (base, temperature, density) => {
        const step = 0.01;
        const [cold, hot] = [-step, step].map((change) => oilDensity(base, temperature + change, density));
        const slope = -Math.log((hot ?? Number.NaN) / (cold ?? Number.NaN)) / (2 * step);
        expect(ratio(thermalExpansionCoefficient(base, temperature, density), slope)).toBeLessThan(1e-6);
        expect(slope).toBeGreaterThan(0);
        expect(oilDensity(base, 288.15, density)).toBeCloseTo(density, 10);
      }),
    );
  });

  test('the relaxation time is proportional to viscosity and molar mass, and falls as 1/T', () => {
    fc.assert(
      fc.property(
        decades(1e-4, 1e-1),
        between(3, 100),
        anyTemperature,
        between(2, 5),
        (nu, mass, t, factor) => {
          const at = (kinematicViscosity: number, molarMass: number, temperature: number) =>
            rouseRelaxationTime({ kinematicViscosity, molarMass, temperature });
          const time = at(nu, mass, t);
          expect(ratio(at(nu * factor, mass, t), time * factor)).toBeLessThan(1e-12);
          expect(ratio(at(nu, mass * factor, t), time * factor)).toBeLessThan(1e-12);
          expect(ratio(at(nu, mass, t * factor), time / factor)).toBeLessThan(1e-12);
        },
      ),
    );
  });
});
