import { InputError } from '../lib/base/input-error.js';
import { finish } from '../lib/decisions/search/search.js';
import {
  type ForceSpread,
  forceSpread,
  type ToleranceShare,
  toleranceShares,
} from '../lib/decisions/spread/force-spread.js';
import type { TolerancedBuild, ToleranceName, Tolerances } from '../lib/decisions/spread/toleranced-build.js';
import { createOil } from '../lib/fluid/oil/oil.js';
import { defineNotebook, integer, onePart, type Page, quantity } from '../lib/page/index.js';
import { assembleShock } from '../lib/parts/assembly/assembled-shock.js';
import { forceAssumptionsWithGas, forceSources, oilSources } from './base/basis.js';
import { speed } from './base/quantities.js';
import { type LengthTolerances, labelOff, lengthTolerances, temperatureOff } from './base/tolerances.js';
import { celsius, newtons, percent, shaftSpeed } from './base/wording.js';
import { histogramFigure, sharesFigure } from './spread/figures.js';
import { spreadTable, toleranceTable } from './spread/tables.js';
import { measureFirst, plainName } from './spread/wording.js';

/** Part of the gas volume that a syringe and a bleed leave open, where the parts file says nothing (common practice, no source). */
const usualFillOff = 0.1;

/** Builds drawn for the histogram and base points for the shares: enough for two digits. */
const drawn = 2048;
const points = 256;

export const notebook = defineNotebook({
  name: 'spread',
  order: 80,
  title: 'How alike four shocks from one drawing are',
  question: 'How much do my shocks differ from what I meant to build, and which size should I measure first?',
  parameters: {
    build: onePart({ list: 'builds', label: 'Build', help: 'The shock that is built again and again.' }),
    temperature: quantity({
      dimension: 'temperature',
      unit: '°C',
      label: 'Oil temperature',
      help: 'Temperature of the oil.',
      default: 20,
      min: -20,
      max: 60,
      step: 1,
    }),
    slow: quantity({ ...speed, label: 'Slow', help: 'A slow shaft speed in rebound.', default: 50 }),
    middle: quantity({
      ...speed,
      label: 'Middle',
      help: 'The shaft speed of the answer, in rebound.',
      default: 300,
    }),
    fast: quantity({ ...speed, label: 'Fast', help: 'A fast shaft speed in rebound.', default: 1000 }),
    label: labelOff,
    warmer: temperatureOff,
    seed: integer({
      label: 'Seed',
      help: 'Another number draws other builds; the same number the same ones.',
      default: 1,
      min: 1,
      max: 1_000_000,
    }),
  },
  run(parts, values): Page {
    const { build, temperature, slow, middle, fast, seed } = values;
    const { lengths, fromFile } = lengthTolerances(parts);
    const fillOff = parts.tolerances?.gasVolume;
    const tolerances = deviations(lengths, {
      viscosity: values.label,
      temperature: values.warmer,
      gasVolume: fillOff ?? usualFillOff * assembleShock(build).closed.gasVolume,
    });
    if (Object.keys(tolerances).length === 0)
      throw new InputError({
        field: 'tolerances',
        value: '0 for all',
        accepted: 'above 0 for at least one size, the label or the temperature',
      });
    const toleranced: TolerancedBuild = {
      damper: assembleShock(build).damper,
      oil: createOil(build.oil.definition),
      temperature,
      position: build.shock.stroke / 2,
      speeds: [-slow, -middle, -fast],
      tolerances,
    };
    const drawing = { count: drawn, seed, sampling: 'low-discrepancy' } as const;
    const spreads = finish(forceSpread(toleranced, drawing));
    const shares = finish(toleranceShares(toleranced, points, seed));
    return {
      answer: answerOf(spreads[1], shares[1] ?? [], middle),
      blocks: [
        { kind: 'figure', figure: histogramFigure(toleranced, drawing, spreads[1]) },
        { kind: 'figure', figure: sharesFigure(toleranced, shares) },
        spreadTable(spreads),
        toleranceTable(toleranced, shares[1] ?? []),
        ...measureFirst(shares[1] ?? []),
        sumCheck(shares[1] ?? [], middle),
        {
          kind: 'caution',
          text: 'Deburr and measure a piston out of the shock. Hold it in a vice, not in your hand, and keep pin gauges out of holes that are still rough.',
        },
        {
          kind: 'assumptions',
          items: [
            `${build.name}: ${build.piston.name} in ${build.shock.name} on ${build.oil.name} at ${celsius(temperature)}, shaft half way in, rebound.`,
            fromFile
              ? 'The tolerances of sizes are those of the parts file; what it leaves out is exact.'
              : 'The parts file gives no tolerances of sizes, so usual ones of work by hand stand in (common practice, no source).',
            ...(fillOff === undefined
              ? ['A syringe and a bleed leave a tenth of the gas volume open (common practice, no source).']
              : []),
            'Every value within a tolerance is taken as equally likely, and one size as independent of another; all holes of a piston are off together, as one drill makes them.',
            `${drawn} builds are drawn (scrambled Sobol sequence, seed ${seed}); shares from ${points} base points, good to about 0.02.`,
            ...forceAssumptionsWithGas,
          ],
        },
      ],
      sources: [
        'Saltelli et al., Comput. Phys. Commun. 181 (2010) 259, and Jansen, Comput. Phys. Commun. 117 (1999) 35: shares of the variance.',
        'Joe & Kuo, SIAM J. Sci. Comput. 30 (2008) 2635, and Owen (1995): low-discrepancy points.',
        ...oilSources,
        ...forceSources,
      ],
    };
  },
});

function deviations(
  lengths: LengthTolerances,
  others: Readonly<Record<'viscosity' | 'temperature' | 'gasVolume', number>>,
): Tolerances {
  const halfWidths: Readonly<Partial<Record<ToleranceName, number>>> = { ...lengths, ...others };
  return Object.fromEntries(
    Object.entries(halfWidths)
      .filter(([, halfWidth]) => halfWidth > 0)
      .map(([name, halfWidth]) => [name, { kind: 'uniform', halfWidth }]),
  );
}

function largest(shares: readonly ToleranceShare[]): ToleranceShare | undefined {
  return [...shares].sort((a, b) => b.total - a.total)[0];
}

function answerOf(
  spread: ForceSpread | undefined,
  shares: readonly ToleranceShare[],
  speedShown: number,
): string {
  const top = largest(shares);
  if (spread === undefined || top === undefined) return 'No size is off, so every shock is the same.';
  const width = (spread.low - spread.high) / spread.median / 2;
  return `Nine of ten shocks from this drawing hold back with ${newtons(-spread.high)} to ${newtons(-spread.low)} at ${shaftSpeed(speedShown)}, ±${percent(Math.abs(width))}; ${plainName(top.name)} causes ${percent(top.total)} of that spread, so measure it first.`;
}

function sumCheck(shares: readonly ToleranceShare[], speedShown: number) {
  const sum = shares.reduce((total, { first }) => total + first, 0);
  return {
    kind: 'check',
    claim: 'The sizes by themselves explain the spread',
    passed: Math.abs(sum - 1) < 0.1,
    detail: `shares at ${shaftSpeed(speedShown)} add up to ${percent(sum)}; what is missing is interaction and chance`,
  } as const;
}
