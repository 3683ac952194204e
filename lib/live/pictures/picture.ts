import type { Runtime } from 'vega';
import { expressionInterpreter } from 'vega-interpreter';
import { View } from 'vega-view';
import type { DataRow, Drawing, LayoutName } from '../../plot/chart/drawing.js';
import type { ChartKind, Figure } from '../../plot/chart/figure.js';
import { setRows } from './data-rows.js';

/** Compiled specifications of the charts by their kind. */
export type CompiledSpecs = Readonly<Record<ChartKind, Runtime>>;

/** A picture that can be drawn again with other numbers. */
export interface Picture {
  readonly kind: ChartKind;
  draw(drawing: Drawing, figure: Figure): Promise<void>;
  finalize(): void;
}

/** A picture in its place of a page; it takes the place over once it has been drawn for the first time. */
export function picture(place: Element, kind: ChartKind, specs: CompiledSpecs): Picture {
  const frame = document.createElement('div');
  const view = new View(specs[kind], { expr: expressionInterpreter, renderer: 'svg', hover: false });
  view.initialize(frame);
  frame.removeAttribute('aria-roledescription');
  const shown = new Map<string, readonly DataRow[]>();
  let sized = '';
  return {
    kind,
    async draw(drawing, figure) {
      // Vega lays the whole picture out again whenever it is given sizes, also if they are the same.
      const { data, signals, ...sizes } = drawing;
      const sizesText = sizesOf(drawing).join();
      if (sizesText !== sized) setSizes(view, sizes);
      sized = sizesText;
      for (const [name, value] of Object.entries(signals)) view.signal(name, value);
      for (const [name, rows] of Object.entries(data)) {
        setRows(view, name, rows, shown.get(name) ?? []);
        shown.set(name, rows);
      }
      await view.runAsync();
      nameFrame(frame, figure);
      if (frame.parentNode !== place) place.replaceChildren(frame);
    },
    finalize: () => view.finalize(),
  };
}

/** Whether the window has room for the narrow pictures only; the style sheet of the page decides the same way. */
export const narrowWindow = matchMedia('(max-width:560px)');

/** The width of the pictures shown. */
export function layoutShown(): LayoutName {
  return narrowWindow.matches ? 'narrow' : 'wide';
}

type Sizes = Pick<Drawing, 'width' | 'height' | 'padding'>;

function sizesOf({ width, height, padding }: Sizes): readonly number[] {
  return [width, height, padding.left, padding.right, padding.top, padding.bottom];
}

function setSizes(view: View, { width, height, padding }: Sizes): void {
  view.padding(padding);
  view.width(width - padding.left - padding.right).height(height - padding.top - padding.bottom);
}

/** The frame is the picture to those who do not see it; what Vega says of its marks is of no use to them. */
function nameFrame(frame: Element, { title, alt }: Figure): void {
  frame.setAttribute('role', 'img');
  frame.setAttribute('aria-label', `${title}. ${alt}`);
  frame.querySelector('svg')?.setAttribute('aria-hidden', 'true');
}
