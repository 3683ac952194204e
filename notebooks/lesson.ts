import { type Block, defineNotebook, integer, onePart, quantity } from '../lib/page/index.js';
import { formatQuantity } from '../lib/units/index.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import { chosenBuild } from './base/chosen-shock.js';
import { hottestOil, oilTemperature } from './base/day.js';
import { measuringCautions } from './base/measured-shocks.js';
import { motionLimits, motionSources } from './base/moving-build.js';
import { requireRunsIn } from './base/piston-in-bore.js';
import { middleSpeed, slowSpeed } from './base/shaft-speeds.js';
import { requireSlowBelowMiddle } from './base/slow-below-fast.js';
import { celsius, newtons, shaftSpeed } from './base/wording.js';
import { atWork } from './lesson/at-work.js';
import { bench, type Change, holdsBack, holesText } from './lesson/bench.js';
import { countExperiment, diameterExperiment, temperatureExperiment } from './lesson/experiments.js';
import { twoWeightsExperiment } from './lesson/two-weights.js';

export const notebook = defineNotebook({
  name: 'lesson',
  order: 5,
  title: 'Four experiments: predict, then look',
  question:
    'What do the size of the holes, their number and the warmth of the oil do to damping, and why are two weights hung on a shock?',
  parameters: {
    wider: quantity({
      dimension: 'length',
      unit: 'mm',
      default: 2,
      min: 0.5,
      max: 3,
      step: 0.05,
      label: 'Other hole diameter',
      help: 'Hole diameter after the first experiment.',
    }),
    more: integer({
      label: 'Other hole count',
      help: 'Holes after the second.',
      default: 4,
      min: 1,
      max: 12,
    }),
    hottest: hottestOil,
    diameter: quantity({
      dimension: 'length',
      unit: 'mm',
      default: 1.6,
      min: 0.5,
      max: 3,
      step: 0.05,
      label: 'Hole diameter',
      help: 'Hole diameter on the bench.',
    }),
    count: integer({ label: 'Holes', help: 'Holes on the bench.', default: 2, min: 1, max: 12 }),
    temperature: oilTemperature,
    oil: onePart({ list: 'oils', label: 'Oil', help: 'The oil in the shock.' }),
    shock: onePart({ list: 'shocks', label: 'Shock', help: 'The body.' }),
    piston: onePart({ list: 'pistons', label: 'Piston', help: 'The blank that is drilled.' }),
    slow: slowSpeed,
    middle: middleSpeed,
  },
  run(parts, values) {
    const { oil, shock, piston, slow, middle } = values;
    requireSlowBelowMiddle(values);
    requireRunsIn(piston, shock);
    const build = chosenBuild(parts, values);
    const start: Change = {
      holeCount: values.count,
      holeDiameter: values.diameter,
      temperature: values.temperature,
    };
    const size = formatQuantity(values.diameter, 'length', 'mm', 3);
    const compared = (change: Partial<Change>, names: readonly [string, string]) => ({
      before: bench(names[0], build, start),
      after: bench(names[1], build, { ...start, ...change }),
      slow,
      middle,
    });
    const base = bench(size, build, start);
    const wider = formatQuantity(values.wider, 'length', 'mm', 3);
    const blocks: readonly Block[] = [
      {
        kind: 'text',
        text: `On the bench: ${oil.name} at ${celsius(values.temperature)} in ${shock.name}, a piston as thick as ${piston.name} with holes in it, straight and with sharp edges. Write your guess down before you look.`,
      },
      { kind: 'heading', text: 'Hole diameter' },
      diameterExperiment(compared({ holeDiameter: values.wider }, [size, wider])),
      { kind: 'heading', text: 'Hole count' },
      countExperiment(
        compared({ holeCount: values.more }, [holesText(values.count), holesText(values.more)]),
      ),
      { kind: 'heading', text: 'Oil temperature' },
      temperatureExperiment(
        compared({ temperature: values.hottest }, [celsius(values.temperature), celsius(values.hottest)]),
      ),
      ...atWork(base, values.temperature, middle),
      { kind: 'heading', text: 'Two weights' },
      twoWeightsExperiment(build, base, values.temperature),
      { kind: 'caution', text: measuringCautions },
      ...workCautions.map((text): Block => ({ kind: 'caution', text })),
      { kind: 'assumptions', items: [...forceAssumptions, ...motionLimits] },
    ];
    return {
      answer: `In rebound ${holesText(values.count)} of ${size} ${values.count === 1 ? 'holds' : 'hold'} back with ${newtons(holdsBack(base, slow))} at ${shaftSpeed(slow)} and ${newtons(holdsBack(base, middle))} at ${shaftSpeed(middle)}; three changes and two weights, each to be guessed first and checked by hand.`,
      blocks,
      sources: [...forceSources, ...oilSources, ...motionSources],
    };
  },
});
