import { type Notebook, type Page, pageFigures, readParameterValues } from '../../../lib/page/index.js';
import type { Parts } from '../../../lib/parts/index.js';
import { listNotebooks } from '../../../lib/runner/build/notebook-list.js';
import { realNotebooks } from '../../live/notebook-folders.js';
import { pageOf, rowOf } from '../answers.js';
import { handSaid } from './hand-said.js';
import { exact, hundredth, rounded, type Said, threeDigits, whole } from './said.js';

export const notebooks = await listNotebooks(realNotebooks);
const gravity = 9.80665;

/** Settings that begin at one number on every page: what the file says, or one guess. */
const sharedSettings = [
  'slow',
  'middle',
  'fast',
  'temperature',
  'bench',
  'coldest',
  'hottest',
  'drop',
  'freeAir',
  'drill',
  'label',
  'sag',
];

/** All pages of a file; those that it cannot answer are left out. */
export function pagesOf(parts: Parts): ReadonlyMap<string, Page> {
  const pages = new Map<string, Page>();
  for (const notebook of notebooks) {
    try {
      pages.set(notebook.name, pageOf(notebook, parts));
    } catch {
      // The other tests look at refusals.
    }
  }
  return pages;
}

/** A cell of a table where page, table and row are there. */
function cell(
  pages: ReadonlyMap<string, Page>,
  page: string,
  table: string,
  row: string,
  place: number,
): unknown {
  const found = pages.get(page);
  if (found === undefined) return undefined;
  try {
    return rowOf(found, table, row)[place];
  } catch {
    return undefined;
  }
}

