import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** A point of the hole wall: place along the axis and radius, in hole diameters. */
export type WallPoint = readonly [along: number, radius: number];

/** A hole to be solved, all lengths in its own diameter. */
export interface ReferenceCase {
  /** Wall of the hole from the upstream to the downstream face. */
  readonly wall: readonly WallPoint[];
  /** Radius of the bore over the hole diameter. */
  readonly boreRadius: number;
  /** Rising. */
  readonly reynoldsNumbers: readonly number[];
  /** 1 for the fine mesh; 1.4 halves the number of cells. */
  readonly meshFactor: number;
  /** Carreau oil: exponent, and time in units of diameter over mean speed. */
  readonly thinning?: { readonly exponent: number; readonly time: number };
}

/** One solution; pressures over the dynamic pressure of the mean speed at radius one half. */
export interface ReferenceSolution {
  readonly reynoldsNumber: number;
  /** From the chamber before the hole to the mean over the face behind it: what a hole law predicts. */
  readonly eulerFace: number;
  /** Force on the piston over its area. */
  readonly eulerForce: number;
  readonly cells: number;
}

/** Whether the solver is there; under CI its absence is a fault, and the tests that need it run and fail. */
export const haveFreeFem =
  process.env['CI'] === 'true' || spawnSync('FreeFem++', ['-?'], { stdio: 'ignore' }).error === undefined;

const script = fileURLToPath(new URL('hole.edp', import.meta.url));

/** Solves a hole with FreeFem++; some seconds for each Reynolds number. */
export function solveHole(hole: ReferenceCase): readonly ReferenceSolution[] {
  const folder = mkdtempSync(join(tmpdir(), 'hole-'));
  try {
    const { exponent, time } = hole.thinning ?? { exponent: 1, time: 0 };
    const lines = [
      [hole.boreRadius, hole.meshFactor, exponent, time],
      [hole.wall.length],
      ...hole.wall,
      [hole.reynoldsNumbers.length],
      hole.reynoldsNumbers,
    ];
    const [input, output] = [join(folder, 'case.txt'), join(folder, 'rows.csv')];
    writeFileSync(input, lines.map((line) => `${line.join(' ')}\n`).join(''));
    const run = spawnSync('FreeFem++', ['-nw', '-v', '0', script, input, output], { encoding: 'utf8' });
    if (run.status !== 0) throw new Error(`FreeFem++ failed: ${run.stdout}${run.stderr}`);
    const [, ...rows] = readFileSync(output, 'utf8').trim().split('\n');
    return rows.map((row) => {
      const [reynoldsNumber = 0, eulerFace = 0, eulerForce = 0, , cells = 0] = row.split(',').map(Number);
      return { reynoldsNumber, eulerFace, eulerForce, cells };
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
}
