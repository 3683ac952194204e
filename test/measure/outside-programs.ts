import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import checks from '../published/measure-checks.json' with { type: 'json' };
import { checkRow, type RowObservation, type RowValues } from './invented-shock.js';

/** Debian's own Python, since only that one sees Debian's packages. */
export const debianPython = '/usr/bin/python3';

/** Fits of the invented shock by SciPy; with a walk of emcee where steps are asked for. */
export interface OutsideFits {
  readonly A: { readonly x: readonly number[]; readonly sd: readonly number[]; readonly seconds: number };
  readonly B: {
    readonly x: readonly number[];
    readonly sd: readonly number[];
    readonly cost: number;
    readonly seconds: number;
  };
  readonly walk?: {
    readonly effective: number;
    readonly mean: readonly number[];
    readonly sd: readonly number[];
    readonly ends: readonly [readonly number[], readonly number[]];
  };
}

/** Runs the program of the other libraries. */
export function outsideFits(walk: number): OutsideFits {
  const { spec } = checks.shock;
  const a = checkRow<{ times: readonly number[]; known: RowValues }, unknown>('shock-A-fit').inputs;
  const b = checkRow<{ observations: readonly RowObservation[]; values: readonly number[] }, unknown>(
    'shock-B-fit',
  ).inputs;
  const script = fileURLToPath(new URL('invented_shock.py', import.meta.url));
  const input = JSON.stringify({ spec, prior: checks.prior, A: a, B: b, walk });
  return JSON.parse(execFileSync(debianPython, [script], { input, encoding: 'utf8' }));
}
