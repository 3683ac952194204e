import { defineNotebook, onePart, quantity } from '../../../lib/page/index.js';
import { lineChart } from '../../../lib/plot/index.js';

/** A notebook invented for the tests: it shares some settings with the first, one of them in a smaller range; its numbers are made up. */
export const notebook = defineNotebook({
  name: 'second-page',
  order: 2,
  title: 'A second page',
  question: 'Does what was chosen come along?',
  parameters: {
    build: onePart({ label: 'Build', help: 'The build.', list: 'builds' }),
    piston: onePart({ label: 'Piston', help: 'The piston.', list: 'pistons' }),
    slope: quantity({
      label: 'Slope',
      help: 'Makes the line steeper.',
      dimension: 'ratio',
      unit: '%',
      default: 50,
      min: 0,
      max: 100,
      step: 5,
    }),
  },
  run(_parts, { build, piston, slope }) {
    return {
      answer: `${build.name}: ${piston.name} at ${Math.round(100 * slope)} %.`,
      blocks: [
        { kind: 'text', text: 'A heron stands in the shallows.' },
        {
          kind: 'figure',
          figure: lineChart({
            id: 'line',
            title: 'A line',
            alt: `It ends at ${(10 * slope).toFixed(2)} N.`,
            x: { label: 'Place', unit: '' },
            y: { label: 'Force', unit: 'N' },
            series: [
              {
                name: piston.name,
                points: [
                  { x: 0, y: 0 },
                  { x: 1, y: 10 * slope },
                ],
              },
            ],
          }),
        },
      ],
      sources: [],
    };
  },
});
