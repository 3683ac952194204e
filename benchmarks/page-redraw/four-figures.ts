import { defineNotebook, onePart, quantity, severalParts } from '../../lib/page/index.js';
import { chosenBuild, curveOf } from '../../notebooks/base/chosen-shock.js';
import { coldToHotFigure, forceFigures } from '../../notebooks/compare-oils/figures.js';
import { oilsInShock } from '../../notebooks/compare-oils/oils.js';
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
    const [oil = neverOil()] = oils;
    const shown = oilsInShock(chosenBuild(parts, { shock, piston, oil }), oils);
    const pistons = parts.pistons
      .filter((part) => part.piston.diameter < shock.bore)
      .slice(0, 4)
      .map((part) => {
        const build = chosenBuild(parts, { shock, piston: part, oil });
        return { part, build, model: curveOf(part.name, build, temperature).model };
      });
    const figures = [...forceFigures(shown, at), coldToHotFigure(shown, at), packFigure(pistons, at.fast)];
    return {
      answer: 'See the benchmark.',
      blocks: [...figures.map((figure) => ({ kind: 'figure', figure }) as const), forceTable(shown, at, '')],
      sources: [],
    };
  },
});

function neverOil(): never {
  throw new RangeError('the parts file has no oil');
}
