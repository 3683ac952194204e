import { molarGasConstant } from '../../lib/base/constants.js';
import { compressAiryOil } from '../../lib/fluid/air/air-in-oil.js';
import { petroleumAirSolubility } from '../../lib/fluid/air/air-solubility.js';
import { blendFraction } from '../../lib/fluid/blend/blend.js';
import {
  arrheniusBlend,
  astmBlend,
  type BlendComponent,
  kendallMonroeBlend,
  molarMassBlend,
  polymerBlend,
  refutasBlend,
} from '../../lib/fluid/blend/blend-rules.js';
import { blendInteraction, interactingBlend } from '../../lib/fluid/blend/grunberg-nissan.js';
import { wrightBlend } from '../../lib/fluid/blend/wright-blend.js';
import { barusViscosityRatio, siliconeBulkModulus } from '../../lib/fluid/oil/bulk-modulus.js';
import { oilDensity } from '../../lib/fluid/oil/density.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { rouseRelaxationTime } from '../../lib/fluid/shear/shear-thinning.js';
import { siliconeMolarMass } from '../../lib/fluid/shear/silicone-molar-mass.js';
import {
  barryLine,
  siliconeViscosity,
  viscosityTemperatureCoefficient,
} from '../../lib/fluid/viscosity/barry-silicone.js';
import { isoGradeViscosity } from '../../lib/fluid/viscosity/iso-grade.js';
import {
  kinematicViscosityOfSayboltUniversal,
  sayboltUniversalSeconds,
} from '../../lib/fluid/viscosity/saybolt.js';
import { tradeWeightViscosity } from '../../lib/fluid/viscosity/trade-weight.js';
import { viscosityIndex } from '../../lib/fluid/viscosity/viscosity-index.js';
import { waltherLineFromViscosityIndex } from '../../lib/fluid/viscosity/viscosity-index-line.js';
import { referenceOils } from '../../lib/fluid/viscosity/viscosity-index-references.js';
import {
  kinematicViscosityOfZShort,
  waltherZ,
  waltherZShort,
} from '../../lib/fluid/viscosity/walther-function.js';
import {
  fitWaltherLine,
  type WaltherLine,
  waltherViscosity,
} from '../../lib/fluid/viscosity/walther-line.js';
import { type FluidRow, number, numbers } from './fluid-rows.js';

const kelvin = (celsius: number): number => celsius + 273.15;
const point = (celsius: number, viscosity: number) => ({
  temperature: kelvin(celsius),
  kinematicViscosity: viscosity * 1e-6,
});
const mm2s = (viscosity: number): number => viscosity * 1e6;
const temperatureOf = (row: FluidRow): number => kelvin(number(row, 't_C'));

const lineOf = (row: FluidRow): WaltherLine =>
  fitWaltherLine([
    point(number(row, 't1_C'), number(row, 'nu1')),
    point(number(row, 't2_C'), number(row, 'nu2')),
  ]).line;

/** The published sheet rounds 273.15 to 273; temperatures given to it so, the line has its constants. */
function publishedSheet(row: FluidRow): readonly number[] {
  const offset = number(row, 'offset');
  const at = (celsius: number, viscosity: number) => ({
    temperature: celsius + offset,
    kinematicViscosity: viscosity * 1e-6,
  });
  const { line } = fitWaltherLine([
    at(number(row, 't1_C'), number(row, 'nu1')),
    at(number(row, 't2_C'), number(row, 'nu2')),
  ]);
  return [line.intercept, line.slope, mm2s(waltherViscosity(line, 80 + offset))];
}

function improverFails(row: FluidRow): number {
  const { line } = fitWaltherLine([point(40, number(row, 'nu40')), point(100, number(row, 'nu100'))]);
  return mm2s(waltherViscosity(line, temperatureOf(row)));
}

const indexOf = (row: FluidRow): number =>
  viscosityIndex(number(row, 'nu40') * 1e-6, number(row, 'nu100') * 1e-6);

function referencesOf(row: FluidRow): readonly number[] {
  const { index0, index100 } = referenceOils(number(row, 'nu100'));
  return [index0, index100];
}

function solvedIndex(row: FluidRow): readonly number[] {
  const line = waltherLineFromViscosityIndex(point(40, number(row, 'nu40')), number(row, 'VI'));
  return [mm2s(waltherViscosity(line, kelvin(100))), mm2s(waltherViscosity(line, kelvin(20)))];
}

