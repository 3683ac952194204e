import type { Runtime } from 'vega';
import { expressionInterpreter } from 'vega-interpreter';
import { View } from 'vega-view';
import type { DataRow, Drawing, Figure, LayoutName } from '../plot/figure.js';

/** Compiled specifications of all charts by name. */
export type CompiledSpecs = Readonly<Record<string, Runtime>>;

/** A picture that can be drawn again with other numbers. */
export interface Picture {
  readonly specName: string;
  draw(drawing: Drawing, figure: Figure): Promise<void>;
  finalize(): void;
}

/** A picture in its place of a page; it takes the place over once it has been drawn for the first time. */
export function picture(place: Element, specName: string, specs: CompiledSpecs): Picture {
  const spec = specs[specName];
  if (spec === undefined) throw new TypeError(`no compiled specification ${specName}`);
  const frame = document.createElement('div');
  const view = new View(spec, { expr: expressionInterpreter, renderer: 'svg', hover: false });
  view.initialize(frame);
  frame.removeAttribute('role');
  frame.removeAttribute('aria-roledescription');
  const shown = new Map<string, readonly DataRow[]>();
  return {
    specName,
    async draw(drawing, figure) {
      setSizes(view, drawing);
      for (const [name, value] of Object.entries(drawing.signals)) view.signal(name, value);
      for (const [name, rows] of Object.entries(drawing.data)) {
        if (sameRows(rows, shown.get(name) ?? [])) continue;
        shown.set(name, rows);
        // Vega writes its own marks into the rows it is given.
        view.data(
          name,
          rows.map((row) => ({ ...row })),
        );
      }
      await view.runAsync();
      nameSvg(frame, figure);
      if (frame.parentNode !== place) place.replaceChildren(frame);
    },
    finalize: () => view.finalize(),
  };
}

/** The width that the window has room for; the style sheet of the page decides the same way. */
export function layoutShown(): LayoutName {
  return matchMedia('(max-width:560px)').matches ? 'narrow' : 'wide';
}

function setSizes(view: View, { width, height, padding }: Drawing): void {
  view.padding(padding);
  view.width(width - padding.left - padding.right).height(height - padding.top - padding.bottom);
}

function nameSvg(frame: Element, { title, alt }: Figure): void {
  const svg = frame.querySelector('svg');
  svg?.setAttribute('role', 'img');
  svg?.setAttribute('aria-label', `${title}. ${alt}`);
}

function sameRows(some: readonly DataRow[], others: readonly DataRow[]): boolean {
  return some.length === others.length && some.every((row, index) => sameRow(row, others[index] ?? {}));
}

function sameRow(one: DataRow, other: DataRow): boolean {
  const names = Object.keys(one);
  if (names.length !== Object.keys(other).length) return false;
  return names.every((name) => {
    const [value, before] = [one[name], other[name]];
    return value === before || (typeof value === 'object' && String(value) === String(before));
  });
}
