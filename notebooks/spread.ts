import { InputError } from '../lib/base/input-error.js';
import { damperModel } from '../lib/damper/damper-model.js';
import type { TolerancedBuild, ToleranceName, Tolerances } from '../lib/decisions/spread/toleranced-build.js';
import { fluidAt } from '../lib/fluid/oil/fluid-at.js';
import { defineNotebook, integer, later, once, onePart, type Page, pageInPieces } from '../lib/page/index.js';
import { assembleShock } from '../lib/parts/assembly/assembled-shock.js';
import { forceAssumptionsWithGas, forceSources, oilSources } from './base/basis.js';
import { millilitres } from './base/bench-wording.js';
import { oilTemperature } from './base/day.js';
import { fastSpeed } from './base/fast-speed.js';
import { knownOil } from './base/known.js';
import { middleSpeed, slowSpeed } from './base/shaft-speeds.js';
import { requireSlowBelowMiddle } from './base/slow-below-fast.js';
import { speedsSentence } from './base/speed-events.js';
import { type LengthTolerances, labelOff, lengthTolerances, temperatureOff } from './base/tolerances.js';
import { celsius } from './base/wording.js';
import { shareCheck } from './spread/checks.js';
import { histogramFigure, sharesFigure } from './spread/figures.js';
import { seatSentence } from './spread/seat.js';
import { spreadTable, toleranceTable } from './spread/tables.js';
import { drawn, points, twoSpreads } from './spread/two-spreads.js';
import { wholeOilSentence } from './spread/whole-oil.js';
import { answerOf, answerPlace, measureFirst } from './spread/wording.js';

/** Part of the gas volume that a syringe and a bleed leave open, where the parts file says nothing (common practice, no source). */
const usualFillOff = 0.1;

export const notebook = defineNotebook({
  name: 'spread',
  order: 80,
  title: 'How alike four shocks from one drawing are',
  question: 'How much do my left and right shocks differ, and all of them from what I meant to build?',
  parameters: {
    build: onePart({ list: 'builds', label: 'Build', help: 'The shock that is built again and again.' }),
    temperature: oilTemperature,
    slow: slowSpeed,
    middle: middleSpeed,
    fast: fastSpeed,
    label: labelOff,
    temperatureOff,
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
    requireSlowBelowMiddle(values);
    const { lengths, fromFile } = lengthTolerances(parts);
    const fillOff = parts.tolerances?.gasVolume;
    const { assumptions, closed, damper } = assembleShock(build);
    const gasVolume = damper.gas.rooms[0]?.volume ?? 0;
    if (fillOff !== undefined && fillOff >= gasVolume)
      throw new InputError({
        field: 'gas-volume',
        value: millilitres(fillOff),
        accepted: `in tolerances, below the ${millilitres(gasVolume)} of gas that ${build.name} is closed with`,
      });
    const tolerances = deviations(lengths, {
      viscosity: values.label,
      temperature: values.temperatureOff,
      gasVolume: fillOff ?? usualFillOff * closed.gasVolume,
    });
    if (Object.keys(tolerances).length === 0)
      throw new InputError({
        field: 'tolerances',
        value: '0 for all',
        accepted: 'above 0 for at least one size, the label or the temperature',
      });
    const oil = knownOil(build.oil.definition);
    const model = once(() => damperModel(damper, fluidAt(oil, temperature)));
    const toleranced: TolerancedBuild = {
      damper,
      oil,
      temperature,
      position: build.shock.stroke / 2,
      // No spring drives a shock out as fast as a landing pushes it in.
      speeds: [-slow, -middle, fast],
      tolerances,
    };
    const spreads = twoSpreads(build, toleranced, seed);
    const { own } = spreads;
    return pageInPieces({
      answer: answerOf(spreads, toleranced.speeds),
      pieces: [
        later(() => ({ kind: 'figure', figure: histogramFigure(toleranced, spreads) })),
        later(() => (own === undefined ? [] : { kind: 'figure', figure: sharesFigure(own) })),
        later(() => spreadTable(spreads, wholeOilSentence(model(), fast))),
        later(() => toleranceTable(spreads)),
        later(() => measureFirst(own?.shares[answerPlace] ?? [])),
        later(() => shareCheck(own)),
        {
          kind: 'caution',
          text: 'Deburr and measure a piston out of the shock. Hold it in a vice, not in your hand, and keep pin gauges out of holes that are still rough.',
        },
        later(() => ({
          kind: 'assumptions',
          items: [
            `${build.name}: ${build.piston.name} in ${build.shock.name} on ${build.oil.name} at ${celsius(temperature)}, shaft half way in.`,
            speedsSentence([build], { slow, middle, fast }),
            'The oil label and the temperature are the same for all shocks of the car; every other size is each shock’s own.',
            fromFile
              ? 'The tolerances of sizes are those of the parts file; what it leaves out is exact.'
              : 'The parts file gives no tolerances of sizes, so usual ones of work by hand stand in (common practice, no source).',
            ...(fillOff === undefined
              ? ['A syringe and a bleed leave a tenth of the gas volume open (common practice, no source).']
              : []),
            'Every value within a tolerance is taken as equally likely, and one size as independent of another; all holes of a piston are off together, as one drill makes them.',
            seatSentence(toleranced, slow),
            `${drawn} builds are drawn (seed ${seed}), and left and right are any two of them; shares from ${points} base points, good to about 0.02.`,
            ...assumptions,
            ...forceAssumptionsWithGas,
          ],
        })),
      ],
      sources: [
        'Saltelli et al., Comput. Phys. Commun. 181 (2010) 259, and Jansen, Comput. Phys. Commun. 117 (1999) 35: shares of the variance.',
        'Joe & Kuo, SIAM J. Sci. Comput. 30 (2008) 2635, and Owen (1995): low-discrepancy points.',
        ...oilSources,
        ...forceSources,
      ],
    });
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
