import { describe, expect, test } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { compressAiryOil } from '../../lib/fluid/air/air-in-oil.js';
import { petroleumAirSolubility } from '../../lib/fluid/air/air-solubility.js';
import { blendFraction, blendViscosity } from '../../lib/fluid/blend/blend.js';
import {
  arrheniusBlend,
  astmBlend,
  molarMassBlend,
  refutasBlend,
} from '../../lib/fluid/blend/blend-rules.js';
import { blendInteraction, interactingBlend } from '../../lib/fluid/blend/grunberg-nissan.js';
import { wrightBlend } from '../../lib/fluid/blend/wright-blend.js';
import { barusViscosityRatio, siliconeBulkModulus } from '../../lib/fluid/oil/bulk-modulus.js';
import { oilDensity, thermalExpansionCoefficient } from '../../lib/fluid/oil/density.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import type { OilBase, ViscosityDefinition } from '../../lib/fluid/oil/oil-definition.js';
import { rouseRelaxationTime, shearThinningWarnings } from '../../lib/fluid/shear/shear-thinning.js';
import {
  siliconeMolarMass,
  siliconeViscosityOfMolarMass,
} from '../../lib/fluid/shear/silicone-molar-mass.js';
import { barryLine, siliconeLineFromCoefficient } from '../../lib/fluid/viscosity/barry-silicone.js';
import { isoGradeViscosity } from '../../lib/fluid/viscosity/iso-grade.js';
import {
  kinematicViscosityOfSayboltUniversal,
  sayboltUniversalSeconds,
} from '../../lib/fluid/viscosity/saybolt.js';
import { tradeWeightViscosity } from '../../lib/fluid/viscosity/trade-weight.js';
import { viscosityIndex } from '../../lib/fluid/viscosity/viscosity-index.js';
import { temperatureAt, viscosityAt } from '../../lib/fluid/viscosity/viscosity-line.js';
import {
  kinematicViscosityOfZ,
  kinematicViscosityOfZShort,
  waltherZ,
  waltherZShort,
} from '../../lib/fluid/viscosity/walther-function.js';
import { fitWaltherLine } from '../../lib/fluid/viscosity/walther-line.js';

const point = (temperature: number, kinematicViscosity: number) => ({ temperature, kinematicViscosity });
const good = point(298.15, 350e-6);
const oilOf = (base: OilBase, viscosity: ViscosityDefinition, densityAt15Celsius?: number) =>
  createOil(densityAt15Celsius === undefined ? { base, viscosity } : { base, viscosity, densityAt15Celsius });
const silicone = oilOf('silicone', { kind: 'silicone', point: good });
const thick = oilOf('silicone', { kind: 'silicone', point: point(298.15, 1e-3) });
const petroleum = oilOf('petroleum', { kind: 'iso-grade', grade: 32 });
const line = barryLine(good);
const half = (kinematicViscosity: number, fraction = 0.5) => ({ fraction, kinematicViscosity });
const airy = {
  liquidBulkModulus: 1.5e9,
  airFraction: 0.01,
  referencePressure: 1e5,
  polytropicExponent: 1.2,
};
const polymer = { kinematicViscosity: 1e-4, molarMass: 7, temperature: 298 };

