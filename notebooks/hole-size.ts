import { InputError } from '../lib/base/input-error.js';
import type { DamperModel } from '../lib/damper/damper-model.js';
import { type Block, defineNotebook, onePart, quantity, type TableBlock } from '../lib/page/index.js';
import { formatQuantity, roundedText } from '../lib/units/index.js';
import { forceAssumptionsOfOtherHoles, forceSources, oilSources, workCautions } from './base/basis.js';
import { handChecks } from './base/by-hand.js';
import { chosenBuild, modelsOf, requireGoesTogether } from './base/chosen-shock.js';
import { oilTemperature } from './base/day.js';
import { middleSpeed, slowSpeed } from './base/shaft-speeds.js';
import { requireSlowBelowMiddle } from './base/slow-below-fast.js';
import { celsius, percent, shaftSpeed } from './base/wording.js';
import { drillFigure, exponentFigure, shapeFigure } from './hole-size/figures.js';
import {
  chamferDepth,
  dampingAtSpeed,
  drilled,
  dropAt,
  flowExponent,
  lostTo,
  type ShapeCase,
  shapeCases,
  taperWidening,
} from './hole-size/shaped.js';

const millimetres = (length: number): string => formatQuantity(length, 'length', 'mm', 2);

export const notebook = defineNotebook({
  name: 'hole-size',
  order: 8,
  title: 'What the drill does to your damping',
  question: 'What do a few hundredths of drill, a chamfer or a taper do to my damping?',
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
    slow: slowSpeed,
    middle: middleSpeed,
  },
  run(parts, values) {
    const { piston, drill, oil, temperature, shock, slow, middle } = values;
    requireSlowBelowMiddle(values);
    const build = chosenBuild(parts, values);
    requireGoesTogether(build);
    const { model } = modelsOf(build, temperature);
    if (piston.piston.holes.length === 0)
      return {
        answer: `${piston.name} has no holes to drill: choose another piston.`,
        blocks: [],
        sources: [],
      };
    requireRoomFor(model, drill);
    const cases = shapeCases(model);
    const [sharp] = cases;
    const lost = (at: number) => percent(lostTo(model, drill, at));
    const exponent = (at: number) => roundedText(flowExponent(model, dropAt(model, at)), 2);
    const blocks: readonly Block[] = [
      { kind: 'figure', figure: drillFigure(model, [slow, middle], drill) },
      ...drillError(parts.tolerances?.holeDiameter, model, slow),
      { kind: 'figure', figure: exponentFigure(model, middle) },
      {
        kind: 'text',
        text: `Slow oil is held back by the wall all along a hole: a wider round hole helps with its area and with the distance from its wall, together 4 percent of flow for each percent of diameter, less what the ends and the gap take. The faster the oil, the more of the pressure goes into speeding it up, and for that only the area counts: 2 percent. With this piston and oil it is ${exponent(slow)} percent at the pressure of ${shaftSpeed(slow)} and ${exponent(middle)} percent at that of ${shaftSpeed(middle)}.`,
      },
      { kind: 'heading', text: 'Same drill, other shape' },
      ...(sharp === undefined
        ? [{ kind: 'text', text: 'The holes of this piston take no other shape.' } as const]
        : shapes(cases, model, slow, middle)),
      ...(sharp === undefined
        ? []
        : handChecks([
            { name: 'sharp and straight', model: sharp.model },
            { name: 'sharp, straight and drilled', model: drilled(sharp.model, drill) },
          ])),
      ...workCautions.map((text): Block => ({ kind: 'caution', text })),
      {
        kind: 'caution',
        text: 'Hold a piston in a vice or a pin vice, never between fingers, and wear eye protection when you drill.',
      },
      {
        kind: 'assumptions',
        items: [
          `Piston ${piston.name} in shock ${shock.name} with ${oil.name} at ${celsius(temperature)}; drilling takes away nothing else, and no burr is left.`,
          'The forces are those of whole oil; where cavitation begins in compression is the question of another page.',
          'Laws of shaped holes are within 3 percent (edges) and 8 percent (tapers, steps) of our own numerical solutions up to a hole Reynolds number of 300.',
          ...forceAssumptionsOfOtherHoles,
        ],
      },
    ];
    return {
      answer: `Drilled ${millimetres(drill)} larger, the holes of ${piston.name} lose ${lost(slow)} of the rebound damping at ${shaftSpeed(slow)} and ${lost(middle)} at ${shaftSpeed(middle)}.`,
      blocks,
      sources: [...forceSources, ...oilSources],
    };
  },
});

/** Refuses a drill for which the piston has no room, in words of the bench. */
function requireRoomFor(model: DamperModel, drill: number): void {
  try {
    drilled(model, drill);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError({
      field: 'drill',
      value: millimetres(drill),
      accepted: 'less: the holes would not fit the piston, its discs or the body any more',
    });
  }
}

/** What the error of the drill that the file states is worth. */
function drillError(error: number | undefined, model: DamperModel, slow: number): readonly Block[] {
  if (error === undefined || error === 0) return [];
  const smallest = Math.min(...model.damper.piston.holes.map(({ diameter }) => diameter));
  if (error >= smallest) return [];
  const [more, less] = [-lostTo(model, -error, slow), lostTo(model, error, slow)];
  return [
    {
      kind: 'text',
      text: `The file lets the drill be off by ${millimetres(error)}: at ${shaftSpeed(slow)} in rebound that is ${percent(less)} less damping where it cuts wide and ${percent(more)} more where it cuts narrow.`,
    },
  ];
}

function shapes(
  cases: readonly ShapeCase[],
  { damper }: DamperModel,
  slow: number,
  middle: number,
): readonly Block[] {
  return [
    { kind: 'figure', figure: shapeFigure(cases, middle) },
    shapeTable(cases, slow, middle),
    {
      kind: 'text',
      text: `Each hole as wide as at its narrowest now. The chamfer is 45° and ${millimetres(chamferDepth(damper.piston))} deep, the taper ${millimetres(taperWidening)} wider at one face. A taper is softer both ways since it is wider. Which way it points hardly matters to slow oil, and more the faster it runs: running into the wide end it leaves the narrow one as a jet and loses all of its speed, and that is harder than the other way, in which it slows down on its way out.`,
    },
  ];
}

function shapeTable(cases: readonly ShapeCase[], slow: number, middle: number): TableBlock {
  const column = (label: string) => ({ label, unit: 'N', dimension: 'force' as const });
  return {
    kind: 'table',
    id: 'shapes-in-numbers',
    title: 'The shapes in numbers',
    note: `Slow is ${shaftSpeed(slow)}, middle ${shaftSpeed(middle)}. The blind side is the closed end of the body; pushed in, oil runs from there to the shaft side.`,
    table: {
      columns: [
        { label: 'Hole', unit: '' },
        ...['slow', 'middle'].flatMap((at) => [column(`Pushed in, ${at}`), column(`Let out, ${at}`)]),
      ],
      rows: cases.map(({ name, model }) => [
        name,
        ...[slow, -slow, middle, -middle].map((at) => Math.abs(dampingAtSpeed(model, at))),
      ]),
    },
  };
}
