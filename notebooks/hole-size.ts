import { type Block, defineNotebook, onePart, quantity, type TableBlock } from '../lib/page/index.js';
import { formatQuantity } from '../lib/units/index.js';
import { forceAssumptionsOfOtherHoles, forceSources, oilSources, workCautions } from './base/basis.js';
import { modelAt, oilCase } from './base/oil-forces.js';
import { oilTemperature, speed } from './base/quantities.js';
import { celsius, percent, shaftSpeed } from './base/wording.js';
import { holeChecks } from './hole-size/checks.js';
import { drillFigure, exponentFigure, shapeFigure } from './hole-size/figures.js';
import {
  chamferDepth,
  dampingAtSpeed,
  drilled,
  type ShapeCase,
  shapeCases,
  taperWidening,
} from './hole-size/shaped.js';

export const notebook = defineNotebook({
  name: 'hole-size',
  order: 8,
  title: 'What the drill does to your damping',
  question: 'What do 0.05 mm of drill, a chamfer or a taper do to my damping?',
  parameters: {
    piston: onePart({ list: 'pistons', label: 'Piston', help: 'The piston that is drilled.' }),
    drill: quantity({
      dimension: 'length',
      unit: 'mm',
      default: 0.05,
      min: 0.01,
      max: 0.3,
      step: 0.01,
      label: 'Larger by',
      help: 'How much larger each hole is drilled.',
    }),
    oil: onePart({ list: 'oils', label: 'Oil', help: 'The oil in the shock.' }),
    temperature: oilTemperature,
    shock: onePart({ list: 'shocks', label: 'Shock', help: 'The body that the piston runs in.' }),
    slow: quantity({ ...speed, label: 'Slow', help: 'A slow shaft speed: roll and pitch.', default: 50 }),
    fast: quantity({
      ...speed,
      label: 'Fast',
      help: 'A fast shaft speed: landings; the end of the axis.',
      default: 1000,
    }),
  },
  run(_parts, values) {
    const { piston, drill, oil, temperature, shock, slow, fast } = values;
    const model = modelAt(oilCase(oil, shock, piston), temperature);
    if (piston.piston.holes.length === 0) {
      return { answer: `${piston.name} has no holes to drill.`, blocks: [], sources: [] };
    }
    const cases = shapeCases(model);
    const lost = (at: number) => 1 - dampingAtSpeed(drilled(model, drill), -at) / dampingAtSpeed(model, -at);
    const drillText = formatQuantity(drill, 'length', 'mm', 2);
    const blocks: readonly Block[] = [
      { kind: 'figure', figure: drillFigure(model, slow, fast, drill) },
      {
        kind: 'text',
        text: 'The pressure that pushes a given flow through a hole falls with the fourth power of its diameter, or nearly: twice the hole, a sixteenth of the pressure. A drill that cuts a little oversize, or a hole with flash in it, shows.',
      },
      { kind: 'figure', figure: exponentFigure(model, fast) },
      {
        kind: 'text',
        text: 'Slow oil is held back by the wall all along the hole, and a wider hole helps with its area and with its distance from the wall: 4 percent for each percent, less what the ends take. Fast oil is held back by its own weight, and only the area helps: 2 percent. That is why a piston can be right when it rolls and wrong when it lands.',
      },
      { kind: 'heading', text: 'Same drill, other shape' },
      { kind: 'figure', figure: shapeFigure(cases, fast) },
      shapeTable(cases, slow, fast),
      {
        kind: 'text',
        text: `The chamfer is 45° and ${formatQuantity(chamferDepth, 'length', 'mm', 2)} deep, the taper ${formatQuantity(taperWidening, 'length', 'mm', 2)} wider at one face. A taper is softer both ways since it is wider; beyond that, oil that runs into the wide end leaves the narrow one as a fast jet and loses all of it, while oil that runs the other way slows down on its way out.`,
      },
      ...holeChecks(model, cases, [slow, (slow + fast) / 2, fast], drill),
      ...workCautions.map((text): Block => ({ kind: 'caution', text })),
      {
        kind: 'assumptions',
        items: [
          `Piston ${piston.name} in shock ${shock.name} with ${oil.name} at ${celsius(temperature)}; drilling takes away nothing else, and no burr is left.`,
          'These curves leave out that the oil can tear in compression; the notebook on limits is about that.',
          'Laws of shaped holes are within 3 percent (edges) and 8 percent (tapers, steps) of our own numerical solutions up to a hole Reynolds number of 300.',
          ...forceAssumptionsOfOtherHoles,
        ],
      },
    ];
    return {
      answer: `Drilled ${drillText} larger, the holes of ${piston.name} lose ${percent(lost(slow))} of the damping at ${shaftSpeed(slow)} and ${percent(lost(fast))} at ${shaftSpeed(fast)}.`,
      blocks,
      sources: [...forceSources, ...oilSources],
    };
  },
});

function shapeTable(cases: readonly ShapeCase[], slow: number, fast: number): TableBlock {
  const columns = [slow, fast].flatMap((at) =>
    ['Compression', 'Rebound'].map((way) => ({
      label: `${way} at ${shaftSpeed(at)}`,
      unit: 'N',
      dimension: 'force' as const,
    })),
  );
  return {
    kind: 'table',
    id: 'shapes-in-numbers',
    title: 'The shapes in numbers',
    note: 'The blind side is the closed end of the body; compression pushes oil from there to the shaft side.',
    table: {
      columns: [{ label: 'Hole', unit: '' }, ...columns],
      rows: cases.map(({ name, model }) => [
        name,
        ...[slow, -slow, fast, -fast].map((at) => Math.abs(dampingAtSpeed(model, at))),
      ]),
    },
  };
}
