import { InputError } from '../lib/base/input-error.js';
import {
  type Block,
  type ChecklistBlock,
  defineNotebook,
  integer,
  onePart,
  quantity,
} from '../lib/page/index.js';
import { formatQuantity } from '../lib/units/index.js';
import { benchOil } from './base/bench.js';
import { coldestOil, hottestOil } from './base/day.js';
import { benchCautions, fillSources } from './base/fill-basis.js';
import { celsius } from './base/wording.js';
import { behaviour, oilSentence } from './build-sheet/behaviour.js';
import { lockCaution, sheetChecks } from './build-sheet/checks.js';
import { deviationTable } from './build-sheet/deviations.js';
import { heatSentences, heatTable } from './build-sheet/heat-table.js';
import { type SheetNumbers, sheetNumbers } from './build-sheet/numbers.js';
import { answer, assumptions } from './build-sheet/page-words.js';
import { readingBlocks } from './build-sheet/readings.js';
import { stepsBeforeOil } from './build-sheet/steps-before-oil.js';
import { stepsOfChecking } from './build-sheet/steps-checks.js';
import { stepsWithOil } from './build-sheet/steps-with-oil.js';
import { takenTimes } from './build-sheet/taken-times.js';

/** A shock after a long run is hotter than the oil that other pages look at. */
const hotEnough = { max: 80 } as const;
const mass = { dimension: 'mass', unit: 'g', min: 10, max: 2000, step: 10 } as const;

export const notebook = defineNotebook({
  name: 'build-sheet',
  order: 60,
  title: 'Build sheet',
  question:
    'How do I build this shock so that it comes out the same every time, and how do I know that it did?',
  parameters: {
    build: onePart({
      list: 'builds',
      label: 'Build',
      help: 'The build to make sheets for, one for each shock.',
    }),
    bench: { ...benchOil, ...hotEnough },
    coldest: { ...coldestOil, ...hotEnough },
    hottest: { ...hottestOil, ...hotEnough },
    smallestBubble: quantity({
      dimension: 'length',
      unit: 'mm',
      label: 'Largest bubble',
      help: 'Largest bubble diameter that may stay in the oil; it sets the wait.',
      default: 0.4,
      min: 0.05,
      max: 2,
      step: 0.05,
    }),
    airAtFill: quantity({
      dimension: 'volume',
      unit: 'ml',
      label: 'Air after filling',
      help: 'Free air in the oil after filling; an assumption.',
      default: 0.05,
      min: 0,
      max: 0.5,
      step: 0.01,
    }),
    weight: quantity({
      ...mass,
      label: 'Weight',
      help: 'Hung on the shaft and timed; shaft and rod end counted in.',
      default: 100,
    }),
    lighterWeight: quantity({
      ...mass,
      label: 'Lighter weight',
      help: 'The second weight; with it friction and oil are told apart.',
      default: 50,
    }),
    ...takenTimes,
    holeTolerance: quantity({
      dimension: 'length',
      unit: 'mm',
      label: 'Hole tolerance',
      help: 'How far each hole may be off, either way.',
      default: 0.02,
      min: 0,
      max: 0.05,
      step: 0.005,
    }),
    temperatureTolerance: quantity({
      // A difference of temperatures has no unit of its own on the list; kelvin has no offset.
      dimension: 'temperature',
      unit: 'K',
      label: 'Thermometer tolerance',
      help: 'How far the oil temperature may be off, either way.',
      default: 2,
      min: 0,
      max: 10,
      step: 0.5,
    }),
    lengthTolerance: quantity({
      dimension: 'length',
      unit: 'mm',
      label: 'Length tolerance',
      help: 'How far left and right may differ from eyelet to eyelet.',
      default: 0.2,
      min: 0.05,
      max: 2,
      step: 0.05,
    }),
    rideHeight: quantity({
      dimension: 'length',
      unit: 'mm',
      label: 'Ride height',
      help: 'How far the shaft is in at ride height.',
      default: 8,
      min: 0,
      max: 100,
      step: 0.5,
    }),
    rebuilds: integer({ label: 'Rebuilds', help: 'Rebuilds in a season.', default: 10, min: 1, max: 200 }),
    motionRatio: quantity({
      dimension: 'ratio',
      unit: '',
      label: 'Motion ratio',
      help: 'Shaft travel for each wheel travel, where the parts file does not say it.',
      default: 0.6,
      min: 0.2,
      max: 1.5,
      step: 0.05,
    }),
  },
  run(parts, values) {
    if (!(values.lighterWeight < values.weight)) {
      throw new InputError({
        field: 'lighterWeight',
        value: formatQuantity(values.lighterWeight, 'mass', 'g', 4),
        accepted: `below the weight of ${formatQuantity(values.weight, 'mass', 'g', 4)}`,
      });
    }
    if (!(values.coldest < values.hottest)) {
      throw new InputError({
        field: 'coldest',
        value: celsius(values.coldest),
        accepted: `below the hottest, ${celsius(values.hottest)}`,
      });
    }
    const numbers = sheetNumbers(values.build, values);
    const steps = [
      ...stepsBeforeOil(numbers, values),
      ...stepsWithOil(numbers, values),
      ...stepsOfChecking(numbers, values),
    ];
    const sheets = Array.from({ length: values.build.quantity }, (_, index) =>
      sheet(numbers, index + 1, steps),
    );
    const blocks: readonly Block[] = [
      ...benchCautions.map((text) => ({ kind: 'caution', text }) as const),
      ...lockCaution(numbers, values),
      { kind: 'heading', text: 'What this build does' },
      {
        kind: 'list',
        items: [
          oilSentence(numbers, values.rebuilds),
          ...behaviour(numbers, values.rideHeight),
          ...heatSentences(numbers, values),
        ],
      },
      heatTable(numbers, values),
      ...readingBlocks(numbers, values, parts.measurements ?? []),
      ...sheets,
      deviationTable(),
      ...sheetChecks(numbers, values),
      { kind: 'assumptions', items: assumptions(numbers) },
    ];
    return { answer: answer(numbers, values.bench, values.weight), blocks, sources: fillSources };
  },
});

function sheet(numbers: SheetNumbers, number: number, steps: ChecklistBlock['steps']): ChecklistBlock {
  const { build } = numbers.built;
  const { quantity: count, shock, piston, oil, spring } = build;
  const parts = [shock.name, piston.name, oil.name, ...(spring === undefined ? [] : [spring.name])];
  return {
    kind: 'checklist',
    id: `sheet-${number}`,
    title: `${build.name}, shock ${number} of ${count}`,
    about: `Body, piston, oil${spring === undefined ? '' : ', spring'}: ${parts.join(' · ')}. The maker’s instructions come first.`,
    writeIns: [
      { label: 'Place on the car', unit: '' },
      { label: 'Date', unit: '' },
      { label: 'Built by', unit: '' },
    ],
    steps,
  };
}