/** Everything that more than one page says of the first build of a file. */
export function allSaid(parts: Parts, pages: ReadonlyMap<string, Page>): readonly Said[] {
  const [build] = parts.builds;
  if (build === undefined) throw new Error('no build');
  const speeds = notebooks.find(({ name }) => name === 'compare-builds');
  const values = readParameterValues((speeds as Notebook).parameters, {}, parts) as Readonly<
    Record<string, number>
  >;
  const { temperature = 0, bench = 0, slow = 0, middle = 0, fast = 0 } = values;
  const mm = (speed: number) => `${Number((1000 * speed).toPrecision(3))} mm/s`;
  const at = (page: string, table: string, row: string, place: number) =>
    cell(pages, page, table, row, place);
  const match = pages.get('match');
  const backs =
    match === undefined
      ? null
      : /holds back with ([\d.]+) N .* at .* it is ([\d.]+) N/u.exec(pageFigures(match)[0]?.alt ?? '');
  const sheet = pages.get('build-sheet')?.answer ?? '';
  const cavitation = pages.get('cavitation')?.answer ?? '';
  const landed = /goes in ([\d. to]+) mm of .* pushes out with ([\d. to]+) N at most/u.exec(
    pages.get('landing')?.answer ?? '',
  );
  const onset = 'onset of cavitation, shaft fully out';
  const own = 'as it is';
  const closed = bench === temperature ? at('fill-and-bleed', 'bled-again', 'as it is closed', 5) : undefined;
  const ends = (quantity: string, page: string, text: unknown): readonly Said[] => {
    const numbers = [...String(text ?? '').matchAll(/[\d.]+/gu)].map(([one]) => one);
    return numbers.length === 0
      ? []
      : [
          ...rounded(`${quantity}, least`, page, numbers[0], 1, () => 1e-6),
          ...rounded(`${quantity}, most`, page, numbers.at(-1), 1, () => 1e-6),
        ];
  };
  return [
    ...notebooks.flatMap((notebook): readonly Said[] => {
      const defaults = readParameterValues(notebook.parameters, {}, parts) as Readonly<
        Record<string, unknown>
      >;
      return sharedSettings.flatMap((name) => exact(`setting ${name}`, notebook.name, defaults[name]));
    }),
    ...exact('rebound slow', 'compare-oils', at('compare-oils', 'forces', build.oil.name, 0)),
    ...exact('rebound slow', 'compare-pistons', at('compare-pistons', 'forces', build.piston.name, 0)),
    ...exact('rebound slow', 'what-to-drill', at('what-to-drill', 'forces', `Rebound, ${mm(slow)}`, 2)),
    ...rounded(
      'rebound slow',
      'compare-builds',
      at('compare-builds', 'forces', `Rebound, ${mm(slow)}`, 0),
      1,
      threeDigits,
    ),
    ...rounded('rebound slow', 'what-to-change', at('what-to-change', 'changes', own, 0), 1, threeDigits),
    ...(backs === null ? [] : rounded('rebound slow', 'match', backs[1], 1, threeDigits)),
    ...exact('rebound middle', 'compare-oils', at('compare-oils', 'forces', build.oil.name, 1)),
    ...exact('rebound middle', 'compare-pistons', at('compare-pistons', 'forces', build.piston.name, 1)),
    ...exact('rebound middle', 'what-to-drill', at('what-to-drill', 'forces', `Rebound, ${mm(middle)}`, 2)),
    ...rounded(
      'rebound middle',
      'compare-builds',
      at('compare-builds', 'forces', `Rebound, ${mm(middle)}`, 0),
      1,
      threeDigits,
    ),
    ...(backs === null ? [] : rounded('rebound middle', 'match', backs[2], 1, threeDigits)),
    ...exact('pushed in fast', 'compare-oils', at('compare-oils', 'forces', build.oil.name, 2)),
    ...exact('pushed in fast', 'compare-pistons', at('compare-pistons', 'forces', build.piston.name, 2)),
    ...exact('pushed in fast', 'cavitation', at('cavitation', 'what-moves-it', own, 2)),
    ...rounded(
      'pushed in fast',
      'compare-builds',
      at('compare-builds', 'forces', `Pushed in, ${mm(fast)}`, 0),
      1,
      threeDigits,
    ),
    ...rounded('pushed in fast', 'what-to-change', at('what-to-change', 'changes', own, 1), 1, threeDigits),
    ...exact(onset, 'compare-oils', at('compare-oils', 'speeds', build.oil.name, 0)),
    ...exact(onset, 'compare-pistons', at('compare-pistons', 'speeds', build.piston.name, 0)),
    ...exact(onset, 'cavitation', at('cavitation', 'what-moves-it', own, 0)),
    ...rounded(
      onset,
      'cavitation, answer',
      /begins to cavitate at ([\d.]+) mm\/s/u.exec(cavitation)?.[1],
      1e-3,
      threeDigits,
    ),
    ...exact(onset, 'fill-and-bleed', closed),
    ...exact('spring lets it out', 'compare-oils', at('compare-oils', 'speeds', build.oil.name, 2)),
    ...exact('spring lets it out', 'compare-pistons', at('compare-pistons', 'speeds', build.piston.name, 2)),
    ...exact(
      'push fully in',
      'fill-and-bleed',
      inNewtons(at('fill-and-bleed', 'bled-again', 'as it is closed', 2)),
    ),
    ...rounded(
      'push fully in',
      'compare-builds',
      at('compare-builds', 'push', 'Shaft fully in', 0),
      gravity / 1000,
      whole,
    ),
    ...rounded(
      'push fully in',
      'what-to-change',
      at('what-to-change', 'changes', own, 3),
      gravity / 1000,
      whole,
    ),
    ...rounded(
      'push fully in',
      'build-sheet',
      /the gas then pushes with ([\d.]+) g/u.exec(sheet)?.[1],
      gravity / 1000,
      whole,
    ),
    ...exact('oil of a fill', 'compare-oils', at('compare-oils', 'order', build.oil.name, 0)),
    ...rounded(
      'oil of a fill',
      'compare-builds',
      at('compare-builds', 'day', 'Oil for a fill', 0),
      1e-6,
      hundredth,
    ),
    ...rounded(
      'oil of a fill',
      'build-sheet',
      /pour ([\d.]+) ml/u.exec(sheet)?.[1],
      1e-6 * build.quantity,
      hundredth,
    ),
    ...ends('travel of a landing', 'landing', landed?.[1]),
    ...ends('travel of a landing', 'compare-builds', at('compare-builds', 'landing', 'Goes in', 0)),
    ...ends('push of a landing', 'landing', landed?.[2]),
    ...ends(
      'push of a landing',
      'compare-builds',
      at('compare-builds', 'landing', 'Shock pushes at most', 0),
    ),
    ...exact('ride frequency', 'match', build.corner && at('match', 'corners', 'Swings, Hz', 0)),
    ...rounded(
      'ride frequency',
      'compare-builds',
      build.corner && at('compare-builds', 'ride', 'Ride frequency', 0),
      1,
      threeDigits,
    ),
    ...rounded(
      'setting middle',
      'warm-up, answer',
      /of the damping at ([\d.]+) mm\/s is gone/u.exec(pages.get('warm-up')?.answer ?? '')?.[1],
      1e-3,
      threeDigits,
    ),
    ...handSaid(notebooks, pages),
  ];
}

const inNewtons = (grams: unknown): unknown =>
  typeof grams === 'number' ? (grams * gravity) / 1000 : undefined;
