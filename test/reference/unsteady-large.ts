import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import { apparentMass } from '../../lib/flow/hole/apparent-mass.js';
import { lawOf } from './shape-law.js';
import type { ShapeReference } from './shape-reference.js';

/**
 * Flows with inertia that swing or start, solved with unsteady-hole.edp: a sharp hole of L/d 1.5, 4 % of a bore that slips. Speeds over the largest mean speed V in the hole,
 * accelerations over V²/d, force over the area of the bore and pressure drop to the face behind over ρ V². `coarse`: half as many steps, two and a half times larger cells.
 */
export interface LargeFlow {
  readonly kind: 'swing' | 'start';
  /** `ω d²/ν` of a swing; of a start, that rises as sin², its time over `d²/ν`. */
  readonly measure: number;
  /** Of the largest speed. */
  readonly reynoldsNumber: number;
  /** Largest distances over all times, in parts of the largest force, and of the largest pressure drop. */
  readonly steadyLaw: Distance;
  readonly withApparentMass: Distance;
  readonly meshAndStep: Distance;
  readonly rows: number;
}

interface Distance {
  readonly force: number;
  readonly drop: number;
}

const lengthRatio = 1.5;
const areaRatio = 0.04;
const hole: ShapeReference = { name: '', family: 'sharp', diameter: 1, lengthRatio, areaRatio, points: [] };

/** Force and pressure drop of the law of the library, from the total pressure before the hole, at a part of the largest speed. */
function law(reynoldsNumber: number, speed: number): Distance {
  if (speed === 0) return { force: 0, drop: 0 };
  const { euler, recoil } = lawOf(hole, reynoldsNumber * Math.abs(speed));
  const dynamic = 0.5 * speed * Math.abs(speed);
  return { force: (euler - recoil) * dynamic, drop: euler * dynamic };
}

/** Apparent mass over `ρ A d`. */
const mass =
  apparentMass({ diameter: 1, length: lengthRatio }, { density: 1000, kinematicViscosity: 1 }) /
  (1000 * (Math.PI / 4));

type Cells = Readonly<Record<string, string | undefined>>;
const number = (row: Cells, column: string): number => Number(row[column]);

function flowOf(rows: readonly Cells[]): LargeFlow {
  const [first = {}] = rows;
  const reynoldsNumber = number(first, 'Re');
  const largest = (of: (row: Cells) => Distance): Distance => {
    const all = rows.map(of);
    return {
      force: Math.max(...all.map(({ force }) => Math.abs(force))),
      drop: Math.max(...all.map(({ drop }) => Math.abs(drop))),
    };
  };
  const solved = (row: Cells): Distance => ({ force: number(row, 'force'), drop: number(row, 'drop') });
  const peak = largest(solved);
  const off = (other: (row: Cells) => Distance): Distance => {
    const { force, drop } = largest((row) => {
      const [is, said] = [solved(row), other(row)];
      return { force: said.force - is.force, drop: said.drop - is.drop };
    });
    return { force: force / peak.force, drop: drop / peak.drop };
  };
  const steady = (row: Cells) => law(reynoldsNumber, number(row, 'speed'));
  return {
    kind: first['kind'] === 'swing' ? 'swing' : 'start',
    measure: number(first, 'measure'),
    reynoldsNumber,
    steadyLaw: off(steady),
    withApparentMass: off((row) => {
      const { force, drop } = steady(row);
      const push = mass * number(row, 'acceleration');
      return { force: force + push, drop: drop + push };
    }),
    meshAndStep: off((row) => ({ force: number(row, 'force_coarse'), drop: number(row, 'drop_coarse') })),
    rows: rows.length,
  };
}

export function largeFlows(): readonly LargeFlow[] {
  const all = csvParse(
    readFileSync(new URL('unsteady-large.csv', import.meta.url), 'utf8'),
  ) as readonly Cells[];
  const nameOf = (row: Cells) => `${row['kind']} ${row['measure']} ${row['Re']}`;
  return [...new Set(all.map(nameOf))].map((name) => flowOf(all.filter((row) => nameOf(row) === name)));
}
