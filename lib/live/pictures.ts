import type { Figure, LayoutName } from '../plot/figure.js';
import { type CompiledSpecs, layoutShown, type Picture, picture } from './picture.js';

/** All pictures of a page. */
export interface Pictures {
  /** Draws the figures at the width shown. */
  drawShown(figures: readonly Figure[]): Promise<void>;
  /** Draws the figures at the other width too, for paper and for a window that changes. */
  drawHidden(figures: readonly Figure[]): Promise<void>;
  /** One picture, drawn. */
  svg(figure: Figure, layout: LayoutName): Promise<SVGElement>;
}

/** Pictures in the figures of a page, made when they are first drawn. */
export function pictures(specs: CompiledSpecs): Pictures {
  const made = new Map<Element, Picture>();
  const draw = async (figure: Figure, layout: LayoutName): Promise<Element | undefined> => {
    const place = document.querySelector(`#${figure.id}>.${layout}`);
    if (place === null) return undefined;
    const drawing = figure.drawings[layout];
    let drawn = made.get(place);
    if (drawn?.specName !== drawing.specName) {
      drawn?.finalize();
      drawn = picture(place, drawing.specName, specs);
      made.set(place, drawn);
    }
    await drawn.draw(drawing, figure);
    return place;
  };
  return {
    async drawShown(figures) {
      const layout = layoutShown();
      forgetRemoved(made);
      for (const figure of figures) await draw(figure, layout);
    },
    async drawHidden(figures) {
      const layout = layoutShown() === 'wide' ? 'narrow' : 'wide';
      for (const figure of figures) await draw(figure, layout);
    },
    async svg(figure, layout) {
      const svg = (await draw(figure, layout))?.querySelector('svg');
      if (!(svg instanceof SVGElement)) throw new TypeError(`${figure.id} was not drawn`);
      return svg;
    },
  };
}

function forgetRemoved(made: Map<Element, Picture>): void {
  for (const [place, { finalize }] of made) {
    if (place.isConnected) continue;
    finalize();
    made.delete(place);
  }
}
