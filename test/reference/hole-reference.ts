import { readFileSync } from 'node:fs';

/** One row of the numerical reference: a sharp hole at a Reynolds number, without downstream recovery. */
export interface ReferenceRow {
  readonly lengthRatio: number;
  readonly reynoldsNumber: number;
  /** Loss on the dynamic pressure of the mean speed in the hole, reservoir to reservoir. */
  readonly eulerNumber: number;
}

/**
 * Rows of `hole-reference.csv` on the finest mesh: own numerical reference, axisymmetric steady laminar solutions (FreeFEM, P2/P1
 * elements, Newton), mesh error about 0.03 %.
 */
export function holeReferenceRows(): readonly ReferenceRow[] {
  const [header = '', ...lines] = readFileSync(new URL('hole-reference.csv', import.meta.url), 'utf8')
    .trim()
    .split('\n');
  const names = header.split(',');
  const column = (cells: readonly string[], name: string) => cells[names.indexOf(name)] ?? '';
  return lines
    .map((line) => line.split(','))
    .filter(
      (cells) => column(cells, 'solver').startsWith('FreeFEM') && Number(column(cells, 'mesh_factor')) === 1,
    )
    .map((cells) => ({
      lengthRatio: Number(column(cells, 'L_over_d')),
      reynoldsNumber: Number(column(cells, 'Re')),
      eulerNumber: Number(column(cells, 'Eu_no_recovery')),
    }));
}
