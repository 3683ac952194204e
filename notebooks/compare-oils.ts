import { InputError } from '../lib/base/input-error.js';
import type { Warning } from '../lib/base/warning.js';
import { cavitationOnset } from '../lib/damper/cavitation-onset.js';
import { createOil } from '../lib/fluid/oil/oil.js';
import {
  type Block,
  defineNotebook,
  later,
  once,
  onePart,
  type Piece,
  pageInPieces,
  severalParts,
} from '../lib/page/index.js';
import { assembleShock } from '../lib/parts/assembly/assembled-shock.js';
import type { Build } from '../lib/parts/parts.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import { handChecks } from './base/by-hand.js';
import { buildLike, chosenBuild, modelsOf, requireGoesTogether } from './base/chosen-shock.js';
import { coldestOil, hottestOil, oilTemperature } from './base/day.js';
import { doubts } from './base/doubts.js';
import { fastSpeed } from './base/fast-speed.js';
import { pointAt } from './base/oil-forces.js';
import { middleSpeed, slowSpeed } from './base/shaft-speeds.js';
import { requireSlowBelowFast } from './base/slow-below-fast.js';
import { eventsTable, middleEvent, speedsSentence } from './base/speed-events.js';
import { celsius, listed } from './base/wording.js';
import { coldToHotFigure, forceFigures } from './compare-oils/figures.js';
import { type Conditions, type OilInShock, oilsInShock } from './compare-oils/oils.js';
import { lossSentence, nearestSentences } from './compare-oils/reading.js';
import { dayTable, forceTable, orderTable, speedTable } from './compare-oils/tables.js';

/** As many as there are colours. */
const mostShown = 7;

const thickerOil =
  'Thicker oil begins to cavitate at a lower speed, at about the same force; from there on it still pushes harder with travel. Let out by the same spring it is slower.';

export const notebook = defineNotebook({
  name: 'compare-oils',
  order: 10,
  title: 'What each oil does to your damping',
  question: 'With my piston, on a day that runs from cold to hot, what does each bottle do to my damping?',
  parameters: {
    oils: severalParts({ list: 'oils', atMost: mostShown, label: 'Oils', help: 'The oils to show.' }),
    reference: onePart({
      list: 'oils',
      label: 'Reference oil',
      help: 'The oil you know; the others are measured against it.',
    }),
    temperature: oilTemperature,
    coldest: coldestOil,
    hottest: hottestOil,
    piston: onePart({ list: 'pistons', label: 'Piston', help: 'The piston in the shock.' }),
    shock: onePart({ list: 'shocks', label: 'Shock', help: 'The body that the piston runs in.' }),
    slow: slowSpeed,
    middle: middleSpeed,
    fast: fastSpeed,
  },
  run(parts, values) {
    const at: Conditions = values;
    requireColdBelowHot(at);
    requireSlowBelowFast(at);
    const build = chosenBuild(parts, { ...values, oil: values.reference });
    requireGoesTogether(build);
    const like = buildLike(parts, values);
    const whose = like === undefined ? parts.builds : [like, ...parts.builds];
    const shown = oilsInShock(build, values.oils);
    const all = oilsInShock(build, parts.oils);
    const reference: OilInShock = { name: values.reference.name, build };
    const readings = nearestSentences(reference, all, at);
    const forces = once(() => forceFigures(shown, at));
    const pieces: readonly Piece[] = [
      later(() => ({ kind: 'figure', figure: forces()[0] })),
      later(() => ({ kind: 'figure', figure: forces()[1] })),
      later(() => notShown(all, shown)),
      later(() => ({ kind: 'figure', figure: coldToHotFigure(shown, at) })),
      later(() => forceTable(shown, at, speedsSentence(whose, at))),
      later(() => dayTable(shown, at)),
      later(() => speedTable(shown, at)),
      later(() => eventsTable(like)),
      later(() => (cavitates(build, at) ? [{ kind: 'text', text: thickerOil }] : [])),
      orderTable(shown),
      { kind: 'heading', text: 'Where to be careful' },
      later(() => doubts(shown.flatMap((oil) => warningsOf(oil, at)))),
      later(() =>
        handChecks(
          shown.map((oil) => ({ name: oil.name, model: modelsOf(oil.build, at.temperature).model })),
        ),
      ),
      ...workCautions.map((text) => ({ kind: 'caution', text }) as const),
      later(() => ({
        kind: 'assumptions',
        items: [
          `Piston ${values.piston.name} in shock ${values.shock.name}.`,
          ...shown.flatMap(({ name, build: { oil } }) =>
            createOil(oil.definition).assumptions.map((text) => `${name}: ${text}`),
          ),
          ...shown.flatMap(({ build: { oil } }) => oil.assumptions ?? []),
          ...assembleShock(build).assumptions.filter((text) => !build.oil.assumptions?.includes(text)),
          ...forceAssumptions,
        ],
      })),
    ];
    return pageInPieces({
      answer: [lossSentence(reference, at, middleEvent(whose, at.middle)), ...readings].join(' '),
      pieces,
      sources: [...oilSources, ...forceSources],
    });
  },
});

/** Whether compression cavitates in this shock at all. */
function cavitates(build: Build, { temperature }: Conditions): boolean {
  return cavitationOnset(modelsOf(build, temperature).model, 'compression', 0) !== undefined;
}

function requireColdBelowHot({ coldest, hottest }: Conditions): void {
  if (coldest < hottest) return;
  throw new InputError({
    field: 'coldest',
    value: celsius(coldest),
    accepted: `below the hottest, ${celsius(hottest)}`,
  });
}

/** Oils of the file that are not in the pictures, by name. */
function notShown(all: readonly OilInShock[], shown: readonly OilInShock[]): readonly Block[] {
  const left = all.filter(({ name }) => shown.every((oil) => oil.name !== name)).map(({ name }) => name);
  if (left.length === 0) return [];
  const text = `Not in the pictures and tables: ${listed(left)}; choose them under "Oils", ${mostShown} at a time. The answer looks at all oils of the file.`;
  return [{ kind: 'text', text }];
}

/** Warnings of an oil at the speeds that happen, cold and hot; the onset of cavitation has a table of its own. */
function warningsOf(
  { name, build }: OilInShock,
  at: Conditions,
): readonly { readonly of: string; readonly warning: Warning }[] {
  const warnings = [at.coldest, at.temperature, at.hottest].flatMap((temperature) => {
    const { model } = modelsOf(build, temperature);
    return [at.fast, -at.middle].flatMap((end) => pointAt(model, end).warnings);
  });
  return [...warnings, ...createOil(build.oil.definition).warnings]
    .filter(({ code }) => code !== 'cavitation')
    .map((warning) => ({ of: name, warning }));
}