/** What is refused, the field that the error names, and the call. */
const refused: readonly [what: string, field: RegExp, call: () => unknown][] = [
  ['one point', /^points$/u, () => oilOf('petroleum', { kind: 'points', points: [good] })],
  ['no point', /^points$/u, () => oilOf('petroleum', { kind: 'points', points: [] })],
  ['two points at one temperature', /^points$/u, () => fitWaltherLine([good, point(298.15, 1e-4)])],
  ['thicker when hot', /^points$/u, () => fitWaltherLine([good, point(330, 400e-6)])],
  [
    'a point below absolute zero',
    /^points\[1\]\.temperature$/u,
    () => fitWaltherLine([good, point(-3, 1e-4)]),
  ],
  ['a point too thin', /^points\[0\]\.kinematicViscosity$/u, () => fitWaltherLine([point(280, 1e-7), good])],
  ['a point that is no number', /^points\[0\]/u, () => fitWaltherLine([point(280, Number.NaN), good])],
  ['a cold index point', /^point\.temperature$/u, () => byIndex(point(200, 1e-4), 100)],
  ['an index too high', /^viscosityIndex$/u, () => byIndex(point(313.15, 32e-6), 600)],
  ['an index that is no number', /^viscosityIndex$/u, () => byIndex(point(313.15, 32e-6), Number.NaN)],
  ['an oil too thin for an index', /^point\.kinematicViscosity$/u, () => byIndex(point(313.15, 4e-6), 100)],
  ['an oil too thick for an index', /^point\.kinematicViscosity$/u, () => byIndex(point(313.15, 15), 0)],
  [
    'a silicone definition of petroleum',
    /^base$/u,
    () => oilOf('petroleum', { kind: 'silicone', point: good }),
  ],
  ['a coefficient of petroleum', /^base$/u, () => oilOf('petroleum', coefficient(0.6))],
  ['a weight of petroleum', /^base$/u, () => oilOf('petroleum', { kind: 'trade-weight', weight: 30 })],
  ['a grade of silicone', /^base$/u, () => oilOf('silicone', { kind: 'iso-grade', grade: 32 })],
  ['a coefficient of 1', /^coefficient$/u, () => oilOf('silicone', coefficient(1))],
  ['a coefficient of 0', /^coefficient$/u, () => oilOf('silicone', coefficient(0))],
  ['a frozen silicone point', /^point\.temperature$/u, () => barryLine(point(50, 1e-4))],
  ['a silicone of 0', /^point\.kinematicViscosity$/u, () => siliconeLineFromCoefficient(point(298, 0), 0.6)],
  ['a grade that does not exist', /^grade$/u, () => isoGradeViscosity(33)],
  ['a weight below the table', /^weight$/u, () => tradeWeightViscosity(9.9)],
  ['a weight above the table', /^weight$/u, () => tradeWeightViscosity(80.1)],
  ['a weight that is no number', /^weight$/u, () => tradeWeightViscosity(Number.NaN)],
  [
    'a light density',
    /^densityAt15Celsius$/u,
    () => oilOf('silicone', { kind: 'silicone', point: good }, 500),
  ],
  ['a heavy density', /^densityAt15Celsius$/u, () => oilDensity('petroleum', 300, 1400)],
  ['a hot density', /^temperature$/u, () => oilDensity('silicone', 700)],
  ['a cold expansion', /^temperature$/u, () => thermalExpansionCoefficient('silicone', 100)],
  ['a state too cold', /^temperature$/u, () => fluidAt(silicone, 199)],
  ['a state too hot', /^temperature$/u, () => fluidAt(silicone, 601)],
  ['a state at no temperature', /^temperature$/u, () => fluidAt(silicone, Number.NaN)],
  ['a petroleum line run out', /^temperature$/u, () => fluidAt(petroleum, 201)],
  ['a line at 0 K', /^temperature$/u, () => viscosityAt(petroleum.typical, 0)],
  ['a silicone line too cold', /^temperature$/u, () => viscosityAt(line, 99)],
  ['a viscosity off a silicone line', /^kinematicViscosity$/u, () => temperatureAt(line, 1e-9)],
  ['a viscosity off a Walther line', /^kinematicViscosity$/u, () => temperatureAt(petroleum.typical, 30)],
  ['Z of a thin liquid', /^kinematicViscosity$/u, () => waltherZ(2e-7)],
  ['short Z of a thin liquid', /^kinematicViscosity$/u, () => waltherZShort(2e-7)],
  ['a small Z', /^z$/u, () => kinematicViscosityOfZ(1.05)],
  ['a small short Z', /^z$/u, () => kinematicViscosityOfZShort(1.05)],
  ['an index below 2 mm²/s', /^viscosityAt100Celsius$/u, () => viscosityIndex(5e-6, 1.9e-6)],
  ['thinner at 40 than at 100 °C', /^viscosityAt40Celsius$/u, () => viscosityIndex(5e-6, 6e-6)],
  ['Saybolt of a thin liquid', /^kinematicViscosity$/u, () => sayboltUniversalSeconds(1.8e-6)],
  ['Saybolt in a furnace', /^temperature$/u, () => sayboltUniversalSeconds(1e-5, 500)],
  ['too few Saybolt seconds', /^seconds at 100 °F$/u, () => kinematicViscosityOfSayboltUniversal(31)],
  ['molar mass of a thin silicone', /^viscosityAt25Celsius$/u, () => siliconeMolarMass(10e-6)],
  ['no molar mass', /^molarMass$/u, () => siliconeViscosityOfMolarMass(0)],
  ['shares of less than 1', /^sum of all fractions$/u, () => arrheniusBlend([half(1e-4), half(1e-3, 0.4)])],
  ['no oils', /^sum of all fractions$/u, () => wrightBlend([])],
  ['a negative share', /^components\[0\]\.fraction$/u, () => astmBlend([half(1e-4, -0.5), half(1e-3, 1.5)])],
  ['an oil without viscosity', /^kinematicViscosity$/u, () => arrheniusBlend([half(0), half(1e-3)])],
  ['a gas by Refutas', /^kinematicViscosity$/u, () => refutasBlend([half(2e-7), half(1e-3)])],
  ['a thin silicone by mass', /^viscosityAt25Celsius$/u, () => molarMassBlend([half(1e-5), half(1e-3)])],
  [
    'silicone in petroleum',
    /^pair$/u,
    () => blendViscosity({ ...pairOf(petroleum), temperature: 298.15 }, 0.5),
  ],
  [
    'the share of petroleum',
    /^pair$/u,
    () => blendFraction({ ...pairOf(petroleum), temperature: 298.15 }, 3e-4),
  ],
  [
    'a share above 1',
    /^secondVolumeFraction$/u,
    () => blendViscosity({ ...pairOf(thick), temperature: 298 }, 1.1),
  ],
  [
    'a wanted viscosity too high',
    /^wanted$/u,
    () => blendFraction({ ...pairOf(thick), temperature: 298.15 }, 2e-3),
  ],
  ['a measured end', /^measured\.secondVolumeFraction$/u, () => measuredAt(0)],
  ['no measured viscosity', /^measured$/u, () => blendInteraction(0, 1e-4, 0.5)],
  ['an interaction at an end', /^secondFraction$/u, () => blendInteraction(1e-4, 1e-4, 1)],
  ['an interaction outside', /^secondFraction$/u, () => interactingBlend(1e-4, 1.2, 0.3)],
  ['soft oil', /^liquidBulkModulus$/u, () => compressAiryOil({ ...airy, liquidBulkModulus: 0 }, 1e5)],
  ['all air', /^airFraction$/u, () => compressAiryOil({ ...airy, airFraction: 1 }, 1e5)],
  ['a vacuum', /^pressure$/u, () => compressAiryOil(airy, 0)],
  [
    'a reference vacuum',
    /^referencePressure$/u,
    () => compressAiryOil({ ...airy, referencePressure: 0 }, 1e5),
  ],
  [
    'an exponent above air',
    /^polytropicExponent$/u,
    () => compressAiryOil({ ...airy, polytropicExponent: 1.5 }, 1e5),
  ],
  ['air in a frozen oil', /^temperature$/u, () => petroleumAirSolubility(200, 870)],
  ['air in a heavy oil', /^densityAt15Celsius$/u, () => petroleumAirSolubility(300, 990)],
  ['a frozen modulus', /^temperature$/u, () => siliconeBulkModulus(200)],
  ['suction for Barus', /^gaugePressure$/u, () => barusViscosityRatio(2e-8, -1)],
  ['a huge Barus coefficient', /^coefficient$/u, () => barusViscosityRatio(2e-3, 1)],
  ['a polymer without mass', /^molarMass$/u, () => rouseRelaxationTime({ ...polymer, molarMass: 0 })],
  ['a polymer at 0 K', /^temperature$/u, () => rouseRelaxationTime({ ...polymer, temperature: 0 })],
  ['a negative shear rate', /^shearRate$/u, () => shearThinningWarnings(1e-6, -1)],
];

