import { InputError } from '../../../lib/base/input-error.js';
import { choice, defineNotebook, integer, onePart, quantity, severalParts } from '../../../lib/page/index.js';
import { dotChart, lineChart } from '../../../lib/plot/index.js';

/** A notebook invented for the tests: every kind of parameter, block and chart; its numbers are made up. */
export const notebook = defineNotebook({
  name: 'all-controls',
  order: 1,
  title: 'All controls',
  question: 'Does everything follow?',
  parameters: {
    slope: quantity({
      label: 'Slope',
      help: 'Makes the line steeper.',
      dimension: 'ratio',
      unit: '%',
      default: 50,
      min: 0,
      max: 200,
      step: 5,
    }),
    count: integer({ label: 'Count', help: 'How many points.', default: 5, min: 2, max: 9 }),
    law: choice({
      label: 'Law',
      help: 'The form of the line.',
      options: ['straight', 'bent'],
      default: 'straight',
    }),
    piston: onePart({ label: 'Piston', help: 'The piston.', list: 'pistons' }),
    oils: severalParts({ label: 'Oils', help: 'The oils.', list: 'oils', atMost: 3 }),
  },
  run(_parts, { slope, count, law, piston, oils }) {
    if (slope === 0.95) throw new InputError({ field: 'slope', value: 0.95, accepted: 'anything but 0.95' });
    const power = law === 'bent' ? 2 : 1;
    const force = (x: number, oil: number): number => slope * 10 * (x / (count - 1)) ** power * (oil + 1);
    const places = Array.from({ length: count }, (_place, index) => index);
    return {
      answer: `${piston.name} at ${Math.round(100 * slope)} % gives ${force(count - 1, 0).toFixed(2)} N with ${oils.map(({ name }) => name).join(' and ')}, ${law}.`,
      blocks: [
        ...(slope > 1 ? [{ kind: 'text', text: 'Steeper than it looks.' } as const] : []),
        {
          kind: 'figure',
          figure: lineChart({
            id: 'line',
            title: `A ${law} line`,
            alt: `It ends at ${force(count - 1, 0).toFixed(2)} N.`,
            x: { label: 'Place', unit: '' },
            y: { label: 'Force', unit: 'N' },
            series: oils.map(({ name }, oil) => ({
              name,
              points: places.map((x) => ({ x, y: force(x, oil) })),
            })),
          }),
        },
        {
          kind: 'figure',
          figure: dotChart({
            id: 'dots',
            title: 'The ends',
            alt: `The first is ${force(count - 1, 0).toFixed(2)} N.`,
            category: 'Oil',
            categories: oils.map(({ name }) => name),
            value: { label: 'Force', unit: 'N' },
            series: [
              {
                name: 'end',
                dots: oils.map(({ name }, oil) => ({ category: name, value: force(count - 1, oil) })),
              },
            ],
          }),
        },
        {
          kind: 'table',
          id: 'ends',
          title: 'The ends in numbers',
          table: {
            columns: [
              { label: 'Oil', unit: '' },
              { label: 'Force', unit: 'N' },
            ],
            rows: oils.map(({ name }, oil) => [name, force(count - 1, oil)]),
          },
        },
        {
          kind: 'check',
          claim: 'It is not too steep',
          passed: slope <= 1.5,
          detail: `${slope}`,
          ifFailed: 'Take less',
        },
        { kind: 'caution', text: 'Made up.' },
        { kind: 'assumptions', items: [`${count} points.`] },
      ],
      sources: ['Nobody, Journal of Nothing 1 (2000) 1.'],
    };
  },
});
