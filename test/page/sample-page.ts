import {
  defineNotebook,
  onePart,
  type Page,
  type PageContent,
  quantity,
  severalParts,
} from '../../lib/page/index.js';
import { type Parts, readParts } from '../../lib/parts/index.js';
import { lineChart } from '../../lib/plot/index.js';

/** A name that must stay a text wherever it is shown. */
export const hostileName = `<script>alert("1")</script><img src=x onerror='alert(2)'>`;

/** A parts file invented for the tests. */
export const partsText = JSON.stringify({
  dashpot: 1,
  about: 'Invented for the tests.',
  oils: ['thin', 'middle', 'thick', hostileName].map((name, index) => ({
    name,
    base: 'silicone',
    viscosity: `${100 * (index + 1)} cSt`,
    at: '25 °C',
  })),
  pistons: [
    {
      name: 'two holes',
      diameter: '11.9 mm',
      thickness: '2.5 mm',
      holes: [{ count: 2, diameter: '1.5 mm' }],
    },
  ],
});

/** The same file, read. */
export const parts: Parts = readParts(partsText, 'test-parts.json');

/** A notebook invented for the tests; its force is made up. */
export const notebook = defineNotebook({
  name: 'sample',
  order: 1,
  title: 'A sample',
  question: 'What does it show?',
  parameters: {
    temperature: quantity({
      label: 'Oil temperature',
      help: 'Temperature of the oil.',
      dimension: 'temperature',
      unit: '°C',
      default: 20,
      min: -10,
      max: 60,
      step: 1,
    }),
    oils: severalParts({ label: 'Oils', help: 'The oils to show.', list: 'oils', atMost: 4 }),
    piston: onePart({ label: 'Piston', help: 'The piston.', list: 'pistons' }),
  },
  run(_parts, { temperature, oils, piston }): Page {
    const figure = lineChart({
      id: 'force',
      title: `Force at ${temperature} K`,
      alt: 'At 100 mm/s the force is 1 N.',
      x: { label: 'Shaft speed', unit: 'mm/s', dimension: 'speed' },
      y: { label: 'Force', unit: 'N', dimension: 'force' },
      series: oils.map(({ name }, index) => ({
        name,
        points: Array.from({ length: 61 }, (_point, at) => ({ x: at / 60, y: ((index + 1) * at) / 6 })),
      })),
    });
    return {
      answer: `With ${piston.name} the force is 1 N.`,
      blocks: [
        { kind: 'heading', text: 'A heading' },
        { kind: 'text', text: 'A paragraph of 20 °C.' },
        { kind: 'list', items: ['An item'] },
        { kind: 'figure', figure },
        {
          kind: 'table',
          id: 'names',
          title: 'The oils',
          table: { columns: [{ label: 'Oil', unit: '' }], rows: oils.map(({ name }) => [name]) },
          note: 'A note.',
        },
        {
          kind: 'check',
          claim: 'It holds',
          passed: temperature < 330,
          detail: `${temperature} K against 330 K`,
          ifFailed: 'Cool it.',
        },
        { kind: 'caution', text: 'Oil may be hot.' },
        { kind: 'assumptions', items: [`All of it is made up for ${oils.length} oils.`] },
      ],
      sources: ['Nobody, Journal of Nothing 1 (2000) 1.'],
    };
  },
});

/** The content of a page without fonts and with empty pictures. */
export function contentOf(page: Page): PageContent {
  const picture = '<svg xmlns="http://www.w3.org/2000/svg"></svg>';
  return {
    title: notebook.title,
    question: notebook.question,
    page,
    about: parts.about,
    parameters: [{ name: 'oils', label: 'Oils', text: hostileName }],
    pictures: new Map([['force', { wide: picture, narrow: picture }]]),
    fonts: [{ weight: 400, woff2: 'd09GMg==' }],
    provenance: {
      version: '1.2.3',
      contentHash: '0123456789abcdef',
      notices: [{ name: 'a font', text: 'Licence text' }],
    },
  };
}
