import type { LayoutName } from '../../plot/chart/drawing.js';
import type { Figure } from '../../plot/chart/figure.js';
import { type CompiledSpecs, layoutShown, type Picture, picture } from './picture.js';

/** What is drawn of a figure, with what it is compared with. */
export type AsDrawn = (figure: Figure) => Figure;

/** All pictures of a page. */
export interface Pictures {
  /** Draws the figures that are in the window or near it, at the width shown. */
  drawSeen(figures: readonly Figure[], asDrawn: AsDrawn): Promise<void>;
  /** Draws all figures at both widths: for paper, and for a window that moves or changes. */
  drawAll(figures: readonly Figure[], asDrawn: AsDrawn): Promise<void>;
  /** One picture, drawn. */
  svg(figure: Figure, layout: LayoutName): Promise<SVGElement>;
}

/** Pictures in the figures of a page, made when they are first drawn. */
export function pictures(main: Element, specs: CompiledSpecs): Pictures {
  const made = new Map<Element, Picture>();
  const unseen = new Set<Element>();
  const watch = new IntersectionObserver(
    (changes) => {
      for (const { target, isIntersecting } of changes) {
        if (isIntersecting) unseen.delete(target);
        else unseen.add(target);
      }
    },
    { rootMargin: '40px' },
  );
  const draw = async (figure: Figure, layout: LayoutName, place: Element): Promise<void> => {
    const drawing = figure.drawings[layout];
    let drawn = made.get(place);
    if (drawn?.kind !== figure.chart.kind) {
      drawn?.finalize();
      drawn = picture(place, figure.chart.kind, specs);
      made.set(place, drawn);
      watch.observe(place);
    }
    await drawn.draw(drawing, figure);
  };
  return {
    async drawSeen(figures, asDrawn) {
      const layout = layoutShown();
      for (const figure of figures) {
        const place = placeOf(main, figure, layout);
        if (place !== null && !unseen.has(place)) await draw(asDrawn(figure), layout, place);
      }
    },
    async drawAll(figures, asDrawn) {
      for (const [place, { finalize }] of made) {
        if (place.isConnected) continue;
        watch.unobserve(place);
        unseen.delete(place);
        finalize();
        made.delete(place);
      }
      for (const figure of figures) {
        const beside = asDrawn(figure);
        for (const layout of ['wide', 'narrow'] as const) {
          const place = placeOf(main, figure, layout);
          if (place !== null) await draw(beside, layout, place);
        }
      }
    },
    async svg(figure, layout) {
      const place = placeOf(main, figure, layout);
      if (place !== null) await draw(figure, layout, place);
      const svg = place?.querySelector('svg');
      if (!(svg instanceof SVGElement)) throw new TypeError(`${figure.id} was not drawn`);
      return svg;
    },
  };
}

function placeOf(main: Element, { id }: Figure, layout: LayoutName): Element | null {
  return main.querySelector(`#${id}>.${layout}`);
}
