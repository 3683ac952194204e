import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { holeArea } from '../../lib/flow/geometry/hole.js';
import { holePressureDrop, holeReynoldsNumber } from '../../lib/flow/hole/hole-flow.js';
import { idelchikThickEdgeLaw } from '../../lib/flow/hole/idelchik-thick-edge.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import { toolRuns } from '../project/tools.js';
import { relativeError } from './published-rows.js';

// Debian's own Python, since only that one sees Debian's packages.
const python = '/usr/bin/python3';
const available = toolRuns(python, ['-c', 'import fluids']);

interface Row {
  readonly meanSpeed: number;
  readonly diameter: number;
  readonly length: number;
  readonly density: number;
  readonly kinematicViscosity: number;
  readonly reynoldsNumber: number;
  readonly pressureDrop: number;
}

describe.skipIf(!available)('general-purpose library fluids (skips where python3-fluids is absent)', () => {
  const script = fileURLToPath(new URL('python-fluids.py', import.meta.url));
  const rows: readonly Row[] = available
    ? JSON.parse(execFileSync(python, [script], { encoding: 'utf8' }))
    : [];

  test('gives rows', () => expect(rows).toHaveLength(3));

  // A hole 400 diameters long is all tube, so that the end losses, on which the library uses turbulent values, weigh below 0.6 %.
  test.each([sharpHoleLaw, idelchikThickEdgeLaw])(
    'a long tube drops what the library says, $name law',
    (law) => {
      for (const row of rows) {
        const volumeFlow = row.meanSpeed * holeArea(row);
        expect(relativeError(holeReynoldsNumber(row, row, volumeFlow), row.reynoldsNumber)).toBeLessThan(
          1e-12,
        );
        expect(relativeError(holePressureDrop(row, row, volumeFlow, law), row.pressureDrop)).toBeLessThan(
          0.006,
        );
      }
    },
  );
});
