import { type Block, defineNotebook, integer, onePart, quantity } from '../lib/page/index.js';
import { formatQuantity } from '../lib/units/index.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import { speed, temperature } from './base/quantities.js';
import { celsius, newtons, shaftSpeed } from './base/wording.js';
import { bench, type Change, holdsBack, holesText, type Shelf } from './lesson/bench.js';
import { countExperiment, diameterExperiment, temperatureExperiment } from './lesson/experiments.js';

export const notebook = defineNotebook({
  name: 'lesson',
  order: 5,
  title: 'Three experiments: predict, then look',
  question: 'What do the size of the holes, their number and the warmth of the oil do to damping?',
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
    warmer: quantity({
      ...temperature,
      label: 'Other temperature',
      help: 'Oil after the third.',
      default: 40,
    }),
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
    temperature: quantity({ ...temperature, label: 'Temperature', help: 'Oil on the bench.', default: 20 }),
    oil: onePart({ list: 'oils', label: 'Oil', help: 'The oil in the shock.' }),
    shock: onePart({ list: 'shocks', label: 'Shock', help: 'The body.' }),
    piston: onePart({ list: 'pistons', label: 'Piston', help: 'The blank that is drilled.' }),
    slow: quantity({ ...speed, label: 'Slow', help: 'A slow shaft speed.', default: 20 }),
    fast: quantity({
      ...speed,
      label: 'Fast',
      help: 'A fast shaft speed; the end of the axis.',
      default: 1000,
    }),
  },
  run(_parts, values) {
    const { oil, shock, piston, slow, fast } = values;
    const shelf: Shelf = { oil, shock, piston };
    const start: Change = {
      holeCount: values.count,
      holeDiameter: values.diameter,
      temperature: values.temperature,
    };
    const size = formatQuantity(values.diameter, 'length', 'mm', 3);
    const compared = (change: Partial<Change>, names: readonly [string, string]) => ({
      before: bench(names[0], shelf, start),
      after: bench(names[1], shelf, { ...start, ...change }),
      slow,
      fast,
    });
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
        compared({ temperature: values.warmer }, [celsius(values.temperature), celsius(values.warmer)]),
      ),
      ...workCautions.map((text): Block => ({ kind: 'caution', text })),
      { kind: 'assumptions', items: forceAssumptions },
    ];
    const base = bench(size, shelf, start);
    return {
      answer: `${holesText(values.count)} of ${size} ${values.count === 1 ? 'holds' : 'hold'} back with ${newtons(holdsBack(base, slow))} at ${shaftSpeed(slow)} and ${newtons(holdsBack(base, fast))} at ${shaftSpeed(fast)}; three changes, each to be guessed first and checked by hand.`,
      blocks,
      sources: [...forceSources, ...oilSources],
    };
  },
});