function isoGrade(row: FluidRow): readonly number[] {
  const names: Readonly<Record<string, number>> = { '2.2': 2, '3.2': 3, '4.6': 5, '6.8': 7 };
  const midpoint = number(row, 'vg_midpoint');
  const { low, high } = isoGradeViscosity(names[midpoint] ?? midpoint);
  return [mm2s(low), mm2s(high)];
}

function tradeWeight(row: FluidRow): readonly number[] {
  const { low, typical, high } = tradeWeightViscosity(number(row, 'weight'));
  return [low, typical, high].map(mm2s);
}

const blendBy =
  (rule: (components: readonly BlendComponent[]) => number) =>
  (row: FluidRow): number => {
    const viscosities = numbers(row, 'nu');
    const components = numbers(row, 'fractions').map((fraction, index) => ({
      fraction,
      kinematicViscosity: (viscosities[index] ?? 0) * 1e-6,
    }));
    return mm2s(rule(components));
  };

const half = (viscosity: number): BlendComponent => ({ fraction: 0.5, kinematicViscosity: viscosity * 1e-6 });

function measuredInteraction(row: FluidRow): number {
  const [first = 0, second = 0] = numbers(row, 'nu');
  const ideal = arrheniusBlend([half(first), half(second)]);
  return blendInteraction(number(row, 'measured_50_50') * 1e-6, ideal, 0.5);
}

function interacting(row: FluidRow): number {
  const [first = 0, second = 0] = numbers(row, 'nu');
  const fraction = number(row, 'x2');
  const ideal = arrheniusBlend([
    { fraction: 1 - fraction, kinematicViscosity: first * 1e-6 },
    { fraction, kinematicViscosity: second * 1e-6 },
  ]);
  return mm2s(interactingBlend(ideal, fraction, number(row, 'G')));
}

function wright(row: FluidRow): readonly number[] {
  const line = (name: string): WaltherLine => {
    const oil = row.inputs[name] as { readonly nu40: number; readonly nu100: number };
    return fitWaltherLine([point(40, oil.nu40), point(100, oil.nu100)]).line;
  };
  const [x1 = 0, x2 = 0] = numbers(row, 'x');
  const blend = wrightBlend([
    { fraction: x1, line: line('oil1') },
    { fraction: x2, line: line('oil2') },
  ]);
  return [40, 100].map((celsius) => mm2s(waltherViscosity(blend, kelvin(celsius))));
}

/** Two silicones of one density, so that shares by mass and by volume are the same. */
function fractions(row: FluidRow): readonly number[] {
  const [thin = 0, thick = 0] = numbers(row, 'nu');
  const oil = (viscosity: number) =>
    createOil({ base: 'silicone', viscosity: { kind: 'silicone', point: point(25, viscosity) } });
  const pair = { first: oil(thin), second: oil(thick) };
  const { rules } = blendFraction({ pair, temperature: kelvin(25) }, number(row, 'target') * 1e-6);
  return [rules.arrhenius ?? Number.NaN, rules['astm-d7152'] ?? Number.NaN];
}

function barryRatio(row: FluidRow): number {
  return siliconeViscosity(barryLine(point(25, 1)), temperatureOf(row)) * 1e6;
}

function rouse(row: FluidRow): number {
  const kinematicViscosity = number(row, 'nu25') * 1e-6;
  const molarMass = siliconeMolarMass(kinematicViscosity);
  return rouseRelaxationTime({ kinematicViscosity, molarMass, temperature: number(row, 'T') });
}

function volumeCorrection(row: FluidRow): number {
  const density = number(row, 'rho15');
  return oilDensity('petroleum', temperatureOf(row), density) / density;
}

const airyOil = (row: FluidRow) =>
  compressAiryOil(
    {
      liquidBulkModulus: number(row, 'K0'),
      airFraction: number(row, 'alpha0'),
      referencePressure: number(row, 'p0'),
      polytropicExponent: number(row, 'n'),
    },
    number(row, 'p'),
  );

/** Wylie's formula with the local share of air; equal to the modulus itself only if both are right. */
function wylie(row: FluidRow): number {
  const modulus = number(row, 'K0');
  const { airFraction } = airyOil(row);
  return modulus / (1 + airFraction * (modulus / (number(row, 'n') * number(row, 'p')) - 1));
}

