import { oilForce } from '../../lib/damper/oil-force.js';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { shaftSpeed } from '../base/wording.js';
import { modelOfDesign } from './figures.js';
import { asItIs, type Found, type Shown } from './found.js';
import { holesShort, millimetres } from './naming.js';

const off = { unit: '%', dimension: 'ratio', digits: 2 } as const;

/** The designs that no other beats. */
export function frontTable({ shown, owned }: Found, errors: string): TableBlock {
  return {
    kind: 'table',
    id: 'designs',
    title: 'What to drill, from right when slow to right at the faster speed',
    note: `"Off" against what you want, at worst in compression or rebound. "Drill" and "Warmth": the largest change of a force with ${errors}. The blind side of a piston faces the closed end of the body.`,
    table: {
      columns: [
        { label: 'Design', unit: '' },
        { label: 'Slow off', ...off },
        { label: 'Fast off', ...off },
        { label: 'Drill', ...off },
        { label: 'Warmth', ...off },
      ],
      rows: [
        ...shown.map(({ number, design, isRobust }) => [
          `${number}: ${holesShort(design)}; ${millimetres(design.thickness)} thick, ${design.oil}${isRobust ? ' (robust)' : ''}`,
          design.slowError,
          design.fastError,
          design.drillChange,
          design.temperatureChange,
        ]),
        ...owned.map(({ letter, name, slowError, fastError }) => [
          `${letter}: ${name}, as you have it`,
          slowError,
          fastError,
          null,
          null,
        ]),
      ],
    },
  };
}

/** The four forces: wanted, of the design that the page names, and of the build as it is. */
export function forceTable(search: Found, shown: Shown): TableBlock {
  const { number } = shown;
  const { problem, build, beside } = search;
  const [model, as] = [modelOfDesign(search, shown), asItIs(search)];
  const force = { unit: 'N', dimension: 'force' } as const;
  const at = [problem.slow, ...(beside === undefined ? [] : [beside]), problem.fast];
  const rows = at
    .toSorted((one, other) => one.speed - other.speed)
    .flatMap((wanted) =>
      (['compression', 'rebound'] as const).map((way) => {
        const speed = way === 'compression' ? wanted.speed : -wanted.speed;
        return [
          `${way === 'compression' ? 'Compression' : 'Rebound'}, ${shaftSpeed(wanted.speed)}`,
          wanted[way],
          ...[model, as].map((one) => Math.abs(oilForce(one, speed))),
        ];
      }),
    );
  return {
    kind: 'table',
    id: 'forces',
    title: `What you want, what design ${number} makes, and what ${build.name} makes now`,
    ...(beside === undefined
      ? {}
      : {
          note: `The search asked for the landing and for ${shaftSpeed(problem.slow.speed)}; at ${shaftSpeed(beside.speed)} you see what came of it beside what you would want.`,
        }),
    table: {
      columns: [
        { label: 'Force of the oil', unit: '' },
        { label: 'Wanted', ...force },
        { label: `Design ${number}`, ...force },
        { label: 'Now', ...force },
      ],
      rows,
    },
  };
}
