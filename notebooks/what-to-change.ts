import { InputError } from '../lib/base/input-error.js';
import { choice, defineNotebook, later, onePart, type Piece, pageInPieces } from '../lib/page/index.js';
import { assembleShock } from '../lib/parts/index.js';
import { forceAssumptions, forceSources, oilSources } from './base/basis.js';
import { benchOil } from './base/bench.js';
import { handChecks } from './base/by-hand.js';
import { modelsOf } from './base/chosen-shock.js';
import { oilTemperature } from './base/day.js';
import { dropOfWheel } from './base/drop.js';
import { fastSpeed } from './base/fast-speed.js';
import { benchCautions } from './base/fill-basis.js';
import { cornerOf, motionAssumptions, motionSources } from './base/moving-build.js';
import { slowSpeed } from './base/shaft-speeds.js';
import { requireSlowBelowFast } from './base/slow-below-fast.js';
import { speedsSentence } from './base/speed-events.js';
import { celsius, listed } from './base/wording.js';
import { changesOf } from './what-to-change/changes.js';
import { effectsOf, measured } from './what-to-change/effects.js';
import { changesFigure } from './what-to-change/figure.js';
import { symptomNames, symptoms } from './what-to-change/symptoms.js';
import { answerOf, changesTable } from './what-to-change/words.js';

export const notebook = defineNotebook({
  name: 'what-to-change',
  order: 48,
  title: 'What to change',
  question: 'The car does something I do not like: what would each change at the bench do to this shock?',
  parameters: {
    build: onePart({
      list: 'builds',
      label: 'Build',
      help: 'The shock to change, with its spring and corner.',
    }),
    symptom: choice({
      label: 'The car',
      help: 'What the car does; which changes go with it is common practice, no source.',
      options: symptomNames,
      default: 'bottoms on landings',
    }),
    temperature: oilTemperature,
    bench: benchOil,
    slow: slowSpeed,
    fast: fastSpeed,
    drop: dropOfWheel,
  },
  run(parts, { build, symptom: name, ...at }) {
    requireSlowBelowFast(at);
    const symptom = symptoms[name];
    const [first] = symptom.asks;
    if (first === undefined)
      throw new InputError({ field: 'symptom', value: name, accepted: 'one that asks for something' });
    // Without a spring nothing lands; what the symptom asks for next leads.
    const asks =
      build.spring === undefined ? symptom.asks.filter(({ measure }) => measure !== 'left') : symptom.asks;
    const leading = asks[0] ?? first;
    const before = measured(build, at);
    const { changes, missing } = changesOf(parts, build, at.temperature);
    const { effects, impossible } = effectsOf(changes, before, { ...symptom, asks }, at);
    const answer = answerOf(build.name, name, leading.measure, before, effects);
    const left = [...missing, ...impossible.map((change) => `"${change}" cannot be filled so`)];
    const { corner, guesses } =
      build.spring === undefined ? { corner: undefined, guesses: [] } : cornerOf(build);
    const pieces: readonly Piece[] = [
      later(() =>
        effects.length === 0 ? [] : { kind: 'figure', figure: changesFigure(before, effects, answer) },
      ),
      later(() => (effects.length === 0 ? [] : changesTable(before, effects, name, at))),
      {
        kind: 'text',
        text: `Where a car ${name}, this page takes it to ask for ${symptom.words}: common practice, no source. "Helps" and "works against it" mean no more than that a change gives or takes that; 1 %, 0.1 mm and 1 g count as nothing.`,
      },
      later(() =>
        corner === undefined
          ? {
              kind: 'text',
              text: `Nothing can land: ${build.name} names no "spring". Add one to the build and to the list springs, for example { name: soft, rate: 0.60 N/mm, free-length: 42 mm }.`,
            }
          : [],
      ),
      later(() => (left.length === 0 ? [] : { kind: 'text', text: `Not tried: ${listed(left)}.` })),
      {
        kind: 'text',
        text: 'Change one thing at a time, and drive before the next. A hole that is drilled does not come back: try oil first.',
      },
      later(() =>
        handChecks(
          changes
            .filter((change) => change.build.piston !== build.piston || change.build.oil !== build.oil)
            .map((change) => ({ name: change.name, model: modelsOf(change.build, at.temperature).model })),
        ),
      ),
      ...benchCautions.map((text) => ({ kind: 'caution', text }) as const),
      later(() => ({
        kind: 'assumptions',
        items: [
          `${build.name} on ${build.oil.name} at ${celsius(at.temperature)}; each change by itself, all else as it is.`,
          speedsSentence([build], { slow: at.slow, fast: at.fast }),
          'Drilled holes keep their shape. The limiter takes its length off the stroke at its outer end.',
          'Of a spring only the rate counts: whether it is as wide and as long as the shock needs is not looked at.',
          ...guesses,
          ...assembleShock(build).assumptions,
          ...forceAssumptions,
          ...(corner === undefined ? [] : motionAssumptions),
        ],
      })),
    ];
    return pageInPieces({ answer, pieces, sources: [...forceSources, ...oilSources, ...motionSources] });
  },
});