/** Which code answers which rows. */
export const fluidFunctions: readonly [
  pattern: RegExp,
  compute: (row: FluidRow) => number | readonly number[],
][] = [
  [/^d341_Zfull_/u, (row) => waltherZ(number(row, 'nu_mm2s') / 1e6)],
  [/^d341_Zshort_/u, (row) => waltherZShort(number(row, 'nu_mm2s') / 1e6)],
  [/^d341_inv_short_/u, (row) => mm2s(kinematicViscosityOfZShort(number(row, 'Z_mm2s')))],
  [/^d341_A_/u, (row) => lineOf(row).intercept],
  [/^d341_B_/u, (row) => lineOf(row).slope],
  [/^d341_nu/u, (row) => mm2s(waltherViscosity(lineOf(row), temperatureOf(row)))],
  [/^d341_published_sheet$/u, publishedSheet],
  [/^walther_fails_/u, improverFails],
  [/^d2270_(?:VIpoly|printed|VI_13\.5)/u, indexOf],
  [/^d2270_(?:tab|LH)_/u, referencesOf],
  [/^d2270_solve_/u, solvedIndex],
  [/^d2161_sus_/u, (row) => sayboltUniversalSeconds(number(row, 'nu') * 1e-6)],
  [/^(?:d2161_inv|hi_table)_/u, (row) => mm2s(kinematicViscosityOfSayboltUniversal(number(row, 'SUS')))],
  [
    /^d2161_210F$/u,
    (row) =>
      (number(row, 'multiplier_100F') * sayboltUniversalSeconds(1e-4, (number(row, 't_F') + 459.67) / 1.8)) /
      sayboltUniversalSeconds(1e-4),
  ],
  [/^iso3448_/u, isoGrade],
  [/^trade_weight_/u, tradeWeight],
  [/^blend_astm_/u, blendBy(astmBlend)],
  [/^blend_refutas_|^refutas_/u, blendBy(refutasBlend)],
  [/^blend_arrhenius_/u, blendBy(arrheniusBlend)],
  [/^blend_kendall_monroe_/u, blendBy(kendallMonroeBlend)],
  [/^blend_power_3p4_/u, blendBy(polymerBlend)],
  [/^blend_barry_M_/u, blendBy(molarMassBlend)],
  [/^blend_grunberg_nissan_fit$/u, measuredInteraction],
  [/^blend_grunberg_nissan_pred$/u, interacting],
  [/^blend_wright_/u, wright],
  [/^blend_fraction_/u, fractions],
  [/^pdms_barry_ratio_/u, barryRatio],
  [/^pdms_barry_E$/u, () => barryLine(point(25, 1)).slope * Math.LN10 * molarGasConstant],
  [/^pdms_vtc$/u, () => viscosityTemperatureCoefficient(barryLine(point(25, 350)))],
  [/^pdms_M_/u, (row) => 1000 * siliconeMolarMass(number(row, 'nu25') * 1e-6)],
  [/^pdms_rho_/u, (row) => oilDensity('silicone', temperatureOf(row))],
  [/^pdms_KT_/u, (row) => siliconeBulkModulus(temperatureOf(row))],
  [/^pdms_rouse_/u, rouse],
  [/^d1250_54D_/u, volumeCorrection],
  [/^d2779_air_/u, (row) => petroleumAirSolubility(temperatureOf(row), 1000 * number(row, 'd15'))],
  [/^barus_/u, (row) => barusViscosityRatio(number(row, 'alpha'), number(row, 'p'))],
  [/^keff_[\d.]/u, (row) => airyOil(row).bulkModulus],
  [/^keff_wylie$/u, wylie],
];

/** Rows that no code answers, with the reason. */
export const notCovered: Readonly<Record<string, string>> = {
  d341_A_10_2p63: 'plain form Z = ν + 0.7; the library has the full form only, which differs here by 2e-5',
  d341_B_10_2p63: 'the same',
  d341_nu15_10_2p63: 'the same',
  d341_nu0_30_5p23: 'the same: the term C moves it by 1.2e-7, the row allows 1e-7',
  pdms10_walther_lsq_wide:
    'the same: points down to 2 mm²/s; test/published/fluid-reference.slow.test.ts fits the full form',
  'd2270_VI_22.83_5.05':
    'by table 1; the library has the piecewise quadratics, rows d2270_VIpoly and d2270_printed',
  'd2270_VI_53.47_7.8': 'the same',
  'd2270_L_8.86': 'the same; every row of table 1 is a test of its own',
  'd2270_H_8.86': 'the same',
  pdms10_arrhenius: 'an Arrhenius line fitted to points; the library has it through one point only',
  pdms10_vft: 'the Vogel-Fulcher-Tammann equation is not part of the library',
  pdms_Ks: 'the identity ρ c² is not part of the library',
};
