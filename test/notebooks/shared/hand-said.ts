import type { Notebook, Page } from '../../../lib/page/index.js';
import { wordsOf } from '../answers.js';
import { exact, rounded, type Said } from './said.js';

/** How far a hand on a stopwatch is off, one standard uncertainty. */
export function handSaid(notebooks: readonly Notebook[], pages: ReadonlyMap<string, Page>): readonly Said[] {
  const pair = notebooks.find(({ name }) => name === 'pair');
  const control = pair?.parameters['hand'];
  const sheet = pages.get('build-sheet');
  const measured = pages.get('measure-next');
  return [
    ...exact('hand', 'pair', control?.kind === 'quantity' ? control.default : undefined),
    ...(sheet === undefined
      ? []
      : [
          ...rounded(
            'hand',
            'build-sheet',
            /One time by hand is off by ([\d.]+) s/u.exec(wordsOf(sheet))?.[1],
            1,
            () => 1e-6,
          ),
          ...rounded(
            'hand',
            'build-sheet, steps',
            /the hand ± ([\d.]+) s/u.exec(JSON.stringify(sheet.blocks))?.[1],
            0.5,
            () => 1e-6,
          ),
        ]),
    ...(measured === undefined
      ? []
      : rounded(
          'hand',
          'measure-next',
          /One time by hand is off by ([\d.]+) s/u.exec(wordsOf(measured))?.[1],
          1,
          () => 1e-6,
        )),
  ];
}
