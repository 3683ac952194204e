import { defineNotebook, onePart, quantity, severalParts } from '../../lib/page/index.js';
import { modelAt, oilCase } from '../../notebooks/base/oil-forces.js';
import {
  coldToHotFigure,
  forceVelocityFigure,
  threeSpeedsFigure,
} from '../../notebooks/compare-oils/figures.js';
import { forceTable } from '../../notebooks/compare-oils/tables.js';
import { packFigure } from '../../notebooks/compare-pistons/figures.js';

/** Four figures of the notebooks on one page, all of them moved by one slider. */
export const notebook = defineNotebook({
  name: 'four-figures',
  order: 1,
  title: 'Four figures',
  question: 'How long does a redraw take?',
  parameters: {
    temperature: quantity({
      label: 'Oil temperature',
      help: 'Temperature of the oil.',
      dimension: 'temperature',
      unit: '°C',
      default: 20,
      min: 0,
      max: 60,
      step: 0.5,
    }),
    shock: onePart({ list: 'shocks', label: 'Shock', help: 'The body.' }),
    piston: onePart({ list: 'pistons', label: 'Piston', help: 'The piston.' }),
    oils: severalParts({ list: 'oils', atMost: 4, label: 'Oils', help: 'The oils.' }),
  },
  run(parts, { temperature, shock, piston, oils }) {
    const at = { temperature, coldest: 275, hottest: 315, slow: 0.05, middle: 0.3, fast: 1 };
    const cases = oils.map((oil) => oilCase(oil, shock, piston));
    const [oil] = oils;
    const models = parts.pistons
      .filter((part) => oil !== undefined && part.piston.diameter < shock.bore)
      .slice(0, 4)
      .map((part) => ({ part, model: modelAt(oilCase(oil ?? neverOil(), shock, part), temperature) }));
    return {
      answer: 'See the benchmark.',
      blocks: [
        { kind: 'figure', figure: forceVelocityFigure(cases, at) },
        { kind: 'figure', figure: coldToHotFigure(cases, at) },
        { kind: 'figure', figure: threeSpeedsFigure(cases, at) },
        { kind: 'figure', figure: packFigure(models, at.fast) },
        forceTable(cases, at),
      ],
      sources: [],
    };
  },
});

function neverOil(): never {
  throw new RangeError('the parts file has no oil');
}
