import { requireShape } from '../../base/shape.js';
import { inkColours } from '../../plot/chart/palette.js';
import { type MotionBlock, motionBlockShape } from '../blocks/motion.js';
import type { HtmlElement } from './html.js';
import { htmlText } from './html-text.js';
import { besideUnits } from './prose.js';
import { drawingSize, shockDrawing } from './shock-drawing.js';

/** Room for the title of the picture, and for what a still shows [px]. */
const titleHeight = 28;
const labelHeight = 26;

/**
 * The stills of a shock at work as one picture, one below the other, for where no page can be shown.
 *
 * @param block - the shock at work
 * @returns SVG text, with title and description for those who do not see it
 * @throws InputError for a block of another form
 * @public
 */
export function motionPicture(block: MotionBlock): string {
  requireShape({ block }, { block: motionBlockShape });
  const { id, title, alt, shock, stills } = block;
  const { width, height } = drawingSize(shock, 'wide');
  const whole = Math.ceil(titleHeight + stills.length * (labelHeight + height));
  const [titleId, altId] = [`${id}-title`, `${id}-desc`];
  const picture: HtmlElement = {
    tag: 'svg',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${width}`,
      height: `${whole}`,
      viewBox: `0 0 ${width} ${whole}`,
      role: 'img',
      'aria-labelledby': titleId,
      'aria-describedby': altId,
      'font-family': 'Inter, Helvetica, Arial, sans-serif',
      'font-size': '12',
      fill: inkColours.ink,
    },
    children: [
      { tag: 'title', attributes: { id: titleId }, children: [title] },
      { tag: 'desc', attributes: { id: altId }, children: [alt] },
      text(18, title, { 'font-size': '14', 'font-weight': '600' }),
      ...stills.flatMap(({ frame, label }, place) => {
        const from = titleHeight + place * (labelHeight + height);
        const since = `${(1000 * frame.time).toFixed(0)} ms`;
        return [
          text(from + 18, besideUnits(`${label}, ${since}`), { 'font-weight': '600' }),
          {
            tag: 'g',
            attributes: { transform: `translate(0,${from + labelHeight})` },
            children: shockDrawing(shock, frame, 'wide').children,
          },
        ];
      }),
    ],
  };
  return htmlText({ nodes: [picture] });
}

function text(y: number, words: string, attributes: HtmlElement['attributes']): HtmlElement {
  return { tag: 'text', attributes: { x: '2', y: `${y}`, ...attributes }, children: [words] };
}
