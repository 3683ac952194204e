import type { Block } from '../../lib/page/blocks/block.js';
import { doubts } from '../base/doubts.js';
import { pointAt } from '../base/oil-forces.js';
import { curveFigure, frontFigure, modelOfDesign } from './figures.js';
import type { Found, Shown } from './found.js';
import { forceTable, frontTable } from './tables.js';

/** Pictures and tables of the front, and of the design that the page names. */
export function evidence(
  search: Found,
  pick: Shown,
  errors: string,
  { computed, all }: { readonly computed: number; readonly all: number },
): readonly Block[] {
  const shown = search.shown.length;
  const left = shown < all ? `; the ${shown} nearest to both wishes are shown` : '';
  return [
    { kind: 'figure', figure: frontFigure(search, errors) },
    frontTable(search, errors),
    {
      kind: 'text',
      text: `${computed} designs were worked out, and ${all} of them are beaten by none at both speeds${left}. There is not one best piston: what suits slow driving may pack in a landing.`,
    },
    { kind: 'figure', figure: curveFigure(search, pick) },
    forceTable(search, pick),
    ...careful(search, pick),
  ];
}

/** Where a law leaves its range, or a cavity opens, with the design that the page names. */
function careful(search: Found, pick: Shown): readonly Block[] {
  const model = modelOfDesign(search, pick);
  const { slow, fast } = search.problem;
  return [
    { kind: 'heading', text: 'Where to be careful' },
    ...doubts(
      [slow.speed, -slow.speed, fast.speed, -fast.speed].flatMap((speed) =>
        pointAt(model, speed).warnings.map((warning) => ({ of: `design ${pick.number}`, warning })),
      ),
    ),
  ];
}
