import { InputError } from '../lib/base/input-error.js';
import type { Warning } from '../lib/base/warning.js';
import { type Block, defineNotebook, integer, onePart, quantity, severalParts } from '../lib/page/index.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import { doubts } from './base/doubts.js';
import { modelAt, type OilCase, oilCase, pointAt, typicalDamping } from './base/oil-forces.js';
import { speed, temperature } from './base/quantities.js';
import { celsius, percent, shaftSpeed } from './base/wording.js';
import {
  type Conditions,
  coldToHotFigure,
  forceVelocityFigure,
  threeSpeedsFigure,
} from './compare-oils/figures.js';
import { lossFromColdToHot, nearestOil, nearestSentence } from './compare-oils/reading.js';
import { forceTable, orderTable } from './compare-oils/tables.js';

export const notebook = defineNotebook({
  name: 'compare-oils',
  order: 10,
  title: 'What each oil does to your damping',
  question: 'With my piston, on a day that runs from cold to hot, what does each bottle do to my damping?',
  parameters: {
    temperature: quantity({
      ...temperature,
      label: 'Oil temperature',
      help: 'Temperature of the oil for the force curves.',
      default: 20,
    }),
    coldest: quantity({ ...temperature, label: 'Coldest', help: 'Coldest oil of the day.', default: 8 }),
    hottest: quantity({ ...temperature, label: 'Hottest', help: 'Hottest oil of the day.', default: 38 }),
    piston: onePart({ list: 'pistons', label: 'Piston', help: 'The piston in the shock.' }),
    shock: onePart({ list: 'shocks', label: 'Shock', help: 'The body that the piston runs in.' }),
    oils: severalParts({ list: 'oils', atMost: 8, label: 'Oils', help: 'The oils to compare.' }),
    reference: onePart({
      list: 'oils',
      label: 'Reference oil',
      help: 'The oil you know; the others are measured against it.',
    }),
    slow: quantity({ ...speed, label: 'Slow', help: 'A slow shaft speed: roll and pitch.', default: 50 }),
    middle: quantity({ ...speed, label: 'Middle', help: 'A middle shaft speed: ripples.', default: 300 }),
    fast: quantity({
      ...speed,
      label: 'Fast',
      help: 'A fast shaft speed: landings; the end of the axis.',
      default: 1000,
    }),
    shocks: integer({ label: 'Shocks', help: 'Shocks filled at one time.', default: 4, min: 1, max: 24 }),
  },
  run(_parts, values) {
    const at: Conditions = values;
    if (!(at.coldest < at.hottest)) {
      throw new InputError({
        field: 'coldest',
        value: celsius(at.coldest),
        accepted: `below the hottest, ${celsius(at.hottest)}`,
      });
    }
    const cases = values.oils.map((oil) => oilCase(oil, values.shock, values.piston));
    const reference = oilCase(values.reference, values.shock, values.piston);
    const readings = readingsAgainst(reference, cases, at);
    const lost = lossFromColdToHot(reference, at.coldest, at.hottest, at.middle);
    const blocks: readonly Block[] = [
      { kind: 'figure', figure: forceVelocityFigure(cases, at) },
      { kind: 'figure', figure: coldToHotFigure(cases, at) },
      { kind: 'figure', figure: threeSpeedsFigure(cases, at) },
      { kind: 'heading', text: 'Read in plain words' },
      { kind: 'list', items: readings },
      forceTable(cases, at),
      orderTable(cases, values.shocks),
      { kind: 'heading', text: 'Where to be careful' },
      ...doubts(cases.flatMap((one) => warningsOf(one, at))),
      ...checks(cases, at),
      ...workCautions.map((text) => ({ kind: 'caution', text }) as const),
      {
        kind: 'assumptions',
        items: [
          `Piston ${values.piston.name} in shock ${values.shock.name}, half way down the stroke.`,
          ...cases.flatMap(({ part, oil }) => oil.assumptions.map((text) => `${part.name}: ${text}`)),
          ...forceAssumptions,
        ],
      },
    ];
    return {
      answer: `${reference.part.name} loses ${percent(lost)} of its damping from ${celsius(at.coldest)} to ${celsius(at.hottest)}. ${readings.join(' ')}`,
      blocks,
      sources: [...oilSources, ...forceSources],
    };
  },
});

/** Which oil brings the reference damping back when it is cold, and when it is hot. */
function readingsAgainst(reference: OilCase, cases: readonly OilCase[], at: Conditions): readonly string[] {
  const wanted = typicalDamping(reference, at.temperature, -at.middle);
  return [at.coldest, at.hottest].flatMap((temperature) => {
    const nearest = nearestOil(cases, temperature, -at.middle, wanted);
    if (nearest === undefined) return [];
    return [
      nearestSentence(nearest, temperature, { name: reference.part.name, temperature: at.temperature }),
    ];
  });
}

/** Warnings of an oil at the ends of the curves, cold and hot. */
function warningsOf(
  one: OilCase,
  at: Conditions,
): readonly { readonly of: string; readonly warning: Warning }[] {
  const warnings = [at.coldest, at.temperature, at.hottest].flatMap((temperature) => {
    const model = modelAt(one, temperature);
    return [at.fast, -at.fast].flatMap((end) => pointAt(model, end).warnings);
  });
  return [...warnings, ...one.oil.warnings].map((warning) => ({ of: one.part.name, warning }));
}

function checks(cases: readonly OilCase[], at: Conditions): readonly Block[] {
  const warmerIsSofter = cases.filter(
    (one) => -typicalDamping(one, at.hottest, -at.slow) < -typicalDamping(one, at.coldest, -at.slow),
  );
  const opposing = cases.filter(
    (one) =>
      typicalDamping(one, at.temperature, -at.fast) < 0 && typicalDamping(one, at.temperature, at.fast) > 0,
  );
  return [
    {
      kind: 'check',
      claim: 'Every oil damps less hot than cold',
      passed: warmerIsSofter.length === cases.length,
      detail: `${warmerIsSofter.length} of ${cases.length} oils, rebound at ${shaftSpeed(at.slow)}`,
    },
    {
      kind: 'check',
      claim: 'Damping opposes the motion in both directions',
      passed: opposing.length === cases.length,
      detail: `${opposing.length} of ${cases.length} oils at ${shaftSpeed(at.fast)}`,
    },
  ];
}
