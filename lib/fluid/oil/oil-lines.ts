import { refuse, requireRecord, requireWord } from '../../base/checks.js';
import type { Warning } from '../../base/warning.js';
import {
  barryLine,
  barryRange,
  coefficientTemperatures,
  siliconeLineFromCoefficient,
} from '../viscosity/barry-silicone.js';
import { isoGradeTemperature, isoGradeViscosity } from '../viscosity/iso-grade.js';
import { tradeWeightTemperature, tradeWeightViscosity } from '../viscosity/trade-weight.js';
import { viscosityIndexTemperatures } from '../viscosity/viscosity-index.js';
import { waltherLineFromViscosityIndex } from '../viscosity/viscosity-index-line.js';
import type { ViscosityInterval } from '../viscosity/viscosity-interval.js';
import type { ViscosityLine } from '../viscosity/viscosity-line.js';
import type { ViscosityPoint } from '../viscosity/viscosity-point.js';
import { fitWaltherLine } from '../viscosity/walther-line.js';
import type { OilBase, ViscosityDefinition } from './oil-definition.js';
import { barryWarnings, viscosityIndexWarnings, waltherWarnings } from './oil-warnings.js';

/** What the viscosity part of a definition says. */
export interface OilLines {
  /** One line, or three of an interval. */
  readonly lines: ViscosityLine | Readonly<Record<'low' | 'typical' | 'high', ViscosityLine>>;
  /** Temperatures [K] that the definition supports, in any order. */
  readonly temperatures: readonly number[];
  readonly assumptions?: readonly string[];
  readonly warnings?: readonly Warning[];
}

/** How far [K] a line is trusted beyond the temperatures it was given at; our own choice. */
const extrapolationMargin = 20;

/** Index assumed for an ISO grade that does not say: mineral oil has 95 to 105. */
const defaultViscosityIndex = 100;

const barryAssumption =
  "Barry's law of plain silicone, stated for 25 to 250 °C and 100 mm²/s or more at 25 °C.";

/** The family that a kind of definition is made for; the first two fit both. */
const familyOf: Readonly<Record<ViscosityDefinition['kind'], OilBase | undefined>> = {
  points: undefined,
  'viscosity-index': undefined,
  'viscosity-temperature-coefficient': 'silicone',
  silicone: 'silicone',
  'iso-grade': 'petroleum',
  'trade-weight': 'silicone',
};

/** Viscosity lines of a definition. */
export function oilLines(base: OilBase, viscosity: ViscosityDefinition): OilLines {
  requireRecord(viscosity, 'viscosity');
  requireWord(viscosity.kind, Object.keys(familyOf), 'viscosity.kind');
  const family = familyOf[viscosity.kind] ?? base;
  if (family !== base) {
    refuse(base, 'base', '', `${family} for ${viscosity.kind}`);
  }
  switch (viscosity.kind) {
    case 'points':
      return fromPoints(base, viscosity.points);
    case 'viscosity-index':
      return fromViscosityIndex(base, viscosity.point, viscosity.viscosityIndex);
    case 'viscosity-temperature-coefficient':
      return fromCoefficient(viscosity.point, viscosity.coefficient);
    case 'silicone':
      return fromBarry(viscosity.point);
    case 'iso-grade':
      return fromIsoGrade(viscosity.grade, viscosity.viscosityIndex);
    case 'trade-weight':
      return fromTradeWeight(viscosity.weight);
  }
}

function fromPoints(base: OilBase, points: readonly ViscosityPoint[]): OilLines {
  const fit = fitWaltherLine(points);
  return {
    lines: fit.line,
    temperatures: withMargin(points.map(({ temperature }) => temperature)),
    assumptions: points.length > 2 ? [`Least-squares line through ${points.length} points.`] : [],
    warnings: waltherWarnings(base, fit),
  };
}

function fromViscosityIndex(base: OilBase, point: ViscosityPoint, index: number): OilLines {
  return {
    lines: waltherLineFromViscosityIndex(point, index),
    temperatures: withMargin([point.temperature, ...Object.values(viscosityIndexTemperatures)]),
    warnings: viscosityIndexWarnings(base, index),
  };
}

function fromCoefficient(point: ViscosityPoint, coefficient: number): OilLines {
  return {
    lines: siliconeLineFromCoefficient(point, coefficient),
    temperatures: withMargin([point.temperature, ...Object.values(coefficientTemperatures)]),
  };
}

function fromBarry(point: ViscosityPoint): OilLines {
  const line = barryLine(point);
  const { lowestTemperature, highestTemperature } = barryRange;
  return {
    lines: line,
    temperatures: [point.temperature, lowestTemperature, highestTemperature],
    assumptions: [barryAssumption],
    warnings: barryWarnings(line),
  };
}

function fromIsoGrade(grade: number, viscosityIndex: number | undefined): OilLines {
  const index = viscosityIndex === undefined ? defaultViscosityIndex : viscosityIndex;
  const lines = intervalLines(isoGradeViscosity(grade), (kinematicViscosity) =>
    waltherLineFromViscosityIndex({ temperature: isoGradeTemperature, kinematicViscosity }, index),
  );
  const interval = `ISO VG ${grade} is an interval of ±10 % at 40 °C (ISO 3448).`;
  const assumed = `Viscosity index ${index}, since the grade tells none.`;
  return {
    lines,
    temperatures: withMargin(Object.values(viscosityIndexTemperatures)),
    assumptions: viscosityIndex === undefined ? [interval, assumed] : [interval],
    warnings: viscosityIndexWarnings('petroleum', index),
  };
}

function fromTradeWeight(weight: number): OilLines {
  const viscosity = tradeWeightViscosity(weight);
  const pointOf = (kinematicViscosity: number): ViscosityPoint => ({
    temperature: tradeWeightTemperature,
    kinematicViscosity,
  });
  const [low, high] = [viscosity.low, viscosity.high].map((value) => Math.round(value * 1e6));
  return {
    // Of the three, the thinnest is the first to leave the range of the law.
    ...fromBarry(pointOf(viscosity.low)),
    lines: intervalLines(viscosity, (value) => barryLine(pointOf(value))),
    assumptions: [
      `"${weight} wt" as ${low} to ${high} mm²/s at 25 °C: common practice, no source.`,
      barryAssumption,
    ],
  };
}

function intervalLines(viscosity: ViscosityInterval, lineOf: (kinematicViscosity: number) => ViscosityLine) {
  const { low, typical, high } = viscosity;
  return { low: lineOf(low), typical: lineOf(typical), high: lineOf(high) };
}

function withMargin(temperatures: readonly number[]): readonly number[] {
  return [Math.min(...temperatures) - extrapolationMargin, Math.max(...temperatures) + extrapolationMargin];
}
