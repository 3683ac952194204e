import * as page from '../../lib/page/index.js';
import * as plot from '../../lib/plot/index.js';
import { contentOf, notebook, parts } from '../page/sample-page.js';
import { dots, lines, points } from '../plot/sample-figures.js';
import { free, type GoodCalls, whole } from './good-call.js';

const figure = whole(plot.lineChart(lines));
const column = { label: 'Force', unit: 'N', dimension: 'force', digits: 3 };
const few = {
  ...lines,
  series: lines.series.slice(0, 2).map(({ name, points: some }) => ({ name, points: some.slice(0, 3) })),
};

/** Calls of the entry of figures. */
export const plotCalls: GoodCalls = {
  besideStart: [[figure, figure]],
  columnHeading: [[column]],
  displayColumn: [[column, free([1, null, 'a text'])]],
  displayNumber: [[column, 12.3]],
  dotChart: [[dots]],
  histogram: [
    [
      {
        id: 'counts',
        title: 'Counts',
        alt: 'Most lie at 2 N.',
        counted: 'Shocks',
        value: column,
        values: [1, 2, 2.1, 2.2, 3],
        rules: [{ axis: 'x', value: 2, label: 'middle' }],
      },
    ],
  ],
  lineChart: [[few]],
  renderSvg: [[figure, 'wide']],
  scatterChart: [[points]],
};

const quantity = {
  label: 'Oil temperature',
  help: 'Temperature of the oil.',
  dimension: 'temperature',
  unit: '°C',
  default: 20,
  min: -10,
  max: 60,
  step: 1,
};
const declared = { label: 'Piston', help: 'The piston.', list: 'pistons' };
const sample: page.Page = {
  answer: 'The force is 1 N.',
  blocks: [
    { kind: 'heading', text: 'A heading' },
    { kind: 'list', items: ['An item'] },
    { kind: 'figure', figure },
    {
      kind: 'table',
      id: 'names',
      title: 'The oils',
      table: { columns: [{ label: 'Oil', unit: '' }], rows: [['thin']] },
    },
    {
      kind: 'check',
      claim: 'It holds',
      passed: true,
      detail: '1 against 2',
      ifFailed: 'Look again',
      consistency: false,
    },
  ],
  sources: ['Nobody, Journal of Nothing 1 (2000) 1.'],
};
const content = {
  ...contentOf(sample),
  pictures: new Map([['force-velocity', { wide: '<svg/>', narrow: '<svg/>' }]]),
};
const index = {
  about: 'Invented.',
  entries: [{ name: 'one', title: 'One', question: 'What?', answer: 'This.', picture: '<svg/>' }],
  fonts: [{ weight: 400, woff2: 'd09GMg==' }],
  provenance: content.provenance,
};
const frame = {
  time: 0,
  travel: 0,
  speed: 0.1,
  force: 2,
  blindPressure: 1e5,
  shaftPressure: 1.1e5,
  cavity: 0,
};
const motion: page.MotionBlock = {
  kind: 'motion',
  id: 'at-work',
  title: 'At work',
  alt: 'It moves.',
  shock: {
    bore: 0.012,
    shaftDiameter: 0.003,
    stroke: 0.02,
    pistonThickness: 0.0025,
    holes: [0.0012],
    gasAt: 'blind-side',
    gasVolume: 3e-7,
    oilVolume: 3e-6,
    clearance: 0.002,
  },
  frames: [frame, { ...frame, time: 0.01, travel: 0.001 }],
  stills: [{ frame, label: 'At the start' }],
};
const program = { script: 'let a;', packed: ['a'], start: free({}) };
const values = whole(page.readParameterValues(notebook.parameters, {}, parts));

/** Calls of the entry of pages. */
export const pageCalls: GoodCalls = {
  acceptedText: [[page.quantity(quantity as never)]],
  allBlocks: [[sample]],
  choice: [[{ label: 'Law', help: 'The law.', options: ['a', 'b'], default: 'a' }]],
  contentHash: [['text', [{ name: 'a', text: 'b' }]]],
  defaultText: [[page.quantity(quantity as never)]],
  defineNotebook: [[{ ...notebook, parameters: whole(notebook.parameters) }]],
  later: [[free(() => sample.blocks)]],
  integer: [[{ label: 'Shocks', help: 'How many.', default: 4, min: 1, max: 8 }]],
  motionPicture: [[motion]],
  once: [[free(() => 1)]],
  onePart: [[declared]],
  optionName: [['holeDiameter']],
  pageFigures: [[sample]],
  pageInPieces: [[{ answer: 'Two.', sources: ['a'], pieces: [whole(page.later(() => sample.blocks))] }]],
  pageJson: [[content]],
  pagePassed: [[sample]],
  pageTables: [[sample]],
  parameterTexts: [[whole(notebook.parameters), values]],
  quantity: [[quantity]],
  readParameterValues: [[whole(notebook.parameters), whole({ temperature: '12 °C' }), whole(parts)]],
  renderHtml: [[content]],
  renderIndex: [[index]],
  renderOneFile: [[index, program]],
  severalParts: [[{ ...declared, atMost: 3 }]],
  tableCsv: [[{ columns: [column], rows: free([[1]]) }]],
  unansweredPage: [[new Error('a reason'), whole(parts)]],
};
