import type { Drawing, LayoutName } from './figure.js';

/** Drawings that are set out when they are first asked for: a page shows one width of the two. */
export function lazyDrawings(draw: (layout: LayoutName) => Drawing): Readonly<Record<LayoutName, Drawing>> {
  const drawn: Partial<Record<LayoutName, Drawing>> = {};
  const drawing = (layout: LayoutName): Drawing => {
    drawn[layout] ??= draw(layout);
    return drawn[layout];
  };
  return {
    get wide() {
      return drawing('wide');
    },
    get narrow() {
      return drawing('narrow');
    },
  };
}