function byIndex(at: { temperature: number; kinematicViscosity: number }, viscosityIndexValue: number) {
  return oilOf('petroleum', { kind: 'viscosity-index', point: at, viscosityIndex: viscosityIndexValue });
}

function coefficient(value: number): ViscosityDefinition {
  return { kind: 'viscosity-temperature-coefficient', point: good, coefficient: value };
}

function pairOf(second: typeof silicone) {
  return { pair: { first: silicone, second } };
}

function measuredAt(secondVolumeFraction: number) {
  const measured = { secondVolumeFraction, temperature: 298.15, kinematicViscosity: 6e-4 };
  return blendViscosity({ ...pairOf(thick), temperature: 298.15, measured }, 0.5);
}

describe('bad input is refused by name', () => {
  test.each(refused)('%s', (_, field, call) => {
    try {
      call();
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      expect((error as InputError).field).toMatch(field);
      expect((error as InputError).accepted).not.toBe('');
      return;
    }
    expect.unreachable('it was accepted');
  });
});

test('shear thinning warns above a twentieth of the inverse relaxation time', () => {
  expect(shearThinningWarnings(1e-5, 4999)).toEqual([]);
  expect(shearThinningWarnings(0, 1e9)).toEqual([]);
  const [warning] = shearThinningWarnings(1e-5, 5001);
  expect(warning).toMatchObject({ code: 'shear-thinning', value: 5001 });
  expect(warning?.limit).toBeCloseTo(5000, 6);
});
